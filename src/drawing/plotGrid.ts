/** An empty graph to draw by hand: one column a day, fine lines across, hatched where a reading is not good. */
import type { PlotRange } from './plotRange.ts';
import { path, type Shape } from './shape.ts';

export type PlotScale = PlotRange & {
  /** What is good for the fish lies between these two; null where there is no such end. */
  readonly goodFrom: number | null;
  readonly goodTo: number | null;
};

type Box = { readonly left: number; readonly width: number; readonly height: number };

const days = 31;
const hatchStep = 40;

export type PlotGrid = {
  readonly shapes: readonly Shape[];
  /** Values beside the lines across, with their height in the box. */
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  /** Middle of each day's column. */
  readonly columns: readonly number[];
};

/** A graph in a box; y runs down from its top. */
export function plotGrid(scale: PlotScale, box: Box): PlotGrid {
  const y = (value: number): number => box.height * (1 - (value - scale.low) / (scale.high - scale.low));
  const right = box.left + box.width;
  const lines = Math.round((scale.high - scale.low) / scale.step) + 1;
  const values = Array.from({ length: lines }, (_, index) => scale.low + index * scale.step);
  const column = box.width / days;
  const upright = Array.from({ length: days + 1 }, (_, index) => box.left + index * column);
  return {
    ticks: values.map((value) => ({ value, y: y(value) })),
    columns: upright.slice(0, days).map((x) => x + column / 2),
    shapes: [
      ...(scale.goodTo === null ? [] : hatched(box, 0, Math.max(0, y(scale.goodTo)))),
      ...(scale.goodFrom === null ? [] : hatched(box, Math.min(box.height, y(scale.goodFrom)), box.height)),
      thin(upright.map((x) => line(x, 0, x, box.height))),
      thin(values.map((value) => line(box.left, y(value), right, y(value)))),
      { d: path(corners(box), 'closed'), paint: { stroke: 'black', width: 4 } },
    ],
  };
}

function corners(box: Box): readonly (readonly [number, number])[] {
  const right = box.left + box.width;
  return [
    [box.left, 0],
    [right, 0],
    [right, box.height],
    [box.left, box.height],
  ];
}

function thin(lines: readonly string[]): Shape {
  return { d: lines.join(''), paint: { stroke: 'black', width: 1 } };
}

function line(x1: number, y1: number, x2: number, y2: number): string {
  return path(
    [
      [x1, y1],
      [x2, y2],
    ],
    'open',
  );
}

/** Slanting lines over the whole width between two heights. */
function hatched(box: Box, top: number, bottom: number): readonly Shape[] {
  const height = bottom - top;
  if (height <= 0) return [];
  const right = box.left + box.width;
  const lines: string[] = [];
  for (let start = box.left - height; start < right; start += hatchStep) {
    const from = Math.max(start, box.left);
    const to = Math.min(start + height, right);
    if (to > from) lines.push(line(from, bottom - (from - start), to, bottom - (to - start)));
  }
  return [{ d: lines.join(''), paint: { stroke: 'black', width: 1.5 } }];
}
