/** A kept plan into what planning again needs; or every problem with it, at once. */
import { dayNumber_d } from '../core/calendar.ts';
import type { Problem } from '../core/problem.ts';
import { firstClash } from '../core/turnover/clash.ts';
import { numbersOf } from '../core/turnover/emptied.ts';
import type { Sown, SownPlan } from '../core/turnover/sown.ts';
import type { TurnoverTask, WasSown } from '../core/turnover/turnover.ts';
import { plantUnit } from '../core/turnover/units.ts';
import { free_week, isHoliday, weekFrom } from '../core/turnover/weeks.ts';
import { readBySchema } from './issues.ts';
import { nearest } from './nearest.ts';
import { type PlanFile, placeOf, planFile, type SowingFile, type WasSownFile } from './planFile.ts';
import { sowingDays } from './sowingDays.ts';
import { withoutNulls } from './withoutNulls.ts';

/**
 * @param raw the plan's plain data
 * @param task the season that it is to be a plan of, with what was wanted then
 */
export function toSown(
  raw: unknown,
  task: TurnoverTask,
): SownPlan | { readonly problems: readonly Problem[] } {
  const read = readBySchema(planFile, withoutNulls(raw), []);
  if ('problems' in read) return read;
  const others = otherSeason(read.value, task);
  // The weeks and places of another season say nothing here.
  if (others.length > 0) return { problems: others };
  const found = read.value.sowings.flatMap((one, at) =>
    sowingProblems(one, task).map((problem) => below(['sowings', at], problem)),
  );
  const gone = read.value.wasSown.flatMap((one, at) =>
    placeProblems(one, task).map((problem) => below(['wasSown', at], problem)),
  );
  found.push(...gone, ...twice(read.value));
  const plan = {
    task,
    sowings: read.value.sowings.map((one) => sownOf(one, task)),
    wasSown: read.value.wasSown.map(wasSownOf),
  };
  const problems = found.length > 0 ? found : clashes(plan);
  return problems.length > 0 ? { problems } : plan;
}

function otherSeason(file: PlanFile, task: TurnoverTask): readonly Problem[] {
  const wanted = placeOf(task);
  const keys = ['season', 'firstMonday', 'weeks', 'place_mm'] as const;
  const own = keys.flatMap((key): readonly Problem[] =>
    file[key] === wanted[key]
      ? []
      : [{ code: 'planOther', place: [key], given: String(file[key]), other: String(wanted[key]) }],
  );
  const [given, other] = [file, wanted].map(({ beds }) =>
    beds.map(({ name, places }) => `${name} (${places})`).join(', '),
  );
  return given === other ? own : [...own, { code: 'planOther', place: ['beds'], given, other } as Problem];
}

/** By its name somebody tells that a sowing failed. */
function twice({ sowings }: PlanFile): readonly Problem[] {
  const names = sowings.map(({ id }) => id);
  return names.flatMap((given, at): readonly Problem[] =>
    names.indexOf(given) < at ? [{ code: 'planTwice', place: ['sowings', at, 'id'], given }] : [],
  );
}

function sowingProblems(sowing: SowingFile, task: TurnoverTask): readonly Problem[] {
  const weeks = sowing.strips.flatMap((strip, at) =>
    weekProblems(strip, task).map((one) => below(['strips', at], one)),
  );
  return [...placeProblems(sowing, task), ...away(sowing, task), ...sowingDays(sowing, task), ...weeks];
}

/** A crop that was wanted, a bed that is there, and places that it has. */
function placeProblems(sowing: SowingFile | WasSownFile, task: TurnoverTask): readonly Problem[] {
  const { bed, strips } = sowing;
  const ofBed = task.beds[bed - 1];
  return [
    ...cropProblems(sowing, task),
    ...beyond('bed', bed, { min: 1, max: task.beds.length }),
    ...strips.flatMap((strip, at) =>
      runProblems(strip, ofBed?.places ?? strip.last).map((one) => below(['strips', at], one)),
    ),
  ];
}

function below(place: Problem['place'], problem: Problem): Problem {
  return { ...problem, place: [...place, ...problem.place] };
}

/** A crop that was wanted, with all the places of each plant. */
function cropProblems({ crop, strips }: SowingFile | WasSownFile, task: TurnoverTask): readonly Problem[] {
  const wish = task.wishes.find((one) => one.crop.id === crop);
  if (wish === undefined) {
    const allowed = task.wishes.map((one) => one.crop.id);
    const meant = nearest(crop, allowed);
    return [
      {
        ...{ code: 'planCrop', place: ['crop'], given: crop, allowed },
        ...(meant === null ? {} : { meant }),
      },
    ];
  }
  const { places } = plantUnit(wish.crop, task.place_mm, wish.unit);
  const { length } = numbersOf({ strips });
  if (length % places === 0) return [];
  return [{ code: 'planWide', place: ['strips'], min: length, max: places, unit: '' }];
}

/** Nobody sows where nobody is. */
function away({ sown }: SowingFile, task: TurnoverTask): readonly Problem[] {
  const week = weekFrom(task, dayNumber_d(sown));
  return isHoliday(task, week) ? [{ code: 'planHoliday', place: ['sown'], given: sown }] : [];
}

/** What is lifted after the season stands in no sum: others would be planted on its places. */
function weekProblems(
  { from_week, to_week }: SowingFile['strips'][number],
  { weeks }: TurnoverTask,
): readonly Problem[] {
  const last = weeks - 1;
  return [
    ...beyond('from_week', from_week, { min: 0, max: last - 1 }),
    ...beyond('to_week', to_week, { min: Math.min(from_week + 1, last), max: last }),
  ];
}

function runProblems({ first, last }: WasSownFile['strips'][number], places: number): readonly Problem[] {
  return beyond('last', last, { min: first, max: Math.max(first, places) });
}

function beyond(
  key: string,
  given: number,
  { min, max }: { readonly min: number; readonly max: number },
): readonly Problem[] {
  return min <= given && given <= max
    ? []
    : [{ code: 'outOfRange', place: [key], given: String(given), min, max, unit: '' }];
}

function clashes(plan: SownPlan): readonly Problem[] {
  const clash = firstClash(plan);
  if (clash === null) return [];
  return [{ code: 'planClash', place: ['sowings', plan.sowings.indexOf(clash), 'strips'], given: clash.id }];
}

function sownOf(
  { sown, planted, ready, readyFrom, readyTo, bed, strips, picks, ...rest }: SowingFile,
  task: TurnoverTask,
): Sown {
  const on = picks[0]?.on ?? readyFrom;
  // Where it is not told: what puts a picking off makes no crop ready later than it may be.
  const likely = ready ?? (on < readyTo ? on : readyTo);
  return {
    ...rest,
    bed: bed - 1,
    sow_d: dayNumber_d(sown),
    plantOut_d: planted === undefined ? null : dayNumber_d(planted),
    ready_d: dayNumber_d(likely),
    readyFrom_d: dayNumber_d(readyFrom),
    readyTo_d: dayNumber_d(readyTo),
    // By the rest that is wanted now.
    strips: strips.map((strip) => ({ ...strip, restTo_week: free_week(task, strip.to_week) - 1 })),
    picks: picks.map(({ week, on }) => ({ week, day_d: dayNumber_d(on) })),
  };
}

function wasSownOf({ sown, planted, bed, ...rest }: WasSownFile): WasSown {
  const plantOut_d = planted === undefined ? null : dayNumber_d(planted);
  return { ...rest, bed: bed - 1, sow_d: dayNumber_d(sown), plantOut_d };
}
