/** Weeks in which something has to be sown, as less would be met without them. */
import { same } from './aim.ts';
import { type Clock, left_s, partOf } from './clock.ts';
import { costing, type Desk } from './desk.ts';
import { dualOf } from './duals.ts';
import type { Column, Programme, Row, Solver } from './solver.ts';

/** A week with the column that says whether anything is sown in it, and the columns of what may be. */
export type SowingWeek = { readonly column: number; readonly choices: readonly number[] };

type Means = { readonly solver: Solver; readonly clock: Clock };

/** So large a part of the time goes to trying. */
const trying_frac = 0.35;

/**
 * Rows on the weeks of sowing that every plan keeps which meets as much as is met now.
 * Some weeks are tried without: where the prices of the rows then prove that less would be met, one of them is needed. Weeks
 * that the prices do not depend on are left out of the row. First each week is tried by itself, then all that the fewest
 * weeks would leave out.
 * @param desk the programme before the columns of the days
 * @param weeks all weeks in which something may be sown
 * @param means a solver and its time
 * @returns rows, each of which says that one of some weeks is needed
 * @valid the first aim of the desk is reached and kept
 * @source geometry
 */
export function neededWeeks(desk: Desk, weeks: readonly SowingWeek[], means: Means): readonly Row[] {
  const [demand] = desk.aims;
  const [kept] = desk.kept;
  if (demand === undefined || kept === undefined) return [];
  const clock = partOf(means.clock, trying_frac);
  const columns = costing(desk.columns, demand).map((column): Column => ({ ...column, kind: 'real' }));
  const programme = { columns, rows: desk.rows.filter((row) => row !== kept) };
  const found: (readonly SowingWeek[])[] = [];
  means.solver.trials(programme, left_s(clock), (pricesWithout) => {
    const tried = (closed: readonly SowingWeek[]): readonly SowingWeek[] | null =>
      needed(programme, closed, pricesWithout(closed.flatMap(({ choices }) => choices)), kept.upper);
    for (const week of weeks) {
      const one = left_s(clock) > 0 ? tried([week]) : null;
      if (one !== null) found.push(one);
    }
    let closed = leftOut(weeks, found, means.solver, clock);
    while (closed.length > 0 && left_s(clock) > 0) {
      const some = manyOf(closed, tried, clock);
      found.push(...some);
      closed = some.length === 0 ? [] : leftOut(weeks, found, means.solver, clock);
    }
  });
  return found.map((some) => oneOf(some));
}

/** Weeks apart from each other, one of each of which is needed. */
function manyOf(
  closed: readonly SowingWeek[],
  tried: (closed: readonly SowingWeek[]) => readonly SowingWeek[] | null,
  clock: Clock,
): readonly (readonly SowingWeek[])[] {
  const found: (readonly SowingWeek[])[] = [];
  let left = closed;
  while (left.length > 0 && left_s(clock) > 0) {
    const one = tried(left);
    if (one === null) break;
    found.push(one);
    left = left.filter((week) => !one.includes(week));
  }
  return found;
}

/** Of weeks that are closed those that matter; null where as much may be met without them. */
function needed(
  programme: Programme,
  closed: readonly SowingWeek[],
  prices: readonly number[],
  most: number,
): readonly SowingWeek[] | null {
  const dual = dualOf(programme, prices);
  /** What the bound gains where nothing is sown in a week. */
  const gains = closed.map((week) => ({
    week,
    gain: week.choices.reduce((sum, at) => {
      const column = programme.columns[at];
      const cost = dual.costs[at] ?? 0;
      return sum + (column === undefined || cost >= 0 ? 0 : -cost * column.upper);
    }, 0),
  }));
  let bound = dual.bound + gains.reduce((sum, { gain }) => sum + gain, 0);
  if (!(bound > most + same)) return null;
  const matters: SowingWeek[] = [];
  for (const { week, gain } of gains.sort((a, b) => a.gain - b.gain))
    if (bound - gain > most + same) bound -= gain;
    else matters.push(week);
  return matters;
}

/** Weeks in which nothing is sown where as few as can be are, by the rows so far. */
function leftOut(
  weeks: readonly SowingWeek[],
  found: readonly (readonly SowingWeek[])[],
  solver: Solver,
  clock: Clock,
): readonly SowingWeek[] {
  const place = new Map(weeks.map((week, at) => [week, at]));
  const columns = weeks.map((): Column => ({ cost: 1, lower: 0, upper: 1, kind: 'whole' }));
  const rows = found.map((some) => oneOf(some.map((week) => ({ ...week, column: place.get(week) ?? 0 }))));
  const { values } = solver({ columns, rows }, { start: null, most_s: left_s(clock), gap: 1 - 10 * same });
  return values === null ? [] : weeks.filter((_, at) => (values[at] ?? 0) < 0.5);
}

function oneOf(weeks: readonly SowingWeek[]): Row {
  return { lower: 1, upper: Number.POSITIVE_INFINITY, entries: weeks.map(({ column }) => [column, 1]) };
}
