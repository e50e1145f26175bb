/** A list of equal rows that runs over as many pages as it takes. */
import type { Sheet } from '../paper/layOut.ts';
import { pointsPerUnit } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import { sideHeight } from './parts/look.ts';
import type { LayOut } from './sheetKind.ts';

/** What a page of the list is drawn from. */
export type Part<T> = {
  readonly some: readonly T[];
  /** The first page may bear more than the others. */
  readonly at: 'first' | 'later';
  /** Whether anything is left for another page. */
  readonly rest: 'none' | 'more';
};

type Rows<T> = {
  readonly all: readonly T[];
  /** Height of a row, in sheet units. */
  readonly rowHeight: number;
  readonly draw: (part: Part<T>) => Sheet;
};

/** Pages in turn, each with as many rows as it has room for, one at least. */
export async function* paged<T>(rows: Rows<T>, layOut: LayOut): AsyncGenerator<Page, void, void> {
  let left = rows.all;
  let at: Part<T>['at'] = 'first';
  do {
    const { page, taken } = await fullest({ ...rows, all: left }, at, layOut);
    yield page;
    left = left.slice(taken);
    at = 'later';
  } while (left.length > 0);
}

/** With one row the press shows how much room is left; from there a page is filled and, if it must, made shorter. */
async function fullest<T>(
  { all, rowHeight, draw }: Rows<T>,
  at: Part<T>['at'],
  layOut: LayOut,
): Promise<{ readonly page: Page; readonly taken: number }> {
  const least = Math.min(1, all.length);
  const attempt = async (count: number): Promise<Page> => {
    return layOut(draw({ some: all.slice(0, count), at, rest: count === all.length ? 'none' : 'more' }));
  };
  const first = await attempt(least);
  if (all.length <= 1) return { page: first, taken: all.length };
  let taken = Math.min(all.length, least + Math.floor(roomBelow(first) / rowHeight));
  let page = taken === least ? first : await attempt(taken);
  while (taken > least && overflows(page).length > 0) {
    taken -= 1;
    page = await attempt(taken);
  }
  return { page, taken };
}

/** Room under the lowest ink of a page, in sheet units. */
function roomBelow(page: Page): number {
  const lowest_pt = Math.max(...page.nodes.filter((node) => node.role === 'TR').map(bottomOf));
  const side_pt = sideHeight * pointsPerUnit;
  return ((page.height_pt + side_pt) / 2 - lowest_pt) / pointsPerUnit;
}

function bottomOf(node: Page['nodes'][number]): number {
  return node.box.y_pt + node.box.height_pt;
}
