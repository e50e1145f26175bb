/** Where the labels of a measured sheet lie. */
import type { LabelGrid } from '../core/labelGrid.ts';

/** Left top corner of a label on its paper. */
export type LabelPlace = { readonly left_mm: number; readonly top_mm: number };

/** Corners row by row from the top, in millimetres; the first sheet begins after the labels that are gone already. */
export function labelPlaces_mm(grid: LabelGrid, sheet: 'first' | 'later'): readonly LabelPlace[] {
  const { columns, rows, left_mm, top_mm, across_mm, down_mm, used } = grid;
  const all = Array.from({ length: columns * rows }, (_, index) => ({
    left_mm: left_mm + (index % columns) * across_mm,
    top_mm: top_mm + Math.floor(index / columns) * down_mm,
  }));
  return sheet === 'first' ? all.slice(used) : all;
}
