/** What is left of beds, of clearing and of the nursery while plants are put in. */
import type { Choice } from './choices.ts';
import { cellsOf, held, type Season } from './season.ts';

/** Room that is left, by what limits it and week. */
export type Left = {
  readonly places: readonly number[][];
  readonly clearing: readonly number[][];
  readonly cells: number[];
};

/**
 * Room before anything is planted.
 * @param season the season
 * @returns places and clearing by bed kind and week, cells by week
 * @valid every season
 * @source geometry
 */
export function allLeft(season: Season): Left {
  const { kinds, task } = season;
  const weeks = (value: number): number[] => Array.from({ length: task.weeks }, () => value);
  return {
    places: kinds.map(({ places }) => weeks(places)),
    clearing: kinds.map(({ clearing }) => weeks(clearing)),
    cells: weeks(task.nurseryCells ?? Number.POSITIVE_INFINITY),
  };
}

/** Units of a choice that find room, by each limit for itself and by all; not rounded. */
export type Fitting = {
  readonly places: number;
  readonly clearing: number;
  readonly cells: number;
  readonly most: number;
};

/**
 * How much of a choice still finds room.
 * @param season the season
 * @param left room that is left
 * @param choice one of its choices that is not fixed
 * @returns units
 * @valid every season
 * @source geometry
 */
export function fitting(season: Season, left: Left, choice: Choice): Fitting {
  const each = season.units[choice.wish]?.places ?? 1;
  const { from, to } = held(season, choice);
  const places = Math.min(...(left.places[choice.kind] ?? []).slice(from, to)) / each;
  const clearing = (left.clearing[choice.kind]?.[choice.to_week] ?? 0) / each;
  const inTrays = Math.min(...left.cells.slice(choice.sow_week, choice.from_week));
  const cells = inTrays / cellsOf(season, choice.wish);
  return { places, clearing, cells, most: Math.min(places, clearing, cells) };
}

/**
 * Takes the room of so many units.
 * @param season the season
 * @param left room that is left; less afterwards
 * @param choice one of its choices
 * @param units units of it
 * @valid every season
 * @source geometry
 */
export function take(season: Season, left: Left, choice: Choice, units: number): void {
  const places = units * (season.units[choice.wish]?.places ?? 1);
  const { from, to } = held(season, choice);
  for (let week = Math.max(0, from); week < to; week += 1) less(left.places[choice.kind], week, places);
  less(left.clearing[choice.kind], choice.to_week, places);
  const cells = units * cellsOf(season, choice.wish);
  for (let week = Math.max(0, choice.sow_week); week < choice.from_week; week += 1)
    less(left.cells, week, cells);
}

function less(of: number[] | undefined, at: number, value: number): void {
  if (of?.[at] !== undefined) of[at] -= value;
}
