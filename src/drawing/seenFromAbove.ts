/** Vessels from above, side by side at one scale; where each stands is not known, so the order says nothing. */
import type { SeenFromAbove } from '../core/plan/figure.ts';
import { usualScale } from './scales.ts';
import { path, type Shape } from './shape.ts';

/** Room in tenths of a millimetre; under each outline its words. */
export type AboveRoom = {
  readonly width: number;
  readonly height: number;
  readonly words: { readonly width: number; readonly height: number };
};

export type AboveDrawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** Top left corner of the words of each, in the order given. */
  readonly words: readonly { readonly left: number; readonly top: number }[];
  readonly oneTo: number;
};

/** Between neighbours; rows stand closer. */
const gap = 40;
const rowGap = 12;

type Cell = { readonly of: SeenFromAbove; readonly left: number; readonly width: number };
type Row = { readonly cells: readonly Cell[]; readonly height: number };

/** At the largest usual scale at which all rows fit. */
export function seenFromAbove(all: readonly SeenFromAbove[], room: AboveRoom): AboveDrawing {
  const widest = Math.max(...all.map((one) => extentOf(one).wide));
  const deepest = Math.max(...all.map((one) => extentOf(one).high));
  const most = { width: room.width - 20, height: room.height - room.words.height - rowGap - 20 };
  for (let shrink = 1; ; shrink *= 1.1) {
    const { oneTo, perReal } = usualScale({ wide: widest * shrink, high: deepest * shrink }, most);
    const rows = rowsOf(all, room, perReal);
    const height = rows.reduce((sum, row) => sum + row.height, 0);
    // Where even the words alone have no room, the drawing grows down instead of shrinking for ever.
    if (height <= room.height || shrink > 100) return drawn(rows, room, { oneTo, perReal, height });
  }
}

function rowsOf(all: readonly SeenFromAbove[], room: AboveRoom, perReal: number): readonly Row[] {
  const rows: Cell[][] = [];
  let left = 0;
  for (const of of all) {
    const width = Math.max(extentOf(of).wide * perReal + 20, room.words.width);
    const row = rows.at(-1);
    if (row === undefined || left + width > room.width) {
      rows.push([{ of, left: 0, width }]);
      left = width + gap;
    } else {
      row.push({ of, left, width });
      left += width + gap;
    }
  }
  return rows.map((cells) => ({
    cells,
    height: Math.max(...cells.map(({ of }) => extentOf(of).high * perReal)) + 20 + room.words.height + rowGap,
  }));
}

type Scaled = { readonly oneTo: number; readonly perReal: number; readonly height: number };

function drawn(rows: readonly Row[], room: AboveRoom, { oneTo, perReal, height }: Scaled): AboveDrawing {
  const shapes: Shape[] = [];
  const words: { left: number; top: number }[] = [];
  let top = 0;
  for (const row of rows) {
    const foot = top + row.height - room.words.height - rowGap;
    for (const { of, left } of row.cells) {
      shapes.push(...outlines(of, left + 10, foot - 10, perReal));
      words.push({ left, top: foot + 8 });
    }
    top += row.height;
  }
  return { width: room.width, height, shapes, words, oneTo };
}

/** Rim and floor together: a floor may be the wider one. */
function extentOf(of: SeenFromAbove) {
  const points = [...of.rim, ...(of.floor ?? [])];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, wide: Math.max(...xs) - left, high: Math.max(...ys) - bottom };
}

/** The rim as a wall, the floor dashed, both standing on the foot of their row. */
function outlines(of: SeenFromAbove, left: number, foot: number, perReal: number): readonly Shape[] {
  const extent = extentOf(of);
  const place = ([x, y]: readonly [number, number]) =>
    [left + (x - extent.left) * perReal, foot - (y - extent.bottom) * perReal] as const;
  const rim: Shape = { d: path(of.rim.map(place), 'closed'), paint: rimPaint[of.measured] };
  if (of.floor === null) return [rim];
  const floor: Shape = {
    d: path(of.floor.map(place), 'closed'),
    paint: { stroke: 'black', width: 3, dash: [12, 8] },
  };
  return [floor, rim];
}

/** What is only known from outside is drawn with a thinner line. */
const rimPaint = {
  inside: { stroke: 'black', width: 7 },
  outside: { stroke: 'black', width: 3 },
} as const;
