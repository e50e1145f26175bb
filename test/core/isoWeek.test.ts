import { describe, expect, test } from 'vitest';
import { dateOf, dayNumber_d } from '../../src/core/calendar.ts';
import { isoWeekOf } from '../../src/core/isoWeek.ts';

/** "1976-W53-6". */
function written(iso: string): string {
  const { year, week, weekday } = isoWeekOf(dayNumber_d(iso));
  return `${year}-W${String(week).padStart(2, '0')}-${weekday}`;
}

/** Dates with their weeks as public lists of the ISO 8601 week date print them. */
const published = {
  '1977-01-01': '1976-W53-6',
  '1977-12-31': '1977-W52-6',
  '1978-01-01': '1977-W52-7',
  '1978-01-02': '1978-W01-1',
  '1979-12-31': '1980-W01-1',
  '1980-12-28': '1980-W52-7',
  '1980-12-29': '1981-W01-1',
  '1981-12-31': '1981-W53-4',
  '1982-01-03': '1981-W53-7',
  '2008-12-29': '2009-W01-1',
  '2010-01-03': '2009-W53-7',
  '2024-12-30': '2025-W01-1',
  '2026-12-31': '2026-W53-4',
  '2027-01-03': '2026-W53-7',
};

const longYears = [2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048];

/**
 * The platform's calendar finds the day of the week and goes to Thursday by its own dates; the week is then counted by
 * its own day of the year. Nothing of ours is in it.
 */
function platformWeek(date: Date): string {
  const weekday = date.getUTCDay() === 0 ? 7 : date.getUTCDay();
  const thursday = new Date(date);
  thursday.setUTCDate(date.getUTCDate() + 4 - weekday);
  let week = 1;
  const back = new Date(thursday);
  for (;;) {
    back.setUTCDate(back.getUTCDate() - 7);
    if (back.getUTCFullYear() !== thursday.getUTCFullYear()) break;
    week += 1;
  }
  return `${thursday.getUTCFullYear()}-W${String(week).padStart(2, '0')}-${weekday}`;
}

describe('the week of a day', () => {
  test.each(Object.entries(published))('%s is %s', (iso, week) => {
    expect(written(iso)).toBe(week);
  });

  test('is the platform’s on every day of 2000 to 2049, leap days and 53-week years included', () => {
    const day = new Date(Date.UTC(2000, 0, 1));
    const wrong: string[] = [];
    let seen = 0;
    while (day.getUTCFullYear() < 2050) {
      const iso = day.toISOString().slice(0, 10);
      if (written(iso) !== platformWeek(day)) wrong.push(iso);
      day.setUTCDate(day.getUTCDate() + 1);
      seen += 1;
    }
    expect(wrong).toEqual([]);
    expect(seen).toBe(18_263);
  });

  test('is the 53rd only in the years that have so many', () => {
    const years = Array.from({ length: 50 }, (_, index) => 2000 + index);
    expect(years.filter((year) => written(`${year}-12-28`).includes('-W53-'))).toEqual(longYears);
  });

  test('goes on by one day at a time, before 1970 as after', () => {
    for (let day_d = -500_000; day_d < -499_000; day_d++) {
      const [now, next] = [isoWeekOf(day_d), isoWeekOf(day_d + 1)];
      expect(next.weekday, dateOf(day_d)).toBe((now.weekday % 7) + 1);
      expect(next.week === now.week, dateOf(day_d)).toBe(now.weekday !== 7);
    }
  });
});
