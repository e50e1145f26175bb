/** Blocks of any height, measured once by the press and then spread over as many pages as they take. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../paper/layOut.ts';
import { pointsPerUnit } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import type { LayOut } from './sheetKind.ts';

/** A block of a sheet. Each stands in a group of its own (`Block`), by which the press tells its height. */
export type Packable = {
  readonly content: JSXNode;
  /** A heading's block never ends a page. */
  readonly keep: 'withNext' | 'alone';
  /** What it goes by, told again above it where a page begins with it. */
  readonly under?: JSXNode;
};

type Pack = {
  readonly all: readonly Packable[];
  /** Height for blocks on a page, and the gap between two of them, in sheet units. */
  readonly room: number;
  readonly gap: number;
  readonly draw: (some: readonly Packable[]) => Sheet;
};

/** Pages in turn; none without blocks. A page that turns out too full gives blocks on to the next one. */
export async function* packed(
  { all, room, gap, draw }: Pack,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const heights = blockHeights(await layOut(draw(all)));
  let from = 0;
  while (from < all.length) {
    let count = whatFits(all.slice(from), heights.slice(from), room, gap);
    const pageOf = (some: number): Promise<Page> => layOut(draw(told(all.slice(from, from + some))));
    let page = await pageOf(count);
    while (count > 1 && overflows(page).length > 0) {
      count = clearOfHeadings(all.slice(from), count - 1);
      page = await pageOf(count);
    }
    yield page;
    from += count;
  }
}

function told(some: readonly Packable[]): readonly Packable[] {
  const under = some[0]?.under;
  return under === undefined ? some : [{ content: under, keep: 'withNext' }, ...some];
}

/** Heights of the blocks in turn, in sheet units: every block is a node with the part `Sect`. */
function blockHeights(page: Page): readonly number[] {
  return page.nodes.filter((node) => node.role === 'Sect').map((node) => node.box.height_pt / pointsPerUnit);
}

/** How many blocks find room, one at least; a heading goes with what it heads. */
function whatFits(
  blocks: readonly Packable[],
  heights: readonly number[],
  room: number,
  gap: number,
): number {
  let used = 0;
  let count = 0;
  while (count < blocks.length && (count === 0 || used + (heights[count] ?? 0) <= room)) {
    used += (heights[count] ?? 0) + gap;
    count += 1;
  }
  return clearOfHeadings(blocks, count);
}

/** So many blocks, or as many fewer as leaves no heading at the foot of the page. */
function clearOfHeadings(blocks: readonly Packable[], count: number): number {
  let kept = count;
  while (kept < blocks.length && kept > 1 && blocks[kept - 1]?.keep === 'withNext') kept -= 1;
  return kept === 1 && blocks[0]?.keep === 'withNext' ? count : kept;
}
