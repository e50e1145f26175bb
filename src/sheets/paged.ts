/** A list of equal rows that runs over as many pages as it takes. */
import type { Sheet } from '../paper/layOut.ts';
import { pointsPerUnit } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Box, Page } from '../paper/page.ts';
import { sideHeight } from './parts/look.ts';
import type { LayOut } from './sheetKind.ts';

/** What is written in a row: in its first cell, or in each of them. */
type Row = string | readonly string[];

/** What a page of the list is drawn from. */
export type Part<T extends Row> = {
  readonly some: readonly T[];
  /** The first page may bear more than the others. */
  readonly at: 'first' | 'later';
  /** Whether anything is left for another page. */
  readonly rest: 'none' | 'more';
};

type Rows<T extends Row> = {
  readonly all: readonly T[];
  /** Height of a row, in sheet units. */
  readonly rowHeight: number;
  readonly draw: (part: Part<T>) => Sheet;
};

type Taken = { readonly page: Page; readonly taken: number };

/** Pages in turn, each with as many rows as it has room for, one at least. */
export async function* paged<T extends Row>(rows: Rows<T>, layOut: LayOut): AsyncGenerator<Page, void, void> {
  let left = rows.all;
  let at: Part<T>['at'] = 'first';
  // With one row the press shows how much room there is; a later page has about as much as the one before it.
  let guess = 1;
  do {
    const { page, taken } = await fullest({ ...rows, all: left }, { at, guess }, layOut);
    yield page;
    left = left.slice(taken);
    at = 'later';
    guess = taken;
  } while (left.length > 0);
}

/** From a guess up or down to the page that has no room for one more row. */
async function fullest<T extends Row>(
  { all, rowHeight, draw }: Rows<T>,
  { at, guess }: { readonly at: Part<T>['at']; readonly guess: number },
  layOut: LayOut,
): Promise<Taken> {
  const least = Math.min(1, all.length);
  let best: Taken | null = null;
  let tooMany = all.length + 1;
  let taken = Math.min(all.length, guess);
  for (;;) {
    const rest = taken === all.length ? 'none' : 'more';
    const page = await layOut(draw({ some: all.slice(0, taken), at, rest }));
    const { most, standing, room } = measured(page, taken, rowHeight);
    tooMany = Math.min(tooMany, Math.max(least, most) + 1);
    const fits = taken === least || (taken < tooMany && overflows(page).length === 0);
    if (fits) best = { page, taken };
    else tooMany = Math.min(tooMany, taken);
    // Words stand in the middle of their row; where there are none, nothing is cut.
    const isFull = fits && room < rowHeight / 2 && !isBlank(all[taken]);
    if (best !== null && (isFull || best.taken + 1 >= tooMany)) return best;
    taken = Math.max((best?.taken ?? 0) + 1, Math.min(standing, tooMany - 1));
  }
}

function isBlank(row: Row | undefined): boolean {
  return [row].flat().join('') === '';
}

type Measured = {
  /** Rows for which there is room at the most, if all after the first one are as low as a row can be. */
  readonly most: number;
  /** Rows that stand clear, or would if those that are missing were as high as those that are there. */
  readonly standing: number;
  /** Height under the last row; in sheet units, as all of these are. */
  readonly room: number;
};

/** What a page with so many rows tells of the room on it. */
function measured(page: Page, taken: number, rowHeight: number): Measured {
  const boxes = page.nodes.filter((node) => node.role === 'TR').map(({ box }) => box);
  const rows = boxes.slice(boxes.length - taken);
  const foot_pt = (page.height_pt + sideHeight * pointsPerUnit) / 2;
  const below = (rest: readonly Box[]) =>
    (foot_pt - Math.max(...rest.map(({ y_pt, height_pt }) => y_pt + height_pt))) / pointsPerUnit;
  const room = below(boxes);
  const clear = rows.filter(({ y_pt, height_pt }) => y_pt + height_pt / 2 < foot_pt).length;
  const height = rows.reduce((sum, { height_pt }) => sum + height_pt, 0) / pointsPerUnit / taken;
  return {
    most: taken === 0 ? 0 : 1 + Math.floor(below(rows.slice(0, 1)) / rowHeight),
    standing: clear < taken ? clear : taken + Math.round(room / height),
    room,
  };
}
