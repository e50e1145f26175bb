/** Last: little idle bed. */
import type { Aim } from './aim.ts';
import { placesOfWeeks, plantedPlaces } from './counts.ts';
import { type Desk, mostOf } from './desk.ts';

/**
 * Places that are ever needed at a time: the others can be given to something else for the whole season, and those that
 * are planted stand empty for less of it.
 * @param desk the programme
 * @returns the aim
 * @valid every season
 * @source geometry
 */
export function idleAim(desk: Desk): Aim {
  const { season, columns } = desk;
  const first = columns.length;
  const weeks = placesOfWeeks(season);
  const peak = (planted: readonly number[]): number => Math.max(0, ...planted);
  return {
    name: 'idle',
    columns: [
      {
        cost: 0,
        lower: 0,
        upper: Math.max(0, ...weeks.map((entries) => mostOf(columns, entries))),
        kind: 'follows',
      },
    ],
    rows: weeks.map((entries) => ({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      entries: [...entries, [first, -1]],
    })),
    entries: [[first, 1]],
    offset: 0,
    unused: new Set(),
    implied: () => [],
    least: 0,
    fill: (counts) => [peak(plantedPlaces(season, counts))],
    value: (counts) => peak(plantedPlaces(season, counts)),
    steps: 'whole',
  };
}
