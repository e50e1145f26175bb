/** A turnover task in, a plan out. */
import { dayLength_h } from '../crops/dayLength.ts';
import { dateOf, dayNumber_d } from '../calendar.ts';
import { isoWeekOf } from '../isoWeek.ts';
import { bedKinds } from './bedKinds.ts';
import type { Change } from './change.ts';
import { choicesOf, type Grows } from './choices.ts';
import type { Clock } from './clock.ts';
import { faultsIn } from './faults.ts';
import { firstCounts } from './firstCounts.ts';
import { type LaidOut, laidOut } from './laidOut.ts';
import { plantedWeeks } from './plantedWeeks.ts';
import { type Season, seasonOf } from './season.ts';
import { cropWeeks, shortfalls } from './shortfalls.ts';
import type { Solver } from './solver.ts';
import { sowingsOf } from './sowings.ts';
import { stagesOf } from './stages.ts';
import type { SownPlan } from './sown.ts';
import { standing } from './standing.ts';
import { turnoverNotes } from './turnoverNotes.ts';
import type { TurnoverPlan, TurnoverTask, WasSown, Week } from './turnover.ts';
import { type Unsown, unsownWeeks } from './unsown.ts';
import { lessened, sownBefore, withSeeds } from './wasSown.ts';

/** What works a plan out: how crops grow, what solves programmes, and the time that it may take. */
export type Means = { readonly grows: Grows; readonly solver: Solver; readonly clock: Clock };

/**
 * A plan of a season that keeps every limit and can be had at once. How good it is was not looked at.
 * @param task a checked task
 * @param grows how crops grow
 * @returns a plan without stages
 * @valid see grown
 * @throws Error where a plan breaks its own rules, which is our mistake
 * @source commonPractice
 */
export function draftPlan(task: TurnoverTask, grows: Grows): TurnoverPlan {
  const season = freshSeason(task, grows);
  const staged = { counts: firstCounts(season), stages: [], stagesOf: () => [] };
  return planOf(season, laidOut(season, staged, [], null), freshUnsown(season, grows));
}

/**
 * The plan of a season, better from stage to stage: first the one that meets most wishes, then of those the most even, then
 * of those the one with the fewest days of sowing, then of those the one on the least bed.
 * @param task a checked task
 * @param means how crops grow, and a solver
 * @returns a plan after each stage; the last is the best
 * @valid see grown and the aims
 * @throws Error where a plan breaks its own rules, which is our mistake
 * @source commonPractice
 */
export function* turnoverPlans(task: TurnoverTask, means: Means): Generator<TurnoverPlan, void, void> {
  const season = freshSeason(task, means.grows);
  const unsown = freshUnsown(season, means.grows);
  let laid: LaidOut | null = null;
  for (const staged of stagesOf(season, means.solver, means.clock)) {
    laid = laidOut(season, staged, [], laid);
    yield planOf(season, laid, unsown);
  }
}

function freshSeason(task: TurnoverTask, grows: Grows): Season {
  const kinds = bedKinds(task);
  return seasonOf(task, kinds, choicesOf(task, kinds, grows), []);
}

function freshUnsown({ task, choices }: Season, grows: Grows): Unsown {
  return unsownWeeks(task, { grows, choices }, 0);
}

/**
 * The rest of a season once more, from a week on, without moving what already stands.
 * @param plan the plan so far
 * @param change what came differently, what is wanted now, and the week from which to plan
 * @param means how crops grow, and a solver
 * @returns a plan after each stage; the last is the best
 * @valid see turnoverPlans
 * @throws Error where a plan breaks its own rules, which is our mistake
 * @source commonPractice
 */
export function* replans(plan: SownPlan, change: Change, means: Means): Generator<TurnoverPlan, void, void> {
  const task = { ...plan.task, wishes: change.wishes ?? plan.task.wishes };
  const kinds = bedKinds(task);
  const stands = standing({ ...plan, task }, change, kinds);
  const fixed = new Map(stands.map(({ batch }) => [batch.choice, batch.units]));
  const choices = choicesOf(task, kinds, means.grows);
  const free = choices.filter(
    ({ sow_week }) => sow_week >= change.now_week && !change.missed_weeks.includes(sow_week),
  );
  const season = seasonOf(
    task,
    kinds,
    free,
    [...fixed].map(([choice, units]) => ({ choice, units })),
  );
  const unsown = unsownWeeks(task, { grows: means.grows, choices }, firstFree(change));
  const sown = sownBefore(plan, change);
  let laid: LaidOut | null = null;
  for (const staged of stagesOf(season, means.solver, means.clock)) {
    laid = laidOut(season, staged, stands, laid);
    yield planOf(season, laid, unsown, sown);
  }
}

/** A week that was missed is over, even where it is the one from which it is planned again. */
function firstFree({ now_week, missed_weeks }: Change): number {
  let week = now_week;
  while (missed_weeks.includes(week)) week += 1;
  return week;
}

function planOf(
  season: Season,
  { counts, stages, placed, relaxed }: LaidOut,
  unsown: Unsown,
  sown: readonly WasSown[] = [],
): TurnoverPlan {
  const { task } = season;
  const left = sowingsOf(season, placed);
  const wasSown = lessened(sown, left);
  const sowings = withSeeds(left, wasSown);
  const crops = cropWeeks(season, counts);
  const short = shortfalls(season, { crops, counts }, unsown);
  const planted = plantedWeeks(task, sowings);
  const notes = turnoverNotes(task, { sowings, short, planted });
  const calendar = calendarOf(task);
  const plan = { task, calendar, sowings, wasSown, crops, short, planted, stages, relaxed, notes };
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
