/** Days of the calendar as numbers, without a clock: a date comes in as an argument, like everything else. */

const perMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const perEra = 146_097;
const perYear = 365;

/** A day in its parts; the month from 1 to 12. */
export type Day = { readonly year: number; readonly month: number; readonly day: number };

/**
 * The parts of a date, or null where there is no such day.
 * Gregorian calendar, carried back without end.
 * @param iso a date such as 2031-04-30
 * @returns year, month and day
 * @valid years 1 to 9999
 * @source geometry
 */
export function dayOf(iso: string): Day | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (match === null) return null;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const there = 1 <= year && 1 <= month && month <= 12 && 1 <= day && day <= daysIn_d(year, month);
  return there ? { year, month, day } : null;
}

/**
 * Days in a month.
 * 28 to 31; February has 29 in years that four divides, but not in hundreds unless four hundred divides them.
 * @param year 1 to 9999
 * @param month 1 to 12
 * @returns days
 * @valid Gregorian calendar
 * @throws RangeError where there is no such month
 * @source geometry
 * @example daysIn_d(2032, 2) // 29
 * @example daysIn_d(2100, 2) // 28
 */
function daysIn_d(year: number, month: number): number {
  const days = perMonth[month - 1];
  if (days === undefined) throw new RangeError(`daysIn_d(${year}, ${month})`);
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return month === 2 && leap ? days + 1 : days;
}

/**
 * A date as days since 1 January 1970.
 * Whole eras of 400 years, then years, months and days, with the year beginning in March.
 * @param iso a date such as 2031-04-30
 * @returns whole days, below zero before 1970
 * @valid years 1 to 9999
 * @throws RangeError where there is no such day
 * @source geometry
 * @example dayNumber_d('1970-01-02') // 1
 * @example dayNumber_d('2000-03-01') // 11017
 */
export function dayNumber_d(iso: string): number {
  const of = dayOf(iso);
  if (of === null) throw new RangeError(`dayNumber_d(${iso})`);
  const year = of.month <= 2 ? of.year - 1 : of.year;
  const era = Math.floor(year / 400);
  const ofEra = year - era * 400;
  const ofYear = Math.floor((153 * ((of.month + 9) % 12) + 2) / 5) + of.day - 1;
  return era * perEra + ofEra * perYear + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468;
}

/**
 * The date of a day's number.
 * The other way round of dayNumber_d.
 * @param number_d whole days since 1 January 1970
 * @returns a date such as 2031-04-30
 * @valid years 1 to 9999
 * @source geometry
 */
export function dateOf(number_d: number): string {
  const from = number_d + 719_468;
  const era = Math.floor(from / perEra);
  const ofEra = from - era * perEra;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1_460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / perYear,
  );
  const ofYear = ofEra - (perYear * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * shifted + 2) / 5) + 1;
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const padded = (value: number, width: number): string => String(value).padStart(width, '0');
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
}
