/** What stands under a calendar page: the crops by their numbers, the hatching, and what must be said of the crops. */
import { cautionTexts } from '../wording/harvest.ts';
import { shorten } from '../wording/shorten.ts';
import type { CalendarLook } from './parts/calendarLook.ts';
import { cropName, cropNumber, saidIn, season, type TurnoverInput } from './turnoverSheet.ts';

export type CalendarFootWords = {
  readonly crops: readonly { readonly number: string; readonly name: string }[];
  readonly lines: readonly string[];
  /** Room that all of it takes, in sheet units. */
  readonly height: number;
};

/** Letters of running text are about half as wide as they are high; the rest is for words that go on in the next line. */
const letter = 0.55;
const lineHeight = 1.3;

/** Longer names are cut with a mark. */
const longName = 60;

/** The same under every page, so that each can hang by itself. */
export function calendarFoot(input: TurnoverInput, look: CalendarLook, width: number): CalendarFootWords {
  const sown = new Set(input.plan.sowings.map(({ crop }) => crop));
  const crops = input.plan.task.wishes
    .filter(({ crop }) => sown.has(crop.id))
    .map(({ crop }) => ({ number: cropNumber(input, crop.id), name: cropName(input, crop.id) }));
  const holidays = new Set(input.plan.calendar.flatMap(({ holiday }) => (holiday === null ? [] : [holiday])));
  const names = [...holidays].map((name) => shorten(name, longName)).join(', ');
  const lines = [
    season(input, 'calendar.key'),
    ...(names === '' ? [] : [season(input, 'calendar.holidays', { names })]),
    ...cautionTexts(input.plan, sown, saidIn(input)),
  ];
  const cropRows = Math.ceil(crops.length / Math.floor(width / look.crop.width));
  const textRows = lines.map((text) => Math.ceil((text.length * look.small * letter) / width));
  const texts = textRows.reduce((sum, rows) => sum + rows * look.small * lineHeight, 0);
  return { crops, lines, height: cropRows * look.crop.height + look.key + texts };
}
