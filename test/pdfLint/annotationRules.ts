/** Whether what lies on the pages beside their content, above all form fields, has words and a place in the structure. */
import { PDFDict, type PDFObject, PDFRawStream } from 'pdf-lib';
import { type Annotation, annotationsOf, commandsIn, type Looked, name, nameIn, textIn } from './document.ts';
import type { Tell } from './lint.ts';

/** ISO 32000-1, table 169. */
const kinds: ReadonlySet<string> = new Set([
  ...[
    'Text',
    'Link',
    'FreeText',
    'Line',
    'Square',
    'Circle',
    'Polygon',
    'PolyLine',
    'Highlight',
    'Underline',
  ],
  ...[
    'Squiggly',
    'StrikeOut',
    'Stamp',
    'Caret',
    'Ink',
    'Popup',
    'FileAttachment',
    'Sound',
    'Movie',
    'Widget',
  ],
  ...['Screen', 'PrinterMark', 'TrapNet', 'Watermark', '3D', 'Redact'],
]);

export function checkAnnotations(looked: Looked, tell: Tell): void {
  for (const [index, { page }] of looked.pages.entries()) {
    const all = annotationsOf(looked, index);
    const at = `page ${index + 1}`;
    const tabs = nameIn(page.node, 'Tabs');
    if (all.length > 0 && tabs === null) tell('28-008', at);
    else if (all.length > 0 && tabs !== 'S') tell('28-009', at, tabs ?? '');
    for (const one of all) checkOne(one, (rule) => tell(rule, at, one.ref));
  }
  for (const [ref, object] of looked.document.context.enumerateIndirectObjects())
    checkClip(object, (rule) => tell(rule, String(ref)));
}

type TellHere = (rule: Parameters<Tell>[0]) => void;

function checkOne(one: Annotation, tell: TellHere): void {
  const { dict, holder } = one;
  const kind = nameIn(dict, 'Subtype') ?? '';
  if (kind === 'Widget') {
    if (holder?.role !== 'Form') tell('28-010');
    if (textIn(dict, 'TU') === '' && !hasAlt(one)) tell('28-005');
    return;
  }
  const placed = ['Link', 'PrinterMark'].includes(kind) || holder?.role === 'Annot';
  const told = textIn(dict, 'Contents') !== '' || hasAlt(one);
  if (!placed) tell('28-002');
  if (!told) tell('28-004');
  if (!kinds.has(kind) && !(placed && told)) tell('28-006');
  if (kind === 'TrapNet') tell('28-007');
  if (kind === 'Link' && holder?.role !== 'Link') tell('28-011');
  if (kind === 'Link' && textIn(dict, 'Contents') === '') tell('28-012');
  if (kind === 'FileAttachment' && !hasBothNames(dict.lookup(name('FS')))) tell('28-016');
  if (kind === 'PrinterMark' && holder) tell('28-017');
  if (kind === 'PrinterMark' && !isArtifact(dict)) tell('28-018');
}

function hasAlt({ holder }: Annotation): boolean {
  return holder !== undefined && textIn(holder.dict, 'Alt').trim() !== '';
}

function hasBothNames(file: PDFObject | undefined): boolean {
  return file instanceof PDFDict && file.has(name('F')) && file.has(name('UF'));
}

function isArtifact(dict: PDFDict): boolean {
  const looks = dict.lookup(name('AP'));
  const normal = looks instanceof PDFDict ? looks.lookup(name('N')) : undefined;
  if (!(normal instanceof PDFRawStream)) return false;
  const [first] = commandsIn(normal);
  return /^B(MC|DC)$/.test(first?.operator ?? '') && first?.operands[0] === '/Artifact';
}

/** Films and sounds: the data of a clip (ISO 32000-1, 13.2.4.2). */
function checkClip(object: PDFObject, tell: TellHere): void {
  if (!(object instanceof PDFDict) || nameIn(object, 'S') !== 'MCD') return;
  if (!object.has(name('CT'))) tell('28-014');
  if (!object.has(name('Alt'))) tell('28-015');
}
