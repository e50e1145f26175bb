/** How warm a day of the year is, between the means of its months. */
import { dateOf, dayNumber_d } from '../calendar.ts';

/** The middle of January, as a day of the year. */
const firstMiddle_d = 15;
const month_d = 365.25 / 12;

/**
 * A figure of the year on one day: on a straight line from the middle of one month to the middle of the next.
 * @param months twelve means, January first
 * @param day_d a day number of dayNumber_d
 * @returns degrees Celsius
 * @valid means that change slowly; the peak of a month is cut a little
 * @throws RangeError unless there are twelve
 * @source geometry
 * @example ofDay_degC([0, 10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], 15) // 0
 */
export function ofDay_degC(months: readonly number[], day_d: number): number {
  if (months.length !== 12) throw new RangeError(`${months.length} months`);
  const at = (dayOfYear(day_d) - 1 - firstMiddle_d + 365.25) / month_d;
  const before = Math.floor(at);
  const share = at - before;
  const from_degC = months[before % 12] ?? 0;
  return from_degC + share * ((months[(before + 1) % 12] ?? 0) - from_degC);
}

/**
 * Which day of its year a day is.
 * @param day_d a day number of dayNumber_d
 * @returns 1 to 366
 * @valid years 1 to 9999
 * @source geometry
 * @example dayOfYear(58) // 59
 */
export function dayOfYear(day_d: number): number {
  const year = dateOf(day_d).slice(0, 4);
  return day_d - dayNumber_d(`${year}-01-01`) + 1;
}
