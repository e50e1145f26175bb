/** What was sown stays sown, whatever became of it: the work of a day that is over is not written anew. */
import type { Change } from './change.ts';
import { numbersOf } from './emptied.ts';
import type { Sown, SownPlan } from './sown.ts';
import { isSown } from './standing.ts';
import type { Sowing, TurnoverTask, WasSown } from './turnover.ts';
import { plantUnit, seedsFor } from './units.ts';

/**
 * Everything that was sown before a season is planned again, as it was sown.
 * @param plan the plan so far
 * @param change what came differently
 * @returns one entry for each name of a sowing
 * @valid changes within the season
 * @source commonPractice
 */
export function sownBefore(plan: SownPlan, change: Change): readonly WasSown[] {
  const found = new Map(plan.wasSown.map((one) => [one.id, one]));
  for (const sowing of plan.sowings) {
    const isKnown = plan.wasSown.some(({ id }) => id === sowing.id);
    if (isKnown || !isSown(plan.task, sowing, change)) continue;
    const own = asSown(plan.task, sowing);
    const other = found.get(own.id);
    found.set(own.id, other === undefined ? own : both(other, own));
  }
  return [...found.values()];
}

function asSown(task: TurnoverTask, { id, crop, bed, sow_d, plantOut_d, strips }: Sown): WasSown {
  const wish = task.wishes.find((one) => one.crop.id === crop);
  if (wish === undefined) throw new RangeError(`no wish for ${crop}`);
  const unit = plantUnit(wish.crop, task.place_mm, wish.unit);
  const plants = (numbersOf({ strips }).length / unit.places) * unit.plants;
  const runs = strips.map(({ first, last }) => ({ first, last }));
  return { id, crop, bed, sow_d, plantOut_d, seeds: seedsFor(wish.crop, plants), plants, strips: runs };
}

function both(one: WasSown, other: WasSown): WasSown {
  const strips = [...one.strips, ...other.strips];
  return { ...one, seeds: one.seeds + other.seeds, plants: one.plants + other.plants, strips };
}

/**
 * Of what was sown that which a plan does not tell any more.
 * @param before what was sown
 * @param sowings the sowings of the plan
 * @returns what has come to less since, or to nothing
 * @valid every plan
 * @source geometry
 * @example lessened([], []) // []
 */
export function lessened(before: readonly WasSown[], sowings: readonly Sowing[]): readonly WasSown[] {
  return before.filter(({ id, seeds, plants }) => {
    const own = sowings.filter((one) => one.id === id);
    const sum = (of: 'seeds' | 'plants'): number => own.reduce((total, one) => total + one[of], 0);
    return sum('seeds') !== seeds || sum('plants') !== plants;
  });
}

/**
 * Sowings with the seeds that were sown for them.
 * @param sowings the sowings of a plan
 * @param wasSown what has come to less since
 * @returns the same sowings
 * @valid names that stand for one sowing; where one stands for several, each has the seeds for its plants
 * @source geometry
 * @example withSeeds([], []) // []
 */
export function withSeeds(sowings: readonly Sowing[], wasSown: readonly WasSown[]): readonly Sowing[] {
  return sowings.map((sowing) => {
    const was = wasSown.find(({ id }) => id === sowing.id);
    const isAlone = sowings.filter(({ id }) => id === sowing.id).length === 1;
    return was === undefined || !isAlone ? sowing : { ...sowing, seeds: was.seeds };
  });
}
