/** Lays sheets out one after the other, and fills a sheet that was laid out before wherever it is built alike. */
import { fill } from './fill.ts';
import { type Engine, type Laid, layOutSettled, type Sheet } from './layOut.ts';
import type { Page } from './page.ts';
import { type Settled, settle } from './settle.ts';
import type { Type } from './type.ts';
import type { TypeCase } from './typeCase.ts';

/** More than the sides of one card, and their tries. */
const kept = 24;

/** Gives the same pages as `layOut`, the sooner the less is new. */
export function refilling(types: TypeCase, engine: Engine): (sheet: Sheet) => Promise<Page> {
  const before = new Map<string, Laid>();
  return async (sheet) => {
    const settled = await settle(sheet.root);
    const type = await types.typeFor(settled.paragraphs.values());
    const build = buildOf(sheet, settled, type);
    const last = before.get(build);
    const laid =
      (last && (await fill(last, { sheet, settled }, type, engine))) ??
      (await layOutSettled(sheet, settled, type, engine));
    before.delete(build);
    before.set(build, laid);
    const [oldest] = before.keys();
    if (before.size > kept && oldest !== undefined) before.delete(oldest);
    return laid.page;
  };
}

/** Sheets of one size with the same nodes, set in the same fonts, are built alike. */
function buildOf({ width_mm, height_mm }: Sheet, { nodes }: Settled, { packs }: Type): string {
  return [width_mm, height_mm, ...packs, ...nodes.map(({ path, tag }) => `${path}${tag}`)].join(' ');
}
