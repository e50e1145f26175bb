/** Weeks of the calendar by their international numbers. */
import { dateOf, dayNumber_d } from './calendar.ts';

/** Day 0, the first of January 1970, was a Thursday: the fourth day of its week. */
const thursday = 4;

/** A day as year, week and day of the week; the year is that of the week, not always that of the date. */
export type IsoWeek = {
  readonly year: number;
  /** 1 to 53. */
  readonly week: number;
  /** 1 is Monday, 7 is Sunday. */
  readonly weekday: number;
};

/**
 * Year, week and weekday of a day.
 * Weeks begin on Monday; week 1 is the one that holds the first Thursday of the year, so that a week belongs to the
 * year in which its Thursday falls. Days at the turn of a year may belong to a week of the other one.
 * @param number_d whole days since 1 January 1970
 * @returns year of the week, week from 1 to 53, weekday from 1 (Monday) to 7 (Sunday)
 * @valid years 1 to 9999
 * @source iso8601 definition of the calendar week
 * @example isoWeekOf(0) // { year: 1970, week: 1, weekday: 4 }
 * @example isoWeekOf(20819) // { year: 2026, week: 53, weekday: 5 }
 */
export function isoWeekOf(number_d: number): IsoWeek {
  const weekday = ((((number_d + thursday - 1) % 7) + 7) % 7) + 1;
  const thursday_d = number_d - weekday + thursday;
  const year = Number(dateOf(thursday_d).slice(0, 4));
  const first_d = dayNumber_d(`${String(year).padStart(4, '0')}-01-01`);
  return { year, week: Math.floor((thursday_d - first_d) / 7) + 1, weekday };
}

/**
 * The Monday of the week of a day.
 * @param number_d whole days since 1 January 1970
 * @returns a day number
 * @valid every day
 * @source iso8601 definition of the calendar week
 * @example mondayOf_d(0) // -3
 */
export function mondayOf_d(number_d: number): number {
  return number_d - isoWeekOf(number_d).weekday + 1;
}
