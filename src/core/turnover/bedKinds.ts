/** Beds whose places can stand for each other. */
import type { Crop } from '../crops/crop.ts';
import type { TurnoverBed, TurnoverTask } from './turnover.ts';
import { plantUnit } from './units.ts';

export type BedKind = {
  /** Numbers of its beds in the task. */
  readonly beds: readonly number[];
  readonly mode: 'still' | 'drained';
  readonly places: number;
  /** Most places that are lifted in one week. */
  readonly clearing: number;
};

/**
 * Beds by what may grow in them. Where a crop takes more than a place, each bed is a kind of its own, as no plant stands
 * in two beds.
 * @param task beds and wishes
 * @returns kinds in the order of their first beds
 * @valid at most a third of a bed is cleared in a week, or one plant where that is more
 * @source commonPractice
 */
export function bedKinds(task: TurnoverTask): readonly BedKind[] {
  const widest = placesOfWidest(task, task.wishes);
  const keys = task.beds.map((bed, index) => (widest > 1 ? `${index}` : modeOf(bed)));
  return [...new Set(keys)].map((key) => {
    const beds = [...keys.keys()].filter((index) => keys[index] === key);
    const all = beds.flatMap((index) => task.beds[index] ?? []);
    const mode = all[0] === undefined ? 'drained' : modeOf(all[0]);
    const clearing = all.reduce((sum, bed) => sum + clearedOf(bed, widestIn(task, bed)), 0);
    return { beds, mode, places: all.reduce((sum, bed) => sum + bed.places, 0), clearing };
  });
}

function modeOf(bed: TurnoverBed): BedKind['mode'] {
  return bed.mode === 'constantFlood' || bed.mode === 'inTank' ? 'still' : 'drained';
}

/**
 * Places of the widest plant that may stand in a bed.
 * @param task beds and wishes
 * @param bed one of its beds
 * @returns 1 and more
 * @valid every bed; what is refused there may be as wide as it likes
 * @source geometry
 * @example widestIn({ wishes: [] }, { mode: 'siphon' }) // 1
 */
export function widestIn(task: TurnoverTask, bed: TurnoverBed): number {
  const mode = modeOf(bed);
  return placesOfWidest(
    task,
    task.wishes.filter(({ crop }) => mayGrow(crop, { mode })),
  );
}

function placesOfWidest({ place_mm }: TurnoverTask, wishes: TurnoverTask['wishes']): number {
  return Math.max(1, ...wishes.map(({ crop, unit }) => plantUnit(crop, place_mm, unit).places));
}

/**
 * Most places of a bed that are lifted in one week, so that bacteria and uptake stay level.
 * @param bed a bed
 * @param widest places of the widest plant
 * @returns a third of it, or that plant where it is more
 * @valid every bed
 * @source commonPractice
 * @example clearedOf({ name: '', mode: 'siphon', places: 20, area_m2: 0.8 }, 1) // 6
 */
export function clearedOf(bed: TurnoverBed, widest: number): number {
  return Math.min(bed.places, Math.max(Math.floor(bed.places / 3), widest));
}

/**
 * Whether a crop may grow in a kind of bed. Roots that stay for months fill a bed that never drains.
 * @param crop any crop
 * @param kind a kind of bed
 * @returns yes or no
 * @valid every crop
 * @source commonPractice
 */
export function mayGrow(crop: Crop, kind: Pick<BedKind, 'mode'>): boolean {
  return kind.mode === 'drained' || crop.stays === 'quick';
}
