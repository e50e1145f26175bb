/** While the keeper is away: days, and the feed that is weighed out for them beforehand. */
import { dateOf, dayNumber_d } from '../calendar.ts';
import type { System } from '../system.ts';
import type { Figure, Table } from './figure.ts';
import { byHand, figure, lookup, quantity } from './write.ts';

/**
 * Days of absence and feed to weigh out.
 * @param system a checked system
 * @param feed_g_d feed of a day; null where no ration is known
 * @returns absence_d, and absenceFeed_g where there is a ration; nothing without dates
 * @valid one packet a day, none for a day that was missed
 * @source commonPractice
 */
export function absenceFigures(system: System, feed_g_d: number | null): readonly Figure[] {
  const absence = system.absence ?? null;
  if (absence === null) return [];
  const days = daysOf(absence);
  const length = figure({
    key: 'absence_d',
    value: days,
    unit: 'd',
    safeSide: 'up',
    confidence: 'measured',
    steps: [lookup(quantity('d', 'absence', days, 'd'), 'keeper')],
  });
  if (feed_g_d === null) return [length];
  const value = feed_g_d * days;
  const feed = figure({
    key: 'absenceFeed_g',
    value,
    unit: 'g',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('F', 'absenceFeed', value, 'g'),
        'f × d',
        [quantity('f', 'feed', feed_g_d, 'g_d'), quantity('d', 'absence', days, 'd')],
        'commonPractice',
      ),
    ],
    notes: [{ code: 'packetsDated', level: 'info', numbers: {}, source: 'commonPractice' }],
  });
  return [length, feed];
}

/**
 * Every day of the absence with its packet.
 * @param system a checked system
 * @param feed_g_d feed of a day; null where no ration is known
 * @returns one table; none without dates
 * @source commonPractice
 */
export function absenceTables(system: System, feed_g_d: number | null): readonly Table[] {
  const absence = system.absence ?? null;
  if (absence === null) return [];
  const first_d = dayNumber_d(absence.from);
  return [
    {
      key: 'absenceDays',
      columns: [
        { key: 'day', unit: 'ratio' },
        { key: 'packet', unit: 'g' },
      ],
      rows: Array.from({ length: daysOf(absence) }, (_, index) => [dateOf(first_d + index), feed_g_d]),
    },
  ];
}

/** First and last day both count. */
function daysOf({ from, to }: { readonly from: string; readonly to: string }): number {
  return Math.max(0, dayNumber_d(to) - dayNumber_d(from) + 1);
}
