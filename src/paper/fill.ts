/**
 * New values in a laid-out sheet. Laying a whole sheet out again for one number would take many times as long as
 * everything else; so only the parts that hold something new are laid out, each in the box that it had. Where a part no
 * longer keeps its box, the part around it is laid out, and at last the whole sheet.
 */
import { alone, isGiven, islandsFor, type Part, partsOf, widened } from './islands.ts';
import { type Engine, type Laid, nowhere, runEngine, type Sheet } from './layOut.ts';
import { pointsPerUnit } from './measures.ts';
import type { Box, Item, Page } from './page.ts';
import { type NodeFinder, type Piece, readSvg } from './readSvg.ts';
import type { Settled } from './settle.ts';
import type { Shape } from './page.ts';
import { nodeOfMark } from './styles.ts';
import { type Change, changesBetween } from './treeChange.ts';
import type { Type } from './type.ts';
import { joinWords } from './words.ts';

/** How much, in points, a box may differ and still be the same: no more than rounding leaves. */
const same_pt = 0.004;
/** When this often a part did not keep its box, or this much of the sheet is new, all of it is sooner laid out. */
const mostRounds = 3;
const most_frac = 0.5;

type Desk = {
  readonly page: Page;
  readonly settled: Settled;
  readonly parts: readonly Part[];
  readonly old: readonly Part[];
  readonly moved: ReadonlySet<number>;
  readonly type: Type;
  readonly engine: Engine;
};

/** A sheet with its tree made plain. */
type Tree = { readonly sheet: Sheet; readonly settled: Settled };

type Redone = {
  readonly found: readonly (Piece | Shape)[];
  readonly boxes: ReadonlyMap<number, Box>;
};

/**
 * The page as `layOut` would lay this tree out; null where that has to be done from the start.
 *
 * @throws CoverError naming every character that no font has.
 */
export async function fill(
  before: Laid,
  { sheet, settled }: Tree,
  type: Type,
  engine: Engine,
): Promise<Laid | null> {
  const changes = changesBetween(before.settled, settled);
  if (changes === null) return null;
  type.mustCover(settled.paragraphs.values());
  const parts = partsOf(settled);
  const old = partsOf(before.settled);
  const desk: Desk = { ...{ settled, parts, old, type, engine }, page: before.page, moved: movedBy(changes) };
  let islands = islandsFor(changes, settled, parts);
  for (let round = 0; islands !== null && isWorth(islands, parts) && round < mostRounds; round += 1) {
    const redone = await redo(desk, islands);
    const grown = new Set(islands.filter((at) => keepsSize(desk, at, redone.boxes) === 'no'));
    if (grown.size === 0) {
      const page = filled(desk, islands, redone);
      return page && { settled, page: { ...page, title: sheet.title, lang: sheet.lang } };
    }
    islands = widened(islands, grown, parts);
  }
  return null;
}

function isWorth(islands: readonly number[], parts: readonly Part[]): boolean {
  const nodes = islands.reduce((sum, at) => sum + (parts[at]?.end ?? at) - at, 0);
  return nodes <= parts.length * most_frac;
}

function movedBy(changes: readonly Change[]): ReadonlySet<number> {
  return new Set(changes.filter(({ what }) => what === 'place').map(({ node }) => node));
}

/** All islands on one empty sheet, each in its place. */
async function redo(desk: Desk, islands: readonly number[]): Promise<Redone> {
  if (islands.length === 0) return { found: [], boxes: new Map() };
  const children = islands.map((at) => alone(at, placeOf(desk, at), desk.parts));
  const size = { width: desk.page.width_pt / pointsPerUnit, height: desk.page.height_pt / pointsPerUnit };
  const tree = { type: 'div', key: null, props: { style: { display: 'flex', ...size }, children } };
  const { svg, boxes } = await runEngine(
    tree,
    size,
    { type: desk.type, texts: desk.settled.paragraphs.values() },
    desk.engine,
  );
  return { found: readSvg(svg, finderOf(desk.settled, islands)), boxes };
}

/** Where the node's box is, or is to be when it was moved on what is around it. */
function placeOf({ page, moved, parts, old }: Desk, at: number): Box {
  const box = page.nodes[at]?.box ?? nowhere;
  if (!moved.has(at)) return box;
  const by = (name: string) =>
    (Number(parts[at]?.style[name] ?? 0) - Number(old[at]?.style[name] ?? 0)) * pointsPerUnit;
  return {
    ...{ x_pt: box.x_pt + by('left'), y_pt: box.y_pt + by('top') },
    ...{ width_pt: box.width_pt + by('width'), height_pt: box.height_pt + by('height') },
  };
}

/** A box that was moved may also have become another size: nothing else makes room for it. */
function keepsSize(desk: Desk, at: number, boxes: ReadonlyMap<number, Box>): 'yes' | 'no' {
  const [was, is] = [placeOf(desk, at), boxes.get(at)];
  if (is === undefined) return 'no';
  if (desk.parts[at]?.style.position === 'absolute') return 'yes';
  const keeps = (side: 'width' | 'height') =>
    isGiven(side, at, desk.parts) === 'yes' || Math.abs(was[`${side}_pt`] - is[`${side}_pt`]) <= same_pt;
  return keeps('width') && keeps('height') ? 'yes' : 'no';
}

/** The engine numbers the islands one after the other, and what is in them by its way from there. */
function finderOf(settled: Settled, islands: readonly number[]): NodeFinder {
  const byPath = new Map(settled.nodes.map(({ path }, index) => [path, index]));
  const nodeAt = (path: string): number | undefined => {
    const [first = '', ...rest] = path.split('-');
    const start = settled.nodes[islands[Number(first)] ?? 0]?.path ?? '';
    return byPath.get([start, ...rest].join('-'));
  };
  return {
    nodeOfFamily: nodeOfMark,
    nodeOfPath: (path) => {
      // The empty sheet that bears the islands has no number and draws nothing.
      if (path === '') return 0;
      const own = nodeAt(path);
      const isBlock = own !== undefined && settled.nodes[own]?.paragraph === own;
      const around = isBlock ? own : nodeAt(path.slice(0, Math.max(0, path.lastIndexOf('-'))));
      if (around === undefined) throw new Error(`A box that belongs to no node: "${path}".`);
      return around;
    },
  };
}

/** The old page with new items for the islands; null where something is drawn that was not there before. */
function filled(
  { page, settled, parts, type }: Desk,
  islands: readonly number[],
  redone: Redone,
): Page | null {
  const paragraphOf = ({ node }: Item) => settled.nodes[node]?.paragraph ?? node;
  const isNew = (node: number) => islands.some((at) => at <= node && node < (parts[at]?.end ?? at + 1));
  const fresh = new Map<number, Item[]>();
  for (const item of joinWords(redone.found, settled, type)) {
    const paragraph = paragraphOf(item);
    fresh.set(paragraph, [...(fresh.get(paragraph) ?? []), item]);
  }
  const items: Item[] = [];
  // What is placed is painted after what flows, so each paragraph's items go where its old ones were.
  for (const item of page.items) {
    const paragraph = paragraphOf(item);
    if (!isNew(paragraph)) items.push(item);
    else items.push(...(fresh.get(paragraph) ?? []));
    fresh.delete(paragraph);
  }
  if (fresh.size > 0) return null;
  const boxAt = (index: number) => redone.boxes.get(index) ?? page.nodes[index]?.box ?? nowhere;
  return { ...page, items, nodes: settled.nodes.map((node, index) => ({ ...node, box: boxAt(index) })) };
}
