/** From millimetres of the real thing to tenths of a millimetre on paper, with y turned down. */
import type { Point, Section } from '../core/plan/figure.ts';

export type Fit = {
  readonly scale: number;
  readonly x: (x_mm: number) => number;
  readonly y: (y_mm: number) => number;
  readonly place: (point: Point) => readonly [number, number];
};

export type Extent = {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};

/** The floor of the place is part of the drawing while something stands on it or in it. */
export function standsOnFloor(section: Section): 'yes' | 'no' {
  const lowest = Math.min(...section.vessels.flatMap((vessel) => vessel.outline.map(([, y]) => y)));
  return lowest < 150 ? 'yes' : 'no';
}

/** Everything that the section shows, pipes included. */
export function extentOf(section: Section): Extent {
  const points = [
    ...section.vessels.flatMap((vessel) => vessel.outline),
    ...section.pipes.flatMap((pipe) => pipe.points),
  ];
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  // A tank that is sunk up to its rim lies below the floor as a whole, and the floor is still drawn.
  const heights = standsOnFloor(section) === 'yes' ? [...ys, 0] : ys;
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...heights),
    top: Math.max(...heights),
  };
}

/** Half of the widest line, so that a wall at the edge of the box is not cut. */
export const edge = 9;

/** One scale for both directions, the drawing in the middle of the width and standing on the ground of the box. */
export function fitInto(extent: Extent, box: { readonly width: number; readonly height: number }): Fit {
  const wide = extent.right - extent.left;
  const high = extent.top - extent.bottom;
  const scale = Math.min((box.width - 2 * edge) / wide, (box.height - 2 * edge) / high);
  const left = (box.width - wide * scale) / 2;
  const x = (x_mm: number): number => left + (x_mm - extent.left) * scale;
  const y = (y_mm: number): number => box.height - edge - (y_mm - extent.bottom) * scale;
  return { scale, x, y, place: ([px, py]) => [x(px), y(py)] };
}

/** A round length for the scale bar, in whole units of the reader: the longest of 1, 2, 5 × 10ⁿ that is not over the most. */
export function roundLength_mm(longest_mm: number, unit_mm: number): number {
  const longest = longest_mm / unit_mm;
  const power = 10 ** Math.floor(Math.log10(longest));
  const step = [5, 2, 1].find((one) => one * power <= longest) ?? 1;
  return step * power * unit_mm;
}
