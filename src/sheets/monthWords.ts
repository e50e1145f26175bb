/** The words for this month's feed. Every number comes from the plan. */
import { say } from '../wording/catalogue.ts';
import { monthText } from '../wording/date.ts';
import { amount, range } from '../wording/quantity.ts';
import { card, figureOf, shown, shownRange } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';
import { rowsOf } from './sheetWords.ts';

/**
 * What the fish want in the month of printing, where the plan has that month: by growth and the weather of the year.
 * The front keeps the planned ration, and these sentences say which of the two holds.
 */
export function monthSentences(input: SheetInput): readonly string[] {
  const row = rowsOf(input, 'fishMonths').find(([month]) => month === input.day.slice(0, 7));
  if (row === undefined || figureOf(input, 'feed_g_d') === null) return [];
  const [, water_degC, massLow_g, massHigh_g, , feedLow_g_d, feedHigh_g_d, meets] = row;
  const values = {
    water: amount(Number(water_degC), 'degC', 'nearest', input.units),
    mass: between(input, massLow_g, massHigh_g, 'g'),
    feed: between(input, feedLow_g_d, feedHigh_g_d, 'g_d'),
    front: shown(input, 'feed_g_d'),
    good: shownRange(input, 'goodFrom_degC', 'goodTo_degC'),
  };
  const isLowEnd = amount(Number(feedLow_g_d), 'g_d', 'down', input.units) === values.front;
  const kind = isFedIn(input, Number(water_degC)) ? (isLowEnd ? 'month.same' : 'month.other') : 'month.none';
  return [
    card(input, 'month.water', values),
    ...(feedLow_g_d === null ? [] : [card(input, kind, values)]),
    ...(typeof meets === 'string' ? [say(input.words.catalogue, `notes.${meets}`)] : []),
  ];
}

function between(input: SheetInput, low: unknown, high: unknown, unit: string): string {
  const to = say(input.words.catalogue, 'words.to');
  return range({ low: Number(low), high: Number(high) }, unit, 'down', input.units, to);
}

/** Whether the front's own rule lets the fish be fed in such water. */
function isFedIn(input: SheetInput, water_degC: number): boolean {
  const from = figureOf(input, 'goodFrom_degC');
  const until = figureOf(input, 'goodTo_degC');
  return from !== null && until !== null && from.value <= water_degC && water_degC <= until.value;
}

/** The month of printing, as a heading. */
export function monthHead(input: SheetInput): string {
  return card(input, 'month.head', { month: monthText(input.day, input.words.catalogue) });
}
