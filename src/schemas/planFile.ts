/**
 * The plan that somebody works by, as it is printed beside its calendar (`plan.json`). Kept beside the season's file and
 * named there under `again`, it is what stands: nothing of it is worked out anew. Who planted otherwise than was planned may
 * put it right here, days and weeks alike.
 */
import * as z from 'zod';
import { dateOf } from '../core/calendar.ts';
import type { Sown, SownPlan } from '../core/turnover/sown.ts';
import type { WasSown } from '../core/turnover/turnover.ts';
import { day, line, number, slug, whole } from './fields.ts';

const mostPlaces = 200_000;
const mostWeeks = 106;
/** Weeks are counted from 0, the first of the season. */
const week = () => whole(0, mostWeeks, '');

export const planFile = z.strictObject({
  /** The season that it is a plan of: its name, weeks and beds, by which another one is told. */
  season: slug(),
  firstMonday: day(),
  weeks: whole(1, mostWeeks, ''),
  place_mm: number(50, 1_000, 'mm'),
  beds: z.array(z.strictObject({ name: line(), places: whole(0, mostPlaces, '') })).max(40),
  sowings: z
    .array(
      z.strictObject({
        id: line(),
        /** Name of the crop's file. */
        crop: line(),
        /** Number of the bed, from 1. */
        bed: whole(1, 40, ''),
        sown: day(),
        /** Left out where it was sown into the bed. */
        planted: day().optional(),
        /** The likely day; left out, it is the first on which it is picked. */
        ready: day().optional(),
        readyFrom: day(),
        readyTo: day(),
        mayBolt: z.enum(['yes', 'no']),
        /** Places with numbers in a row, and the weeks of planting and of lifting. */
        strips: z
          .array(
            z.strictObject({
              first: whole(1, mostPlaces, ''),
              last: whole(1, mostPlaces, ''),
              from_week: week(),
              to_week: week(),
            }),
          )
          .min(1),
        picks: z.array(z.strictObject({ week: week(), on: day() })),
      }),
    )
    .max(10_000),
  /** What was sown before and has failed since, in part or in whole, as it was sown. */
  wasSown: z
    .array(
      z.strictObject({
        id: line(),
        crop: line(),
        bed: whole(1, 40, ''),
        sown: day(),
        /** The day that was planned for it; left out where it was sown into the bed. */
        planted: day().optional(),
        seeds: whole(1, 1_000_000, ''),
        /** That it was sown for. */
        plants: whole(1, 1_000_000, ''),
        strips: z
          .array(z.strictObject({ first: whole(1, mostPlaces, ''), last: whole(1, mostPlaces, '') }))
          .min(1),
      }),
    )
    .max(10_000)
    .default([]),
});

export type PlanFile = z.output<typeof planFile>;
export type SowingFile = PlanFile['sowings'][number];
export type WasSownFile = PlanFile['wasSown'][number];

/** A plan as the text of such a file, one sowing a line. */
export function planText(plan: SownPlan): string {
  const { season, firstMonday, weeks, place_mm, beds } = placeOf(plan.task);
  return [
    '{',
    ...Object.entries({ season, firstMonday, weeks, place_mm, beds }).map(
      ([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)},`,
    ),
    ...listOf('sowings', plan.sowings.map(sowingOf), plan.wasSown.length === 0 ? '' : ','),
    ...(plan.wasSown.length === 0 ? [] : listOf('wasSown', plan.wasSown.map(wasSownOf), '')),
    '}',
    '',
  ].join('\n');
}

function listOf(key: string, all: readonly object[], end: '' | ','): readonly string[] {
  return [`  "${key}": [`, all.map((one) => `    ${JSON.stringify(one)}`).join(',\n'), `  ]${end}`];
}

/** What a plan's weeks and numbers of places go by. */
export function placeOf(task: SownPlan['task']): Omit<PlanFile, 'sowings' | 'wasSown'> {
  return {
    season: task.id,
    firstMonday: dateOf(task.firstMonday_d),
    weeks: task.weeks,
    place_mm: task.place_mm,
    beds: task.beds.map(({ name, places }) => ({ name, places })),
  };
}

function sowingOf(sowing: Sown): SowingFile {
  const { id, crop, bed, sow_d, plantOut_d, ready_d, readyFrom_d, readyTo_d, mayBolt, strips, picks } =
    sowing;
  return {
    ...{ id, crop, bed: bed + 1, sown: dateOf(sow_d) },
    ...(plantOut_d === null ? {} : { planted: dateOf(plantOut_d) }),
    ...{ ready: dateOf(ready_d), readyFrom: dateOf(readyFrom_d), readyTo: dateOf(readyTo_d), mayBolt },
    strips: strips.map(({ first, last, from_week, to_week }) => ({ first, last, from_week, to_week })),
    picks: picks.map(({ week: of, day_d }) => ({ week: of, on: dateOf(day_d) })),
  };
}

function wasSownOf({ id, crop, bed, sow_d, plantOut_d, seeds, plants, strips }: WasSown): WasSownFile {
  return {
    ...{ id, crop, bed: bed + 1, sown: dateOf(sow_d) },
    ...(plantOut_d === null ? {} : { planted: dateOf(plantOut_d) }),
    ...{ seeds, plants, strips: strips.map(({ first, last }) => ({ first, last })) },
  };
}
