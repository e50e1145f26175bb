/** What somebody says came differently in a season, into the core's change; or every problem with it, at once. */
import * as z from 'zod';
import { dateOf, dayNumber_d } from '../core/calendar.ts';
import { mondayOf_d } from '../core/isoWeek.ts';
import type { Problem } from '../core/problem.ts';
import type { Change } from '../core/turnover/standing.ts';
import type { TurnoverPlan, TurnoverTask } from '../core/turnover/turnover.ts';
import { weekFrom } from '../core/turnover/weeks.ts';
import { dayAt_d } from './dayOrder.ts';
import { day, line } from './fields.ts';
import { readBySchema } from './issues.ts';
import { type Path, valueAt } from './schemaAt.ts';

const changeFile = z.strictObject({
  /** What was sown before this day stands; from it on everything is planned again. */
  from: day(),
  /** Ids of sowings that came to nothing. */
  failed: z.array(line()).max(10_000).default([]),
  /** Weeks in which nothing was done: any day of each. */
  missed: z
    .array(z.strictObject({ on: day() }))
    .max(106)
    .default([]),
});

export type ToChange = { readonly change: Change } | { readonly problems: readonly Problem[] };

/**
 * Checks what came differently against the plan that it happened to.
 * @param raw plain data from a form
 * @param plan the plan so far
 * @param place where it stands in the whole, in front of every problem's place
 */
export function toChange(raw: unknown, { task, sowings }: TurnoverPlan, place: Path): ToChange {
  const read = readBySchema(changeFile, raw, place);
  const across = [...outside(raw, task), ...later(raw)].map((one) => ({
    ...one,
    place: [...place, ...one.place],
  }));
  if ('problems' in read) return { problems: [...read.problems, ...across] };
  if (across.length > 0) return { problems: across };
  const { from, failed, missed } = read.value;
  const known = new Set(sowings.map(({ id }) => id));
  return {
    change: {
      now_week: Math.max(0, weekFrom(task, dayNumber_d(from))),
      // A plan that came of another one may lack a sowing that was ticked in that one.
      failed: failed.filter((id) => known.has(id)),
      missed_weeks: missed.map(({ on }) => weekOf(task, dayNumber_d(on))),
    },
  };
}

function weekOf({ firstMonday_d }: TurnoverTask, day_d: number): number {
  return (mondayOf_d(day_d) - firstMonday_d) / 7;
}

/** Every day that is told lies in the season. */
function outside(raw: unknown, task: TurnoverTask): readonly Problem[] {
  return days(raw).flatMap(({ place, day_d }) => {
    const week = weekOf(task, day_d);
    return 0 <= week && week < task.weeks ? [] : [{ code: 'outsideSeason', place, given: dateOf(day_d) }];
  });
}

/** A week that is still to come cannot have been missed. */
function later(raw: unknown): readonly Problem[] {
  const from_d = dayAt_d(raw, ['from']);
  if (from_d === null) return [];
  const monday_d = mondayOf_d(from_d);
  return days(raw)
    .filter(({ place, day_d }) => place[0] === 'missed' && mondayOf_d(day_d) > monday_d)
    .map(({ place, day_d }) => ({
      code: 'missedLater',
      place,
      given: dateOf(day_d),
      other: dateOf(from_d),
    }));
}

type Told = { readonly place: Path; readonly day_d: number };

function days(raw: unknown): readonly Told[] {
  const missed = valueAt(raw, ['missed']);
  const rows = Array.isArray(missed) ? missed.map((_, index): Path => ['missed', index, 'on']) : [];
  return [['from'], ...rows].flatMap((place) => {
    const day_d = dayAt_d(raw, place);
    return day_d === null ? [] : [{ place, day_d }];
  });
}
