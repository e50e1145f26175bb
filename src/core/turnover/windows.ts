/** A plan made better part by part: a window of weeks is free, everything else stays as it is. */
import { type Aim, gapOf, same } from './aim.ts';
import { type Clock, left_s } from './clock.ts';
import type { Counts } from './counts.ts';
import { better, costing, type Desk, valuesOf, withoutUnused } from './desk.ts';
import type { Column, Solver } from './solver.ts';

/** Weeks of a window, and from one window to the next. */
const size_weeks = 18;
const step_weeks = 9;
/** Seconds for one window at most. */
const window_s = 0.8;

type Means = { readonly solver: Solver; readonly clock: Clock };

/**
 * Goes through a season window by window, again and again, until nothing gets better or the time is over.
 * @param desk the programme
 * @param aim what is to be made small
 * @param counts the plan so far
 * @param means a solver and its time
 * @returns a plan that is no worse
 * @valid every plan that keeps the rows
 * @source commonPractice
 */
export function sweep(desk: Desk, aim: Aim, counts: Counts, means: Means): Counts {
  const { solver, clock } = means;
  const columns = costing(desk.columns, aim);
  let found = counts;
  let before = Number.POSITIVE_INFINITY;
  while (left_s(clock) > 0 && aim.value(found) < before - same) {
    before = aim.value(found);
    for (let from = 1 - step_weeks; from < desk.season.task.weeks && left_s(clock) > 0; from += step_weeks) {
      const start = valuesOf(desk, found);
      const inside = within(desk, withoutUnused(columns, aim, start), start, from);
      const most_s = Math.min(window_s, left_s(clock));
      const one = solver({ columns: inside, rows: desk.rows }, { start, most_s, gap: gapOf(aim) });
      found = better(desk, aim, found, one.values);
    }
  }
  return found;
}

/** Plants that stand outside of the window, in part or in whole, stay. */
function within(
  { season }: Desk,
  columns: readonly Column[],
  start: readonly number[],
  from: number,
): readonly Column[] {
  return columns.map((column, at) => {
    const choice = season.choices[at];
    if (choice === undefined || (from <= choice.from_week && choice.to_week < from + size_weeks))
      return column;
    const now = start[at] ?? 0;
    return { ...column, lower: now, upper: now };
  });
}
