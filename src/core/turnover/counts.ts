/** What so many units of each choice come to. */
import { worthIn } from './need.ts';
import { type Entry, placesByWeek } from './rows.ts';
import type { Season } from './season.ts';

/** Units of each choice, in the order of the season's choices. */
export type Counts = readonly number[];

/**
 * Units that are picked, by wish and week.
 * @param season the season
 * @param counts units of each choice
 * @returns whole numbers
 * @valid every season
 * @source geometry
 */
export function pickedUnits(season: Season, counts: Counts): readonly (readonly number[])[] {
  const { choices, task } = season;
  const picked = task.wishes.map(() => Array.from({ length: task.weeks }, () => 0));
  for (const [at, { wish, pick_weeks }] of choices.entries()) {
    const row = picked[wish];
    for (const week of pick_weeks) if (row?.[week] !== undefined) row[week] += counts[at] ?? 0;
  }
  return picked;
}

/**
 * What the wishes that so many units meet are worth.
 * @param season the season
 * @param counts units of each choice
 * @returns a number of wishes; all met, it is their number
 * @valid whole units
 * @source commonPractice
 * @example worthMet({ needs: [], choices: [], task: { wishes: [], weeks: 1 } }, []) // 0
 */
export function worthMet(season: Season, counts: Counts): number {
  const picked = pickedUnits(season, counts);
  return season.needs.reduce(
    (sum, weeks, wish) =>
      sum + weeks.reduce((of, need, week) => of + worthIn(need, picked[wish]?.[week] ?? 0), 0),
    0,
  );
}

/**
 * Places planted in each week, all beds together, resting ones included.
 * @param season the season
 * @param counts units of each choice
 * @returns one number a week
 * @valid every season
 * @source geometry
 */
export function plantedPlaces(season: Season, counts: Counts): readonly number[] {
  return placesOfWeeks(season).map((entries) =>
    entries.reduce((sum, [column, factor]) => sum + factor * (counts[column] ?? 0), 0),
  );
}

/**
 * Places that each choice holds, by week, all beds together.
 * @param season the season
 * @returns entries week by week
 * @valid every season
 * @source geometry
 */
export function placesOfWeeks(season: Season): readonly (readonly Entry[])[] {
  const byKind = placesByWeek(season);
  return Array.from({ length: season.task.weeks }, (_, week) => byKind.flatMap((weeks) => weeks[week] ?? []));
}
