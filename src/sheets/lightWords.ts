/** How long the days are and how warm it is, in lines that sheet and page share. */
import type { Week } from '../core/turnover/turnover.ts';
import { monthShort } from '../wording/date.ts';
import { amount } from '../wording/quantity.ts';
import { season, type TurnoverInput } from './turnoverSheet.ts';
import { weeksText } from './weeksText.ts';

/** The week in the middle of some; null of none. */
export function middleOf(weeks: readonly Week[]): Week | null {
  return weeks[Math.floor(weeks.length / 2)] ?? null;
}

/** "Jan 2031: 8.2 h of daylight, 3 °C". */
export function lightText(input: TurnoverInput, month: string, week: Week): string {
  return season(input, 'light.text', { month, ...wordsOf(input, week) });
}

function wordsOf(input: TurnoverInput, { daylight_h, mean_degC }: Week): Readonly<Record<string, string>> {
  return {
    hours: amount(daylight_h, 'h', 'nearest', input.units),
    mean: amount(mean_degC, 'degC', 'nearest', input.units),
  };
}

/** All months in one line, and the weeks whose days are short. */
export function lightLines(input: TurnoverInput): readonly string[] {
  const { calendar, task } = input.plan;
  const months = [...new Set(calendar.map(({ monday }) => monday.slice(0, 7)))].flatMap((month) => {
    const week = middleOf(calendar.filter(({ monday }) => monday.startsWith(month)));
    const name = monthShort(`${month}-01`, input.words.catalogue);
    return week === null ? [] : [season(input, 'light.month', { month: name, ...wordsOf(input, week) })];
  });
  const { shortDays } = input.figures;
  return [
    season(input, 'light.months', { months: months.join('; ') }),
    ...(shortDays.length === 0
      ? []
      : [season(input, `light.${task.place.shortDays}`, { weeks: weeksText(input, shortDays) })]),
  ];
}
