/** Third: few days of sowing. */
import type { Aim } from './aim.ts';
import type { Counts } from './counts.ts';
import type { Desk } from './desk.ts';
import { neededWeeks } from './neededWeeks.ts';

/**
 * Weeks in which something is sown.
 * @param desk the programme
 * @returns the aim
 * @valid one day of sowing a week
 * @source geometry
 */
export function daysAim(desk: Desk): Aim {
  const { season, columns } = desk;
  const first = columns.length;
  const free = season.choices
    .map((choice, column) => ({ choice, column, most: columns[column]?.upper ?? 0 }))
    .filter(({ choice }) => !season.fixed.has(choice));
  const weeks = [...new Set(free.map(({ choice }) => choice.sow_week))].sort((a, b) => a - b);
  const at = new Map(weeks.map((week, index) => [week, first + index]));
  const sowingWeeks = weeks.map((week, index) => ({
    column: first + index,
    choices: free.filter(({ choice }) => choice.sow_week === week).map(({ column }) => column),
  }));
  const sown = (counts: Counts): ReadonlySet<number> =>
    new Set(free.filter(({ column }) => (counts[column] ?? 0) > 0).map(({ choice }) => choice.sow_week));
  return {
    name: 'days',
    columns: weeks.map(() => ({ cost: 0, lower: 0, upper: 1, kind: 'whole' })),
    rows: free.map(({ choice, column, most }) => ({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      entries: [
        [column, 1],
        [at.get(choice.sow_week) ?? first, -most],
      ],
    })),
    entries: weeks.map((_, index) => [first + index, 1]),
    offset: 0,
    unused: new Set(),
    implied: (means) => neededWeeks(desk, sowingWeeks, means),
    least: 0,
    fill: (counts) => {
      const used = sown(counts);
      return weeks.map((week) => (used.has(week) ? 1 : 0));
    },
    value: (counts) => sown(counts).size,
    steps: 'whole',
  };
}
