/** A plan to begin with: week by week, each wish from what fits. It keeps every limit, and is seldom the best. */
import type { Choice } from './choices.ts';
import type { Counts } from './counts.ts';
import { noNeed, unitsFor } from './need.ts';
import { allLeft, fitting, take } from './roomLeft.ts';
import type { Season } from './season.ts';

/**
 * Units of each choice for a first plan.
 * @param season the season
 * @returns whole numbers; those of fixed choices as they are
 * @valid every season
 * @source commonPractice
 */
export function firstCounts(season: Season): Counts {
  const counts = season.choices.map((choice) => season.fixed.get(choice) ?? 0);
  const left = allLeft(season);
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
    const units = Math.min(wanted, Math.max(0, Math.floor(fitting(season, left, choice).most)));
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

function add(of: number[] | undefined, at: number, value: number): void {
  if (of?.[at] !== undefined) of[at] += value;
}
