/** Light and warmth of a season, as page and months tell them. */
import { describe, expect, test } from 'vitest';
import { lightLines } from '../../src/sheets/lightWords.ts';
import { seasonInput, seasonPlan } from './seasons.ts';

describe('light and warmth', () => {
  test('are told month by month, in the units of the reader', () => {
    const plan = seasonPlan('north-yard');
    const [months = ''] = lightLines(seasonInput(plan)).map((line) => line.replaceAll('\u00a0', ' '));
    // Helsinki: about six hours at the turn of the year, nineteen at midsummer.
    expect(months).toMatch(/: Jan 7(\.\d)? h, −\d °C; /);
    expect(months).toMatch(/; Jun 19 h, 15 °C; .*; Dec [56](\.\d)? h, −?\d °C\.$/);
    expect(months.split(';')).toHaveLength(12);
    const [us = ''] = lightLines(seasonInput(plan, 'Letter'));
    expect(us).toContain('°F');
  });

  test('name the weeks with days under ten hours, and what they are taken to do', () => {
    const plan = seasonPlan('north-yard');
    const weeks = plan.calendar.filter(({ daylight_h }) => daylight_h < 10);
    const [, slow = ''] = lightLines(seasonInput(plan));
    expect(slow).toMatch(/in weeks 2–\d, 4\d–52: crops are taken to grow half as fast/);
    const [first = 0, second = 0] = (slow.match(/(?<=–)\d+|4\d(?=–52)/g) ?? []).map(Number);
    expect(first - 2 + 1 + (52 - second + 1)).toBe(weeks.length);
    const lit = {
      ...plan,
      task: { ...plan.task, place: { ...plan.task.place, shortDays: 'ignored' as const } },
    };
    expect(lightLines(seasonInput(lit))[1]).toContain('as ever, as there is light');
    expect(lightLines(seasonInput(seasonPlan('warm-terrace')))).toHaveLength(1);
  });
});
