/** A range as a bar: white good, slanted lines watch, crossed lines act now. No colour carries a meaning. */
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
  /** Where each limit stands, counted from 0, for the numbers under the bar; limits that coincide are given once. */
  readonly ticks: readonly { readonly limit: number; readonly x: number }[];
};

/** Between two lines; where to act they are crossed, so that a smudge makes nothing of the one into the other. */
const hatchStep = { watch: 22, act: 20 } as const;

/** The bar in a box of the given size, both ends hatched and equally long. */
export function band(limits: BandLimits, width: number, height: number): Band {
  const span = limits.actAbove - limits.actBelow;
  const end = 0.16 * width;
  const x = (value: number): number => end + ((value - limits.actBelow) / span) * (width - 2 * end);
  const values = [limits.actBelow, limits.goodFrom, limits.goodTo, limits.actAbove];
  const ticks = [...new Set(values)].map((value) => ({ limit: values.indexOf(value), x: x(value) }));
  return {
    ticks,
    shapes: [
      ...crossed(0, x(limits.actBelow), height),
      ...slanted(x(limits.actBelow), x(limits.goodFrom), height, hatchStep.watch),
      ...slanted(x(limits.goodTo), x(limits.actAbove), height, hatchStep.watch),
      ...crossed(x(limits.actAbove), width, height),
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

/** Slanting lines both ways. */
function crossed(left: number, right: number, height: number): readonly Shape[] {
  const mirror = ([x, y]: Spot): Spot => [x, height - y];
  const there = slants(left, right, height, hatchStep.act);
  return inked([...there, ...there.map(([from, to]): Line => [mirror(from), mirror(to)])]);
}

function slanted(left: number, right: number, height: number, step: number): readonly Shape[] {
  return inked(slants(left, right, height, step));
}

type Spot = readonly [x: number, y: number];
type Line = readonly [from: Spot, to: Spot];

/** From lower left to upper right, cut at both ends of the field. */
function slants(left: number, right: number, height: number, step: number): readonly Line[] {
  const lines: Line[] = [];
  for (let start = left - height + step / 2; start < right; start += step) {
    const [from, to] = [Math.max(start, left), Math.min(start + height, right)];
    if (to > from)
      lines.push([
        [from, height - (from - start)],
        [to, height - (to - start)],
      ]);
  }
  return lines;
}

function inked(lines: readonly Line[]): readonly Shape[] {
  if (lines.length === 0) return [];
  return [{ d: lines.map((line) => path(line, 'open')).join(''), paint: { stroke: 'black', width: 2.5 } }];
}
