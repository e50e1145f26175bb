/** A range as a bar: solid good, white watch, hatched act now. No colour carries a meaning. */
import { path, type Shape } from './shape.ts';

/** The four temperatures (or other readings) at which the bar changes. */
export type BandLimits = {
  readonly actBelow: number;
  readonly goodFrom: number;
  readonly goodTo: number;
  readonly actAbove: number;
};

export type Band = {
  readonly shapes: readonly Shape[];
  /** Where each limit stands, for the numbers under the bar; limits that coincide are given once. */
  readonly ticks: readonly { readonly value: number; readonly x: number }[];
};

const hatchStep = 14;

/** The bar in a box of the given size, both ends hatched and equally long. */
export function band(limits: BandLimits, width: number, height: number): Band {
  const span = limits.actAbove - limits.actBelow;
  const end = 0.16 * width;
  const x = (value: number): number => end + ((value - limits.actBelow) / span) * (width - 2 * end);
  const values = [limits.actBelow, limits.goodFrom, limits.goodTo, limits.actAbove];
  const ticks = [...new Set(values)].map((value) => ({ value, x: x(value) }));
  return {
    ticks,
    shapes: [
      ...hatched(0, x(limits.actBelow), height),
      ...hatched(x(limits.actAbove), width, height),
      { d: box(x(limits.goodFrom), x(limits.goodTo), height), paint: { fill: 'black' } },
      { d: box(0, width, height), paint: { stroke: 'black', width: 4 } },
      ...ticks.map((tick) => tickMark(tick.x, height)),
    ],
  };
}

function box(left: number, right: number, height: number): string {
  return path(
    [
      [left, 0],
      [right, 0],
      [right, height],
      [left, height],
    ],
    'closed',
  );
}

function tickMark(x: number, height: number): Shape {
  return {
    d: path(
      [
        [x, 0],
        [x, height + 9],
      ],
      'open',
    ),
    paint: { stroke: 'black', width: 3 },
  };
}

/** Slanting lines from lower left to upper right, cut at both ends of the field. */
function hatched(left: number, right: number, height: number): readonly Shape[] {
  const lines: string[] = [];
  for (let start = left - height; start < right; start += hatchStep) {
    const from = Math.max(start, left);
    const to = Math.min(start + height, right);
    if (to > from)
      lines.push(
        path(
          [
            [from, height - (from - start)],
            [to, height - (to - start)],
          ],
          'open',
        ),
      );
  }
  return [{ d: lines.join(''), paint: { stroke: 'black', width: 3 } }];
}
