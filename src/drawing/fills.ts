/** Fills that a photocopier keeps: stones as dots, water as fine level lines. */
import type { Point } from '../core/plan/figure.ts';
import type { Fit } from './fit.ts';
import { type Shape, tenth } from './shape.ts';

/** Distances on paper, in tenths of a millimetre. */
const stoneGrid = 19;
const wallClear = 11;
const waterGrid = 30;

/** Inside of a vessel between its two walls at a height; null above the rim and below the floor. */
export function spanAt(outline: readonly Point[], y: number): readonly [number, number] | null {
  const crossings: number[] = [];
  for (let i = 0; i + 1 < outline.length; i++) {
    const [x1, y1] = outline[i] ?? [0, 0];
    const [x2, y2] = outline[i + 1] ?? [0, 0];
    if ((y1 <= y && y < y2) || (y2 <= y && y < y1)) crossings.push(x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
  }
  return crossings.length < 2 ? null : [Math.min(...crossings), Math.max(...crossings)];
}

/** Stones from the floor to the top of the media: full dots under the water line, small ones in the dry layer. */
export function stones(
  outline: readonly Point[],
  top_mm: number,
  line_mm: number,
  fit: Fit,
): readonly Shape[] {
  const floor = Math.min(...outline.map(([, y]) => y));
  const wet: string[] = [];
  const dry: string[] = [];
  let row = 0;
  for (let y = fit.y(floor) - wallClear; y > fit.y(top_mm) + 3; y -= stoneGrid * 0.82) {
    const real = floor + (fit.y(floor) - y) / fit.scale;
    const span = spanAt(outline, real);
    row += 1;
    if (span === null) continue;
    const into = real <= line_mm ? wet : dry;
    const right = fit.x(span[1]) - wallClear;
    for (let x = fit.x(span[0]) + wallClear + (row % 2) * (stoneGrid / 2); x <= right; x += stoneGrid) {
      into.push(`M${tenth(x)} ${tenth(y)}L${tenth(x + 0.1)} ${tenth(y)}`);
    }
  }
  return [dots(wet, 6), dots(dry, 3.6)].flat();
}

function dots(at: readonly string[], width: number): readonly Shape[] {
  if (at.length === 0) return [];
  return [{ d: at.join(''), paint: { stroke: 'black', width, cap: 'round' } }];
}

/** Fine level lines from the floor up to a water level, wall to wall. */
export function water(outline: readonly Point[], level_mm: number, fit: Fit): readonly Shape[] {
  const floor = Math.min(...outline.map(([, y]) => y));
  const lines: string[] = [];
  for (let y = fit.y(level_mm) + waterGrid; y < fit.y(floor) - 8; y += waterGrid) {
    const span = spanAt(outline, floor + (fit.y(floor) - y) / fit.scale);
    if (span === null) continue;
    lines.push(`M${tenth(fit.x(span[0]) + 3)} ${tenth(y)}L${tenth(fit.x(span[1]) - 3)} ${tenth(y)}`);
  }
  return lines.length === 0 ? [] : [{ d: lines.join(''), paint: { stroke: 'black', width: 1 } }];
}
