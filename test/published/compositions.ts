/**
 * Sums that others print with several steps in them, each made of shipped formulas only. A case says `of:` and the
 * name of one of these instead of `formula:`; it then counts for the formulas named in `checks`.
 */
import { dateOf, dayNumber_d } from '../../src/core/calendar.ts';
import { bedRim_mm } from '../../src/core/crops/bedRim.ts';
import { type BedOutline, plantEdge_mm, plantPlaces_mm } from '../../src/core/crops/places.ts';
import { daysAt_d } from '../../src/core/crops/thermalTime.ts';
import { intoYear_d } from '../../src/core/crops/warmth.ts';
import { mondayOf_d } from '../../src/core/isoWeek.ts';
import { volume_L } from '../../src/core/geometry/container.ts';
import { cylinderVolume_L } from '../../src/core/geometry/cylinder.ts';
import { depthWhere_mm } from '../../src/core/geometry/depthWhere.ts';
import { lyingCylinderArea_m2, lyingCylinderVolume_L } from '../../src/core/geometry/lyingCylinder.ts';
import { rim_mm, wetDepth_mm } from '../../src/core/geometry/rim.ts';
import { dutyFlow_L_h } from '../../src/core/hydraulics/dutyPoint.ts';
import type { PumpCurve } from '../../src/core/hydraulics/pumpCurve.ts';
import { levelOf_mm, type LowerVessel, waterBelow_L } from '../../src/core/plan/lowerVessel.ts';
import { seenWidth_mm } from '../../src/core/plan/seenFromAbove.ts';
import { depthTogether_mm } from '../../src/core/plan/vessel.ts';
import { countedWarmth_degC, massAfter_g } from '../../src/core/stocking/growth.ts';
import type { Container } from '../../src/core/system.ts';
import type { TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { workday_d } from '../../src/core/turnover/weeks.ts';
import { inForm_mg_L } from '../../src/core/water/nitrogenForms.ts';
import { bedCeiling_g_d, nitrifierOxygen_g_d } from '../../src/core/water/respiration.ts';
import { unionisedOfMix_mg_L } from '../../src/core/water/waterMix.ts';

export type Composition = {
  /** The formulas that a case of this counts for. */
  readonly checks: readonly string[];
  readonly of: (...inputs: never[]) => number;
};

export const compositions: Readonly<Record<string, Composition>> = {
  lyingAfterStanding_mm: { checks: ['depthWhere_mm'], of: lyingAfterStanding_mm },
  lyingCutAtRim_L: { checks: ['wetDepth_mm', 'rim_mm'], of: lyingCutAtRim_L },
  standingToRim_L: { checks: ['rim_mm'], of: standingToRim_L },
  widthOfLyingSurface_mm: { checks: ['lyingCylinderArea_m2'], of: widthOfLyingSurface_mm },
  riseBySolid_mm: { checks: ['levelOf_mm', 'depthTogether_mm'], of: riseBySolid_mm },
  roomOfSolid_L: { checks: ['waterBelow_L'], of: roomOfSolid_L },
  oxygenBroughtIn_g_d: { checks: ['bedCeiling_g_d'], of: oxygenBroughtIn_g_d },
  unionisedNitrogen_mg_L: { checks: ['unionisedOfMix_mg_L'], of: unionisedNitrogen_mg_L },
  daysPerLeaf_d: { checks: ['daysAt_d', 'thermalTime_degC_d'], of: daysPerLeaf_d },
  dayOfWeek_d: { checks: ['mondayOf_d'], of: dayOfWeek_d },
  dateOfWeek_d: { checks: ['workday_d'], of: dateOfWeek_d },
  dayOfYear_d: { checks: ['intoYear_d'], of: dayOfYear_d },
  grownAtWarmth_g: { checks: ['countedWarmth_degC', 'massAfter_g'], of: grownAtWarmth_g },
  plantsOnSquare_ratio: { checks: ['plantPlaces_mm', 'plantEdge_mm'], of: plantsOnSquare_ratio },
  areaInRim_m2: { checks: ['bedRim_mm'], of: areaInRim_m2 },
  seenWidthOfLying_mm: { checks: ['seenWidth_mm'], of: seenWidthOfLying_mm },
  dutyOnSquare_L_h: { checks: ['dutyFlow_L_h'], of: dutyOnSquare_L_h },
};

/** From one leaf to the next, from the thermal time of a leaf and the base. */
function daysPerLeaf_d(leaf_degC_d: number, mean_degC: number, base_degC: number): number {
  return daysAt_d(leaf_degC_d, mean_degC, base_degC, 30);
}

/** Monday is 1. */
function dayOfWeek_d(date: string): number {
  const day_d = dayNumber_d(date);
  return day_d - mondayOf_d(day_d) + 1;
}

/** The day of the month on which a weekday of a week falls; Monday is 1. */
function dateOfWeek_d(year: string, week: number, weekday: number): number {
  const firstMonday_d = mondayOf_d(dayNumber_d(`${year}-01-04`));
  return Number(
    dateOf(workday_d({ firstMonday_d, workday: weekday - 1 } as TurnoverTask, week - 1)).slice(8),
  );
}

/** The first of January is 1. */
function dayOfYear_d(date: string): number {
  return Math.floor(intoYear_d(dayNumber_d(date))) + 1;
}

/** What a fish weighs after so many days of the same warmth. */
function grownAtWarmth_g(mass_g: number, tgc: number, days: number, water_degC: number): number {
  return massAfter_g(mass_g, tgc, days * countedWarmth_degC(water_degC, 5, 20));
}

/** Plants on a square, each in the middle of a square of its own. */
function plantsOnSquare_ratio(side_mm: number, spacing_mm: number): number {
  const bed: BedOutline = { form: 'box', length_mm: side_mm, width_mm: side_mm };
  return plantPlaces_mm(bed, spacing_mm, plantEdge_mm(bed, spacing_mm), 'square').length;
}

/** Area within the corners that a bed is drawn with. */
function areaInRim_m2(bed: BedOutline): number {
  const corners = bedRim_mm(bed);
  const twice_mm2 = corners.reduce((sum, { along_mm, across_mm }, i) => {
    const next = corners[(i + 1) % corners.length] ?? { along_mm: 0, across_mm: 0 };
    return sum + along_mm * next.across_mm - next.along_mm * across_mm;
  }, 0);
  return twice_mm2 / 2e6;
}

/** Width that the drawing tells of a lying drum that is cut open at this height. */
function seenWidthOfLying_mm(diameter_mm: number, depth_mm: number): number {
  return seenWidth_mm({ shape: 'lyingCylinder', diameter_mm, length_mm: 1000, depth_mm });
}

/** A drum filled to a depth while it stands, then laid down: how deep the water is now. */
function lyingAfterStanding_mm(diameter_mm: number, length_mm: number, depth_mm: number): number {
  const held_L = cylinderVolume_L(diameter_mm, depth_mm);
  return depthWhere_mm((h) => lyingCylinderVolume_L(diameter_mm, length_mm, h), held_L, diameter_mm);
}

/** A lying drum that is asked for more depth than it has. */
function lyingCutAtRim_L(diameter_mm: number, length_mm: number, depth_mm: number): number {
  const drum: Container = { shape: 'lyingCylinder', diameter_mm, length_mm, depth_mm: diameter_mm };
  return lyingCylinderVolume_L(diameter_mm, length_mm, wetDepth_mm(drum, depth_mm));
}

/** An upright drum filled as high as it goes. */
function standingToRim_L(diameter_mm: number, depth_mm: number): number {
  return cylinderVolume_L(diameter_mm, rim_mm({ shape: 'cylinder', diameter_mm, depth_mm }));
}

/** Width of the water in a lying drum: its surface over the length, here of a metre. */
function widthOfLyingSurface_mm(diameter_mm: number, depth_mm: number): number {
  return lyingCylinderArea_m2(diameter_mm, 1000, depth_mm) * 1000;
}

/** By how much the water of a vessel rises over a solid that it covers: media without voids. */
function riseBySolid_mm(container: Container, water_mm: number, solid: Container): number {
  const water_L = volume_L(container, water_mm);
  return (
    levelOf_mm(withSolid(container, solid), water_L) - depthTogether_mm({ container, count: 1 }, water_L)
  );
}

/** What water goes out of a vessel, level kept, for a solid to stand in it. */
function roomOfSolid_L(container: Container, level_mm: number, solid: Container): number {
  const alone = { ...withSolid(container, solid), baskets: [] };
  return waterBelow_L(alone, level_mm) - waterBelow_L(withSolid(container, solid), level_mm);
}

function withSolid(container: Container, solid: Container): LowerVessel {
  const media = { void_frac: { low: 0 } };
  return {
    name: 'tank',
    vessel: { container, count: 1, full_mm: rim_mm(container), above_mm: 0 },
    baskets: [{ container: solid, count: 1, mediaDepth_mm: rim_mm(solid), above_mm: 0, media }],
  };
}

/** Oxygen that a flow gives up between two concentrations: what the nitrifiers of a bed at its ceiling take. */
function oxygenBroughtIn_g_d(flow_L_h: number, in_mg_L: number, left_mg_L: number): number {
  return nitrifierOxygen_g_d(bedCeiling_g_d(flow_L_h, in_mg_L, left_mg_L));
}

/** Un-ionised ammonia of a mix, counted as nitrogen. */
function unionisedNitrogen_mg_L(tan_mg_L: number, pH: number, settledPH: number, water_degC: number): number {
  const mix = { tan_mg_L, pH, settledPH, water_degC, alkalinity_mg_L: 100 };
  return inForm_mg_L(unionisedOfMix_mg_L(mix), 'NH3', 'N');
}

/** Flow of a pump against a lift and losses that grow with the square of the flow, through one known point of them. */
function dutyOnSquare_L_h(curve: PumpCurve, lift_m: number, at_L_h: number, asked_m: number): number {
  const asked = (flow_L_h: number) => lift_m + (asked_m - lift_m) * (flow_L_h / at_L_h) ** 2;
  return dutyFlow_L_h(curve, asked) ?? Number.NaN;
}
