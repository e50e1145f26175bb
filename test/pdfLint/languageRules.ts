/** Whether it is told in which language everything is that a reader speaks: by its part, or for the whole document. */
import { PDFDict } from 'pdf-lib';
import { annotationsOf, type Looked, name, type Part, textIn } from './document.ts';
import type { Tell } from './lint.ts';

/** BCP 47, as far as it is needed here. */
const languageTag = /^[a-z]{2,3}(-\w+)*$/i;

export function checkLanguage(looked: Looked, tell: Tell): void {
  const { document, parts, pages } = looked;
  if (languageTag.test(textIn(document.catalog, 'Lang'))) return;
  tell('11-006', 'the file');
  for (const part of parts.filter((one) => !saysLanguage(one))) {
    if (part.marks.length > 0) tell('11-001', part.role);
    if (textIn(part.dict, 'Alt') !== '' || textIn(part.dict, 'ActualText') !== '') tell('11-002', part.role);
  }
  if (document.catalog.lookup(name('Outlines')) instanceof PDFDict) tell('11-003', 'the bookmarks');
  for (const [index] of pages.entries())
    for (const { dict, ref, holder } of annotationsOf(looked, index)) {
      if (holder && saysLanguage(holder)) continue;
      if (textIn(dict, 'Contents') !== '') tell('11-004', `page ${index + 1}`, ref);
      if (textIn(dict, 'TU') !== '') tell('11-005', `page ${index + 1}`, ref);
    }
}

function saysLanguage(part: Part): boolean {
  for (let at: Part | null = part; at; at = at.parent) {
    if (languageTag.test(textIn(at.dict, 'Lang'))) return true;
  }
  return false;
}
