/** A season with all that its stages ask for. */
import type { BedKind } from './bedKinds.ts';
import type { Choice } from './choices.ts';
import { type Need, needsOf } from './need.ts';
import type { TurnoverTask } from './turnover.ts';
import { type PlantUnit, plantUnit } from './units.ts';
import { restWeeks } from './weeks.ts';

/** Units of a choice that already stand, and stay. */
export type Fixed = { readonly choice: Choice; readonly units: number };

export type Season = {
  readonly task: TurnoverTask;
  readonly kinds: readonly BedKind[];
  /** Free ones first, then those that are fixed. */
  readonly choices: readonly Choice[];
  /** Units of a choice, where they are fixed. */
  readonly fixed: ReadonlyMap<Choice, number>;
  readonly needs: readonly (readonly Need[])[];
  readonly units: readonly PlantUnit[];
  readonly rest_weeks: number;
};

/**
 * A season with all that its stages ask for.
 * @param task a checked task
 * @param kinds its bed kinds
 * @param choices all ways to meet its wishes
 * @param fixed what already stands
 * @returns the season
 * @valid see choicesOf
 * @source geometry
 */
export function seasonOf(
  task: TurnoverTask,
  kinds: readonly BedKind[],
  choices: readonly Choice[],
  fixed: readonly Fixed[],
): Season {
  return {
    task,
    kinds,
    choices: [...choices, ...fixed.map(({ choice }) => choice)],
    fixed: new Map(fixed.map(({ choice, units }) => [choice, units])),
    needs: needsOf(task),
    units: task.wishes.map(({ crop, unit }) => plantUnit(crop, task.place_mm, unit)),
    rest_weeks: restWeeks(task),
  };
}

/**
 * Weeks in which a choice holds its places, rest included, up to the end of the season.
 * @param season the season
 * @param choice one of its choices
 * @returns first week, and the week after the last
 * @valid every choice
 * @source geometry
 */
export function held(season: Season, choice: Choice): { readonly from: number; readonly to: number } {
  const { task, rest_weeks } = season;
  const to = Math.max(choice.from_week + 1, choice.to_week + rest_weeks);
  return { from: choice.from_week, to: Math.min(to, task.weeks) };
}

/**
 * Cells for one unit: one for each plant, and more for seeds that do not come up.
 * @param season the season
 * @param wish number of the wish
 * @returns cells, not rounded: several units share them
 * @valid one seed a cell
 * @source geometry
 * @example cellsOf({ task: { wishes: [] }, units: [] }, 0) // 1
 */
export function cellsOf(season: Season, wish: number): number {
  const { task, units } = season;
  const success_frac = task.wishes[wish]?.crop.germination.success_frac ?? 1;
  return (units[wish]?.plants ?? 1) / success_frac;
}
