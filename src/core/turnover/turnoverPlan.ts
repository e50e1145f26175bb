/** A turnover task in, a plan out. */
import { dayLength_h } from '../crops/dayLength.ts';
import { dateOf, dayNumber_d } from '../calendar.ts';
import { isoWeekOf } from '../isoWeek.ts';
import { assigned } from './assign.ts';
import { bedKinds } from './bedKinds.ts';
import { choicesOf, type Grows } from './choices.ts';
import { faultsIn } from './faults.ts';
import { plantedWeeks } from './plantedWeeks.ts';
import { type Season, seasonOf } from './season.ts';
import { cropWeeks, type Early, earlyWeeks, shortfalls } from './shortfalls.ts';
import type { Solver } from './solver.ts';
import { sowingsOf } from './sowings.ts';
import { type Staged, stagesOf } from './stages.ts';
import { turnoverNotes } from './turnoverNotes.ts';
import type { TurnoverPlan, TurnoverTask, Week } from './turnover.ts';

/** What works a plan out: how crops grow, what solves programmes, and for how long it may. */
export type Means = { readonly grows: Grows; readonly solver: Solver; readonly most_s: number };

/**
 * The plan of a season, better from stage to stage: first one that can be used, then the one that meets most wishes, then
 * of those the most even, then of those the one with the fewest days of sowing, then of those the one on the least bed.
 * @param task a checked task
 * @param means how crops grow, and a solver
 * @returns a plan after each stage; the last is the best
 * @valid see grown and the aims
 * @throws Error where a plan breaks its own rules, which is our mistake
 * @source commonPractice
 */
export function* turnoverPlans(task: TurnoverTask, means: Means): Generator<TurnoverPlan, void, void> {
  const kinds = bedKinds(task);
  const season = seasonOf(task, kinds, choicesOf(task, kinds, means.grows), []);
  const early = earlyWeeks(task, means.grows);
  for (const staged of stagesOf(season, means.solver, means.most_s)) yield planOf(season, staged, early);
}

function planOf(season: Season, { counts, stages }: Staged, early: Early): TurnoverPlan {
  const { task } = season;
  const { placed, relaxed } = assigned(season, counts, []);
  const sowings = sowingsOf(season, placed);
  const crops = cropWeeks(season, counts);
  const short = shortfalls(season, crops, early);
  const planted = plantedWeeks(task, sowings);
  const notes = turnoverNotes(task, { sowings, short, planted, relaxed });
  const calendar = calendarOf(task);
  const plan = { task, calendar, sowings, crops, short, planted, stages, relaxed, notes };
  const faults = faultsIn(plan);
  if (faults.length > 0) throw new Error(`a plan with faults: ${faults.join(', ')}`);
  return plan;
}

/** Middle of a week. */
const middle_d = 3;

function calendarOf(task: TurnoverTask): readonly Week[] {
  return Array.from({ length: task.weeks }, (_, index) => {
    const monday_d = task.firstMonday_d + index * 7;
    const { year, week } = isoWeekOf(monday_d);
    const date = dateOf(monday_d + middle_d);
    const dayOfYear = monday_d + middle_d - dayNumber_d(`${date.slice(0, 4)}-01-01`) + 1;
    return {
      index,
      monday_d,
      monday: dateOf(monday_d),
      isoYear: year,
      isoWeek: week,
      holiday:
        task.holidays.find(({ from_week, to_week }) => from_week <= index && index <= to_week)?.name ?? null,
      mean_degC: task.place.mean_degC[Number(date.slice(5, 7)) - 1] ?? 0,
      daylight_h: dayLength_h(task.place.latitude, dayOfYear),
    };
  });
}
