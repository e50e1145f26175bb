/** How warm a day of the year is, between the means of its months. */

/** Mean length of a year, so that no leap day has to be counted. */
const year_d = 365.2425;
const month_d = year_d / 12;
/** From the beginning of a month to its middle. */
const middle_d = month_d / 2;

/**
 * A figure of the year on one day: on a straight line from the middle of one month to the middle of the next.
 * @param months twelve means, January first
 * @param day_d a day number of dayNumber_d
 * @returns degrees Celsius
 * @valid means that change slowly; the peak of a month is cut a little; within a day of the calendar
 * @throws RangeError unless there are twelve
 * @source geometry
 * @example ofDay_degC([0, 10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], 0) // 0
 */
export function ofDay_degC(months: readonly number[], day_d: number): number {
  if (months.length !== 12) throw new RangeError(`${months.length} months`);
  const at = (intoYear_d(day_d) - middle_d + year_d) / month_d;
  const before = Math.floor(at);
  const from_degC = months[before % 12] ?? 0;
  return from_degC + (at - before) * ((months[(before + 1) % 12] ?? 0) - from_degC);
}

/**
 * Days since the year began.
 * @param day_d a day number of dayNumber_d
 * @returns 0 to 365
 * @valid within a day of the calendar
 * @source geometry
 * @example intoYear_d(58) // 58
 */
export function intoYear_d(day_d: number): number {
  return ((day_d % year_d) + year_d) % year_d;
}
