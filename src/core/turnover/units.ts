/** What is planted as one: as many plants as fill one place, or one plant on as many places as it needs. */
import type { Crop, CropUnit } from '../crops/crop.ts';

export type PlantUnit = {
  readonly plants: number;
  readonly places: number;
  /** What it gives at one picking, in the unit that was asked for, after losses. */
  readonly amount: number;
};

/** A place of 200 mm holds a plant of 200 mm, whatever the last digit says. */
const slack = 1e-9;

/**
 * A unit of a crop.
 * Plants closer than a place stand in squares inside it; a plant that is wider takes as many places as its square has room.
 * @param crop any crop
 * @param place_mm side of a place, above 0
 * @param unit what the person counts
 * @returns plants, places and what one picking gives, after losses between planting and picking
 * @valid rows at right angles; losses as the crop's file has them
 * @throws RangeError where the crop is not counted in this unit
 * @source geometry
 */
export function plantUnit(crop: Crop, place_mm: number, unit: CropUnit): PlantUnit {
  const side = Math.floor(place_mm / crop.spacing_mm + slack);
  const plants = Math.max(1, side * side);
  const places = side > 0 ? 1 : Math.ceil((crop.spacing_mm / place_mm) ** 2 - slack);
  return { plants, places, amount: plants * (1 - crop.loss_frac) * perPlant(crop, unit) };
}

/**
 * Seeds for so many plants.
 * @param crop any crop
 * @param plants plants that are to come up, 0 and more
 * @returns a whole number, with more for those that do not come up
 * @valid germination as the crop's file has it
 * @source geometry
 * @example seedsFor({ germination: { success_frac: 0.8 } }, 12) // 15
 */
export function seedsFor(crop: Crop, plants: number): number {
  return Math.ceil(plants / crop.germination.success_frac - slack);
}

/**
 * What one plant gives at one picking, before losses.
 * @param crop any crop
 * @param unit what the person counts: heads, bunches or kilograms
 * @returns so many of them
 * @valid the likely yield of the crop
 * @throws RangeError where the crop is not counted in this unit
 * @source commonPractice
 */
function perPlant(crop: Crop, unit: CropUnit): number {
  if (unit === 'kg') return crop.yield_g.likely / 1000;
  if (crop.portion?.unit !== unit) throw new RangeError(`${crop.id} is not counted in ${unit}`);
  return unit === 'head' ? 1 : crop.yield_g.likely / crop.portion.mass_g;
}
