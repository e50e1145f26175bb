/** Bookmarks (ISO 32000-1, 12.3.3): the headings of a print of several pages, the minor ones under the major. */
import { type PDFContext, PDFHexString, PDFNull, type PDFRef } from 'pdf-lib';
import { thousandth } from './measures.ts';
import type { Page } from './page.ts';

type Heading = {
  readonly text: string;
  readonly level: number;
  readonly page: PDFRef;
  readonly top_pt: number;
};
type Entry = Heading & { readonly inside: Entry[] };

/** What the catalog names as the outlines of a print; null where one page is all there is, or has no headings. */
export function writeBookmarks(
  context: PDFContext,
  pages: readonly Page[],
  refs: readonly PDFRef[],
): PDFRef | null {
  const headings = pages.flatMap((page, at) => {
    const ref = refs[at];
    return ref === undefined ? [] : headingsOf(page, ref);
  });
  if (pages.length < 2 || headings.length === 0) return null;
  const root = context.nextRef();
  const written = writeEntries(context, nested(withoutRepeats(headings)), root);
  context.assign(root, context.obj({ Type: 'Outlines', ...written }));
  return root;
}

function headingsOf(page: Page, ref: PDFRef): readonly Heading[] {
  return page.nodes.flatMap((node, index) => {
    const level = Number(/^H(\d)$/.exec(node.role ?? '')?.[1]);
    const text = Number.isNaN(level) ? '' : wordsIn(page, index);
    const top_pt = thousandth(page.height_pt - node.box.y_pt);
    return text === '' ? [] : [{ text, level, page: ref, top_pt }];
  });
}

/** As the sheet gave them, whatever of it was cut or turned to fit. */
function wordsIn(page: Page, heading: number): string {
  const inside = (index: number): boolean => {
    for (let at: number | null = index; at !== null; at = page.nodes[at]?.parent ?? null)
      if (at === heading) return true;
    return false;
  };
  const texts = page.nodes.flatMap((node, index) => (inside(index) ? [node.text.trim()] : []));
  return texts
    .filter((text) => text !== '')
    .join(' ')
    .replace(/\s+/g, ' ');
}

/** A head that stands on every page leads to the first of them. */
function withoutRepeats(headings: readonly Heading[]): readonly Heading[] {
  const [first] = headings;
  return headings.filter((one, at) => at === 0 || one.level !== 1 || one.text !== first?.text);
}

function nested(headings: readonly Heading[]): readonly Entry[] {
  const roots: Entry[] = [];
  const open: Entry[] = [];
  for (const heading of headings) {
    while (open.length > 0 && (open.at(-1)?.level ?? 0) >= heading.level) open.pop();
    const entry: Entry = { ...heading, inside: [] };
    (open.at(-1)?.inside ?? roots).push(entry);
    open.push(entry);
  }
  return roots;
}

/** The entries of one level, linked to one another, with all that is in them. */
function writeEntries(context: PDFContext, entries: readonly Entry[], parent: PDFRef) {
  if (entries.length === 0) return {};
  const refs = entries.map(() => context.nextRef());
  for (const [at, entry] of entries.entries()) {
    const [own, before, after] = [refs[at], refs[at - 1], refs[at + 1]];
    if (own === undefined) continue;
    const item = {
      Title: PDFHexString.fromText(entry.text),
      Parent: parent,
      Dest: context.obj([entry.page, 'XYZ', PDFNull, entry.top_pt, PDFNull]),
      ...(before ? { Prev: before } : {}),
      ...(after ? { Next: after } : {}),
      ...writeEntries(context, entry.inside, own),
    };
    context.assign(own, context.obj(item));
  }
  return { First: refs[0], Last: refs.at(-1), Count: countOf(entries) };
}

/** All that is open: every entry and everything in it. */
function countOf(entries: readonly Entry[]): number {
  return entries.reduce((sum, { inside }) => sum + 1 + countOf(inside), 0);
}
