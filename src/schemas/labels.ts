/** A sheet of blank labels, measured with a ruler; and the grid against itself and its paper. */
import * as z from 'zod';
import type { LabelGrid } from '../core/labelGrid.ts';
import type { Problem } from '../core/problem.ts';
import { number, whole } from './fields.ts';
import { type Path, valueAt } from './schemaAt.ts';

export const labelsFile = z.strictObject({
  /** Labels side by side. */
  columns: whole(1, 20, ''),
  /** Labels one above the other. */
  rows: whole(1, 40, ''),
  /** Width of one label. */
  labelWidth_mm: number(30, 300, 'mm'),
  /** Height of one label. */
  labelHeight_mm: number(20, 300, 'mm'),
  /** From the left edge of the paper to the first label. */
  left_mm: number(0, 200, 'mm'),
  /** From the top edge of the paper to the first label. */
  top_mm: number(0, 200, 'mm'),
  /** From the left edge of a label to the left edge of the next one. Measure over many and divide. */
  across_mm: number(0, 300, 'mm'),
  /** From the top edge of a label to the top edge of the one below. */
  down_mm: number(0, 300, 'mm'),
  /** Labels of the sheet that are gone already, counted row by row from the top left. */
  used: whole(0, 799, '').default(0),
});

/** A ruler reads to half a millimetre. */
const ruler_mm = 0.5;

/** ISO 216 A4, and North American Letter (8.5 x 11 in). */
const papers = {
  A4: { width_mm: 210, height_mm: 297 },
  Letter: { width_mm: 215.9, height_mm: 279.4 },
} as const;

/** Only a grid whose numbers are each sound is held against itself; all that is wrong with it is told at once. */
export function checkLabels(raw: unknown, place: Path): readonly Problem[] {
  const read = labelsFile.strip().safeParse(valueAt(raw, ['labels']));
  if (!read.success) return [];
  const grid = read.data;
  const paper = papers[valueAt(raw, ['sheet', 'paper']) === 'Letter' ? 'Letter' : 'A4'];
  const all = grid.columns * grid.rows;
  return [
    ...pitch(grid.columns, grid.across_mm, grid.labelWidth_mm, [...place, 'across_mm']),
    ...pitch(grid.rows, grid.down_mm, grid.labelHeight_mm, [...place, 'down_mm']),
    ...offPaper(endAcross_mm(grid), paper.width_mm, [...place, 'columns']),
    ...offPaper(endDown_mm(grid), paper.height_mm, [...place, 'rows']),
    ...(grid.used < all
      ? []
      : [
          {
            code: 'labelsUsedUp' as const,
            place: [...place, 'used'],
            given: String(grid.used),
            max: all - 1,
            unit: '',
          },
        ]),
  ];
}

function endAcross_mm({ left_mm, columns, across_mm, labelWidth_mm }: LabelGrid): number {
  return left_mm + (columns - 1) * across_mm + labelWidth_mm;
}

function endDown_mm({ top_mm, rows, down_mm, labelHeight_mm }: LabelGrid): number {
  return top_mm + (rows - 1) * down_mm + labelHeight_mm;
}

/** With a single label in a row there is no next one to measure to. */
function pitch(count: number, pitch_mm: number, size_mm: number, place: Path): readonly Problem[] {
  if (count === 1 || size_mm <= pitch_mm + 1e-9) return [];
  return [{ code: 'labelPitch', place, given: String(pitch_mm), min: size_mm, unit: 'mm' }];
}

function offPaper(end_mm: number, paper_mm: number, place: Path): readonly Problem[] {
  if (end_mm <= paper_mm + ruler_mm) return [];
  return [{ code: 'labelsOffPaper', place, given: String(end_mm), max: paper_mm, unit: 'mm' }];
}
