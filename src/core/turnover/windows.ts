/** A plan made better part by part: a window of weeks is free, everything else stays as it is. */
import type { Aim } from './aim.ts';
import type { Counts } from './counts.ts';
import { aimed, better, type Desk, same, valuesOf } from './desk.ts';
import type { Column, Solver } from './solver.ts';

/** Weeks of a window, and from one window to the next. */
const size_weeks = 18;
const step_weeks = 9;
/** Seconds for one window at most. */
const window_s = 0.8;

type Means = { readonly solver: Solver; readonly most_s: number; readonly gap: number };

/**
 * Goes through a season window by window, again and again, until nothing gets better or the time is over.
 * @param desk the programme
 * @param aim what is to be made small
 * @param counts the plan so far
 * @param means a solver, its time, and what counts as the same
 * @returns a plan that is no worse, and the seconds that it took
 * @valid every plan that keeps the rows
 * @source commonPractice
 */
export function sweep(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  means: Means,
): { readonly found: Counts; readonly took_s: number } {
  const { solver, most_s, gap } = means;
  let found = counts;
  let took_s = 0;
  let before = Number.POSITIVE_INFINITY;
  while (took_s < most_s && aim.value(found) < before - same) {
    before = aim.value(found);
    for (let from = 1 - step_weeks; from < desk.season.task.weeks && took_s < most_s; from += step_weeks) {
      const start = valuesOf(desk, found);
      const columns = within(desk, aimed(desk.columns, aim, start), start, from);
      const one = solver(
        { columns, rows: desk.rows },
        { start, most_s: Math.min(window_s, most_s - took_s), gap },
      );
      took_s += one.took_s;
      found = better(desk, aim, found, one.values);
    }
  }
  return { found, took_s };
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
