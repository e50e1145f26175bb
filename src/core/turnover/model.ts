/** The season as a programme: how many units of each choice, in beds and a nursery that are only so large. */
import type { Choice } from './choices.ts';
import { type Counts, pickedUnits } from './counts.ts';
import { type Need, noNeed, type Step, unitsByStep, unitsFor } from './need.ts';
import { type Entry, limitRows } from './rows.ts';
import type { Season } from './season.ts';
import type { Column, Row } from './solver.ts';

/** The columns that count how far a wish is met, one for each step of its need. */
export type Met = {
  readonly wish: number;
  readonly week: number;
  readonly need: Need;
  readonly steps: readonly number[];
};

export type Model = {
  readonly columns: Column[];
  readonly rows: Row[];
  readonly met: readonly Met[];
};

/**
 * The programme of a season without an aim. Column i is choice i; then come the columns that count met wishes.
 * @param season the season
 * @returns columns, rows, and which columns count
 * @valid every season; all choices at zero, or as fixed, keep its rows
 * @source geometry
 */
export function modelOf(season: Season): Model {
  const columns: Column[] = season.choices.map((choice) => columnOf(season, choice));
  const rows: Row[] = [...limitRows(season)];
  const picks = picksOf(season);
  const met = season.needs.flatMap((weeks, wish) =>
    weeks.flatMap((need, week) => {
      const entries = picks.get(`${wish} ${week}`);
      if (entries === undefined || unitsFor(need) === 0) return [];
      const one = { wish, week, need, steps: need.map((step) => counting(columns, step)) };
      const lost = one.steps.map((at): Entry => [at, -1]);
      rows.push({ lower: 0, upper: surplus(season, wish, entries), entries: [...entries, ...lost] });
      return [one];
    }),
  );
  return { columns, rows, met };
}

/** What is picked once is planted for a wish or not at all; what is cut grows on whether it is wanted or not. */
function surplus(season: Season, wish: number, entries: readonly Entry[]): number {
  const isOnce = season.task.wishes[wish]?.crop.picking.kind === 'once';
  const stands = entries.some(([column]) => isFixed(season, column));
  return isOnce && !stands ? 0 : Number.POSITIVE_INFINITY;
}

function isFixed(season: Season, column: number): boolean {
  const choice = season.choices[column];
  return choice !== undefined && season.fixed.has(choice);
}

/** Never more than the largest wish among its pickings. */
function columnOf(season: Season, choice: Choice): Column {
  const fixed = season.fixed.get(choice);
  if (fixed !== undefined) return { cost: 0, lower: fixed, upper: fixed, kind: 'whole' };
  const needs = season.needs[choice.wish] ?? [];
  const most = Math.max(...choice.pick_weeks.map((week) => unitsFor(needs[week] ?? noNeed)));
  return { cost: 0, lower: 0, upper: most, kind: 'whole' };
}

function counting(columns: Column[], { units }: Step): number {
  return columns.push({ cost: 0, lower: 0, upper: units, kind: 'follows' }) - 1;
}

function picksOf(season: Season): ReadonlyMap<string, Entry[]> {
  const found = new Map<string, Entry[]>();
  for (const [column, { wish, pick_weeks }] of season.choices.entries())
    for (const week of pick_weeks) {
      const key = `${wish} ${week}`;
      const entries = found.get(key) ?? [];
      entries.push([column, 1]);
      found.set(key, entries);
    }
  return found;
}

/**
 * Values of the columns that count met wishes.
 * @param season the season
 * @param model its programme
 * @param counts units of each choice
 * @returns values in the order of those columns
 * @valid whole units
 * @source geometry
 */
export function metValues(season: Season, model: Model, counts: Counts): readonly number[] {
  const picked = pickedUnits(season, counts);
  return model.met.flatMap(({ wish, week, need }) => unitsByStep(need, picked[wish]?.[week] ?? 0));
}
