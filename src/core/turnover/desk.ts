/** The programme of a season while its stages go over it, and what so many units mean in it. */
import type { Aim } from './aim.ts';
import type { Counts } from './counts.ts';
import { metValues } from './demandAim.ts';
import type { Model } from './model.ts';
import type { Season } from './season.ts';
import type { Column, Row } from './solver.ts';

/** A whole number that a solver gives may be a little less or more. */
const nearest = 0.5;
/** Sums of parts of one are the same when they differ by less. */
export const same = 1e-6;

export type Desk = {
  readonly season: Season;
  readonly model: Model;
  readonly columns: Column[];
  readonly rows: Row[];
  readonly aims: Aim[];
};

/** What was found, in whole units, if it keeps every row and is no worse. */
export function better(desk: Desk, aim: Aim, counts: Counts, values: readonly number[]): Counts {
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
 * The columns with what they cost this aim; those that cannot help it stay as they are.
 * @param columns all columns
 * @param aim what is to be made small
 * @param start values of all columns now
 * @returns columns in the same order
 * @valid every aim
 * @source geometry
 */
export function aimed(columns: readonly Column[], aim: Aim, start: readonly number[]): readonly Column[] {
  const { entries, unused } = aim;
  const costs = new Map(entries);
  return columns.map((column, at) => {
    const cost = costs.get(at) ?? 0;
    const now = start[at] ?? 0;
    return unused.has(at) ? { ...column, cost, lower: now, upper: now } : { ...column, cost };
  });
}
