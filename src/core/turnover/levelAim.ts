/** Second: a bed that stays as full as it is. */
import type { Aim } from './aim.ts';
import { type Counts, placesOfWeeks, plantedPlaces } from './counts.ts';
import { type Desk, mostOf } from './desk.ts';
import type { Entry } from './rows.ts';
import type { Row } from './solver.ts';

/**
 * All rises of the planted places together, the first planting included: a bed that is filled once and kept full rises
 * once, one that is emptied in between rises again.
 * @param desk the programme
 * @returns the aim
 * @valid every season
 * @source geometry
 */
export function levelAim(desk: Desk): Aim {
  const { season, columns } = desk;
  const first = columns.length;
  const weeks = placesOfWeeks(season);
  const rises = (counts: Counts): readonly number[] => {
    const planted = plantedPlaces(season, counts);
    return planted.map((places, week) => Math.max(0, places - (planted[week - 1] ?? 0)));
  };
  return {
    name: 'level',
    columns: weeks.map((entries) => ({
      cost: 0,
      lower: 0,
      upper: mostOf(columns, entries),
      kind: 'follows',
    })),
    rows: weeks.map((entries, week): Row => {
      const change = lessBy(entries, weeks[week - 1] ?? []);
      return { lower: Number.NEGATIVE_INFINITY, upper: 0, entries: [...change, [first + week, -1]] };
    }),
    entries: weeks.map((_, week) => [first + week, 1]),
    offset: 0,
    unused: new Set(),
    implied: () => [],
    least: 0,
    fill: rises,
    value: (counts) => rises(counts).reduce((sum, rise) => sum + rise, 0),
    steps: 'whole',
  };
}

/** One sum less another, each column once. */
function lessBy(sum: readonly Entry[], less: readonly Entry[]): readonly Entry[] {
  const found = new Map(sum);
  for (const [column, factor] of less) found.set(column, (found.get(column) ?? 0) - factor);
  return [...found].filter(([, factor]) => factor !== 0);
}
