/** A plan made better part by part: a window of weeks is free, everything else stays as it is. */
import { type Aim, gapOf, same } from './aim.ts';
import { type Clock, left_s } from './clock.ts';
import type { Counts } from './counts.ts';
import { better, costing, type Desk, valuesOf, withoutUnused } from './desk.ts';
import type { Column, Solver } from './solver.ts';

/** Weeks of the first windows; where they make nothing better, of windows twice as long. */
const size_weeks = 18;
/** Seconds for one week of a window at most. */
const week_s = 0.045;

type Means = { readonly solver: Solver; readonly clock: Clock };

/**
 * Goes through a season window by window, each half over the one before, again and again, until nothing gets better or the
 * time is over.
 * @param desk the programme
 * @param aim what is to be made small
 * @param counts the plan so far
 * @param means a solver and its time
 * @returns a plan that is no worse
 * @valid every plan that keeps the rows
 * @source commonPractice
 */
export function sweep(desk: Desk, aim: Aim, counts: Counts, means: Means): Counts {
  const { clock } = means;
  const { weeks } = desk.season.task;
  let found = counts;
  for (let size = size_weeks; (size === size_weeks || size < weeks) && left_s(clock) > 0; size *= 2) {
    let before = Number.POSITIVE_INFINITY;
    while (left_s(clock) > 0 && aim.value(found) < before - same) {
      before = aim.value(found);
      for (let from = -size / 2; from < weeks - size / 2 && left_s(clock) > 0; from += size / 2)
        found = inWindow(desk, aim, found, { ...means, window: { from, to: from + size } });
    }
  }
  return found;
}

type Window = { readonly from: number; readonly to: number };

function inWindow(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  { solver, clock, window }: Means & { readonly window: Window },
): Counts {
  const start = valuesOf(desk, counts);
  const columns = within(desk, withoutUnused(costing(desk.columns, aim), aim, start), start, window);
  const most_s = Math.min(week_s * (window.to - window.from), left_s(clock));
  const { values } = solver({ columns, rows: desk.rows }, { start, most_s, gap: gapOf(aim) });
  return better(desk, aim, counts, values);
}

/** Plants that stand outside of the window, in part or in whole, stay. */
function within(
  { season }: Desk,
  columns: readonly Column[],
  start: readonly number[],
  { from, to }: Window,
): readonly Column[] {
  return columns.map((column, at) => {
    const choice = season.choices[at];
    if (choice === undefined || (from <= choice.from_week && choice.to_week < to)) return column;
    const now = start[at] ?? 0;
    return { ...column, lower: now, upper: now };
  });
}
