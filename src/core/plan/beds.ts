/** What each bed holds: wet media, the water in it, the water that moves and the water that stays. */
import { area_m2, volume_L } from '../geometry/container.ts';
import type { Bed, Range, System } from '../system.ts';
import { bedFigures, type BedWater } from './bedFigures.ts';
import type { Figure } from './figure.ts';

/** One bed worked out: the numbers that the other parts of the plan build on, and its figures. */
export type BedPlan = BedWater & { readonly figures: readonly Figure[] };

/**
 * Every bed of a system, worked out in the order of the system.
 * @param system a checked system
 * @returns one BedPlan a bed
 * @valid a system that `schemas` has checked
 * @source geometry; void fractions as each media's file says
 */
export function bedPlans(system: System): readonly BedPlan[] {
  return system.beds.map((bed, index) => bedPlan(system, bed, index + 1));
}

/**
 * Whether a bed fills and empties in turns.
 * @param bed a bed
 * @returns true for the siphon and the timer
 * @source commonPractice
 */
export function floodsAndDrains(bed: Bed): boolean {
  return bed.mode === 'siphon' || bed.mode === 'timer';
}

/** Highest water over the bed's inside floor: the lip of the standpipe, or what the tank's full line leaves a basket. */
function bedLine_mm(system: System, bed: Bed): number {
  if (bed.mode !== 'inTank') return bed.waterLine_mm;
  return Math.max(0, Math.min(bed.mediaDepth_mm, system.tank.full_mm - bed.above_mm));
}

function bedPlan(system: System, bed: Bed, number: number): BedPlan {
  const line_mm = bedLine_mm(system, bed);
  const one_L = volume_L(bed.container, line_mm);
  const wetMedia_L = one_L * bed.count;
  const drained_L = floodsAndDrains(bed) ? volume_L(bed.container, bed.drained_mm) * bed.count : null;
  const belowDrain_L = drained_L ?? wetMedia_L;
  const base: BedWater = {
    bed,
    number,
    line_mm,
    wetMedia_L,
    belowDrain_L,
    surface_m2: area_m2(bed.container, line_mm) * bed.count,
    held_L: times(bed.media.void_frac, wetMedia_L),
    moved_L: times(bed.media.void_frac, wetMedia_L - belowDrain_L),
    left_L: times(bed.media.void_frac, belowDrain_L),
  };
  return { ...base, figures: bedFigures(base, { one_L, drained_L }, system.pump) };
}

function times(range: Range, by: number): Range {
  return { low: range.low * by, likely: range.likely * by, high: range.high * by };
}
