/** What beds, clearing and nursery allow, as rows of a programme whose column i is choice i. */
import type { BedKind } from './bedKinds.ts';
import type { Choice } from './choices.ts';
import { cellsOf, held, type Season } from './season.ts';
import type { Row } from './solver.ts';

export type Entry = readonly [column: number, factor: number];

/**
 * Everything that is limited, whatever is wished.
 * @param season the season
 * @returns rows on room, clearing and cells
 * @valid all choices at zero, or as fixed, keep them
 * @source geometry
 */
export function limitRows(season: Season): readonly Row[] {
  return [...roomRows(season), ...clearingRows(season), ...nurseryRows(season)];
}

/**
 * Places that each choice holds, by bed kind and week.
 * @param season the season
 * @returns entries of one kind, week by week
 * @valid every season
 * @source geometry
 */
export function placesByWeek(season: Season): readonly (readonly (readonly Entry[])[])[] {
  return byKind(season, (choice, add) => {
    const { from, to } = held(season, choice);
    for (let week = from; week < to; week += 1) add(week, season.units[choice.wish]?.places ?? 1);
  });
}

function byKind(
  season: Season,
  of: (choice: Choice, add: (week: number, factor: number) => void) => void,
): readonly (readonly (readonly Entry[])[])[] {
  const found = season.kinds.map(() => Array.from({ length: season.task.weeks }, (): Entry[] => []));
  for (const [column, choice] of season.choices.entries())
    of(choice, (week, factor) => found[choice.kind]?.[week]?.push([column, factor]));
  return found;
}

function roomRows(season: Season): readonly Row[] {
  return atMost(season, placesByWeek(season), ({ places }) => places);
}

function clearingRows(season: Season): readonly Row[] {
  const lifted = byKind(season, (choice, add) => add(choice.to_week, season.units[choice.wish]?.places ?? 1));
  return atMost(season, lifted, ({ clearing }) => clearing);
}

/** What stands may already be more than what would be planted today: then nothing is added. */
function atMost(
  season: Season,
  entries: readonly (readonly (readonly Entry[])[])[],
  limit: (kind: BedKind) => number,
): readonly Row[] {
  return season.kinds.flatMap((kind, at) =>
    (entries[at] ?? [])
      .filter((week) => week.length > 0)
      .map((week) => ({ lower: 0, upper: Math.max(limit(kind), fixedIn(season, week)), entries: week })),
  );
}

function fixedIn({ choices, fixed }: Season, entries: readonly Entry[]): number {
  return entries.reduce((sum, [column, factor]) => {
    const choice = choices[column];
    return sum + factor * (choice === undefined ? 0 : (fixed.get(choice) ?? 0));
  }, 0);
}

function nurseryRows(season: Season): readonly Row[] {
  const { task, choices } = season;
  if (task.nurseryCells === null) return [];
  const weeks = Array.from({ length: task.weeks }, (): Entry[] => []);
  for (const [column, { wish, sow_week, from_week }] of choices.entries())
    for (let week = Math.max(0, sow_week); week < from_week; week += 1)
      weeks[week]?.push([column, cellsOf(season, wish)]);
  const most = task.nurseryCells;
  return weeks
    .filter((week) => week.length > 0)
    .map((week) => ({ lower: 0, upper: Math.max(most, fixedIn(season, week)), entries: week }));
}
