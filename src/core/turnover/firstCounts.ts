/** A plan to begin with: week by week, each wish from what fits. It keeps every limit, and is seldom the best. */
import type { Choice } from './choices.ts';
import type { Counts } from './counts.ts';
import { noNeed, unitsFor } from './need.ts';
import { cellsOf, held, type Season } from './season.ts';

/** Room that is left, by what limits it and week. */
type Left = {
  readonly places: readonly number[][];
  readonly clearing: readonly number[][];
  readonly cells: number[];
};

/**
 * Units of each choice for a first plan.
 * @param season the season
 * @returns whole numbers; those of fixed choices as they are
 * @valid every season
 * @source commonPractice
 */
export function firstCounts(season: Season): Counts {
  const counts = season.choices.map((choice) => season.fixed.get(choice) ?? 0);
  const left = leftIn(season);
  const picked = season.needs.map((weeks) => weeks.map(() => 0));
  const plant = (column: number, choice: Choice, units: number): void => {
    counts[column] = (counts[column] ?? 0) + units;
    take(season, left, choice, units);
    for (const week of choice.pick_weeks) add(picked[choice.wish], week, units);
  };
  for (const [column, choice] of season.choices.entries()) {
    const stands = season.fixed.get(choice);
    if (stands !== undefined) {
      counts[column] = 0;
      plant(column, choice, stands);
    }
  }
  for (const { column, choice } of inTurn(season)) {
    const week = choice.pick_weeks[0] ?? 0;
    const wanted = unitsFor(season.needs[choice.wish]?.[week] ?? noNeed) - (picked[choice.wish]?.[week] ?? 0);
    const units = Math.min(wanted, fitting(season, left, choice));
    if (units > 0) plant(column, choice, units);
  }
  return counts;
}

/** By first picking; of one crop first what is cut most often, then what is in the bed for the shortest time. */
function inTurn(season: Season): readonly { readonly column: number; readonly choice: Choice }[] {
  return season.choices
    .map((choice, column) => ({ column, choice }))
    .filter(({ choice }) => !season.fixed.has(choice))
    .sort(
      ({ choice: a }, { choice: b }) =>
        (a.pick_weeks[0] ?? 0) - (b.pick_weeks[0] ?? 0) ||
        b.pick_weeks.length - a.pick_weeks.length ||
        b.from_week - a.from_week,
    );
}

function leftIn({ kinds, task }: Season): Left {
  const weeks = (value: number): number[] => Array.from({ length: task.weeks }, () => value);
  return {
    places: kinds.map(({ places }) => weeks(places)),
    clearing: kinds.map(({ clearing }) => weeks(clearing)),
    cells: weeks(task.nurseryCells ?? Number.POSITIVE_INFINITY),
  };
}

function fitting(season: Season, left: Left, choice: Choice): number {
  const places = season.units[choice.wish]?.places ?? 1;
  const { from, to } = held(season, choice);
  const room = Math.min(...(left.places[choice.kind] ?? []).slice(from, to));
  const clearing = left.clearing[choice.kind]?.[choice.to_week] ?? 0;
  const cells = Math.min(...left.cells.slice(choice.sow_week, choice.from_week));
  const most = Math.min(room / places, clearing / places, cells / cellsOf(season, choice.wish));
  return Math.max(0, Math.floor(most));
}

function take(season: Season, left: Left, choice: Choice, units: number): void {
  const places = units * (season.units[choice.wish]?.places ?? 1);
  const { from, to } = held(season, choice);
  for (let week = Math.max(0, from); week < to; week += 1) add(left.places[choice.kind], week, -places);
  add(left.clearing[choice.kind], choice.to_week, -places);
  const cells = units * cellsOf(season, choice.wish);
  for (let week = Math.max(0, choice.sow_week); week < choice.from_week; week += 1)
    add(left.cells, week, -cells);
}

function add(of: number[] | undefined, at: number, value: number): void {
  if (of?.[at] !== undefined) of[at] += value;
}
