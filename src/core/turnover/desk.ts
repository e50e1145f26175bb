/** The programme of a season while its stages go over it, and what so many units mean in it. */
import { type Aim, same } from './aim.ts';
import type { Counts } from './counts.ts';
import { metValues, type Model } from './model.ts';
import type { Entry } from './rows.ts';
import type { Season } from './season.ts';
import type { Column, Row } from './solver.ts';

/** A whole number that a solver gives may be a little less or more. */
const nearest = 0.5;

export type Desk = {
  readonly season: Season;
  readonly model: Model;
  /** With no more room than what the aims so far have reached leaves them. */
  columns: readonly Column[];
  readonly rows: Row[];
  readonly aims: Aim[];
  /** Of the aims that are reached: the row by which none of it is given up; it is one of `rows`. */
  readonly kept: Row[];
};

/** What was found, in whole units, if it keeps every row and is no worse. */
export function better(desk: Desk, aim: Aim, counts: Counts, values: readonly number[] | null): Counts {
  if (values === null) return counts;
  const found = desk.season.choices.map((_, column) => Math.floor((values[column] ?? 0) + nearest));
  const isBetter = aim.value(found) <= aim.value(counts) + same && keeps(desk, valuesOf(desk, found));
  return isBetter ? found : counts;
}

/**
 * Values of all columns for so many units.
 * @param desk the programme
 * @param counts units of each choice
 * @returns values in the order of the columns
 * @valid whole units
 * @source geometry
 */
export function valuesOf(desk: Desk, counts: Counts): readonly number[] {
  const { season, model, aims } = desk;
  return [...counts, ...metValues(season, model, counts), ...aims.flatMap(({ fill }) => fill(counts))];
}

function keeps({ columns, rows }: Desk, values: readonly number[]): boolean {
  const inside = (
    value: number,
    { lower, upper }: { readonly lower: number; readonly upper: number },
  ): boolean => lower - same <= value && value <= upper + same;
  return (
    columns.every((column, at) => inside(values[at] ?? 0, column)) &&
    rows.every((row) =>
      inside(
        row.entries.reduce((sum, [column, factor]) => sum + factor * (values[column] ?? 0), 0),
        row,
      ),
    )
  );
}

/**
 * The most that a sum can be.
 * @param columns all columns
 * @param entries the sum
 * @returns 0 and more
 * @valid factors of 0 and more
 * @source geometry
 * @example mostOf([{ cost: 0, lower: 0, upper: 3, kind: 'whole' }], [[0, 2]]) // 6
 */
export function mostOf(columns: readonly Column[], entries: readonly Entry[]): number {
  return entries.reduce((sum, [column, factor]) => sum + factor * (columns[column]?.upper ?? 0), 0);
}

/**
 * The columns with what they cost an aim.
 * @param columns all columns
 * @param aim what is to be made small
 * @returns columns in the same order
 * @valid every aim
 * @source geometry
 */
export function costing(columns: readonly Column[], aim: Aim): readonly Column[] {
  const costs = new Map(aim.entries);
  return columns.map((column, at) => ({ ...column, cost: costs.get(at) ?? 0 }));
}

/**
 * The columns, but those that cannot help an aim stay as they are.
 * @param columns all columns
 * @param aim what is to be made small
 * @param start values of all columns now
 * @returns columns in the same order
 * @valid every aim
 * @source geometry
 */
export function withoutUnused(
  columns: readonly Column[],
  aim: Aim,
  start: readonly number[],
): readonly Column[] {
  return columns.map((column, at) => {
    const now = start[at] ?? 0;
    return aim.unused.has(at) ? { ...column, lower: now, upper: now } : column;
  });
}
