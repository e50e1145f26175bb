/**
 * The same sheets as plain words and lines with their places, for those who draw them by other means: what all prints
 * of a sheet share once, and for each page what is its own. Nothing has to be laid out any more.
 */
import type { Item, Page } from '../../../src/paper/page.ts';
import type { Filled, Stencil } from '../../../src/paper/stencil.ts';
import type { StackSet } from '../../../src/paper/toStackPdf.ts';
import type { Type } from '../../../src/paper/type.ts';

export type PlainWords = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  /** Name of the font, one for each subset and weight. */
  readonly font: string;
};
export type PlainLine = {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly width: number;
};
export type PlainSheet = { readonly words: readonly PlainWords[]; readonly lines: readonly PlainLine[] };

export type Plain = {
  readonly width: number;
  readonly height: number;
  readonly sheets: readonly PlainSheet[];
  readonly pages: readonly { readonly sheet: number; readonly words: readonly PlainWords[] }[];
  /** Base64 of the TrueType files, by font name. */
  readonly fonts: Readonly<Record<string, string>>;
};

export async function plainOf(sets: AsyncIterable<StackSet>, typeOf: (page: Page) => Type): Promise<Plain> {
  const sheets = new Map<Stencil, number>();
  const plain: PlainSheet[] = [];
  const pages: { sheet: number; words: PlainWords[] }[] = [];
  const fonts: Record<string, string> = {};
  const wordsOf = (items: readonly Item[], type: Type): PlainWords[] =>
    items.flatMap((item) => {
      if (item.kind !== 'words') return [];
      const [run] = type.shape(item.text, item.weight, item.direction);
      if (run === undefined) return [];
      const font = run.face.postScriptName.replace(/\W/g, '') + run.face.name.replace(/\W/g, '');
      fonts[font] ??= Buffer.from(run.face.sfnt).toString('base64');
      return [{ text: item.text.trim(), x: item.x_pt, y: item.baseline_pt, size: item.size_pt, font }];
    });
  const sheetOf = (filled: Filled): number => {
    const known = sheets.get(filled.stencil);
    if (known !== undefined) return known;
    const { page, slots } = filled.stencil;
    const own = new Set([...slots.values()].flat().map(({ node }) => node));
    const items = page.items.filter(({ node }) => !own.has(node));
    const lines = items.flatMap((item): readonly PlainLine[] => {
      const [from, to] = item.kind === 'shape' ? item.path : [];
      if (item.kind !== 'shape' || !item.stroke || from?.[0] !== 'M' || to?.[0] !== 'L') return [];
      return [{ from: [from[1], from[2]], to: [to[1], to[2]], width: item.stroke.width_pt }];
    });
    sheets.set(filled.stencil, plain.push({ words: wordsOf(items, typeOf(page)), lines }) - 1);
    return plain.length - 1;
  };
  for await (const { pages: some } of sets)
    for (const filled of some)
      pages.push({ sheet: sheetOf(filled), words: wordsOf(filled.items, filled.type) });
  return { width: 595.276, height: 841.89, sheets: plain, pages, fonts };
}
