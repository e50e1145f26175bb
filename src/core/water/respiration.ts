/** What fish, nitrifiers and rotting solids breathe. */
import { oxygenPerNitrogen } from './waterConstants.ts';

/**
 * Oxygen that a quiet, unfed fish of the carp kind breathes.
 * 67.4 × mass^−0.193 × e^(0.0562 × temperature).
 * @param mass_g mass of one fish, above 0
 * @param water_degC 0 to 40
 * @returns mg of oxygen for each kg of fish and hour
 * @valid measured on young crucian carp at 15 to 30 °C; other kinds, sizes and temperatures are a guess from it
 * @throws RangeError outside these ranges
 * @source yamanaka2013 the fitted equation of the abstract
 * @example routineRespiration_mg_kg_h(100, 20) // 85.27208738
 */
export function routineRespiration_mg_kg_h(mass_g: number, water_degC: number): number {
  if (!(0 < mass_g && 0 <= water_degC && water_degC <= 40)) {
    throw new RangeError(`routineRespiration_mg_kg_h(${mass_g} g, ${water_degC} °C)`);
  }
  return 67.4 * mass_g ** -0.193 * Math.exp(0.0562 * water_degC);
}

/**
 * Oxygen that nitrifiers take to turn ammonia into nitrate, over a day.
 * 4.57 g of oxygen for each g of ammonia nitrogen.
 * @param tan_g_d ammonia nitrogen of a day, as N, 0 or more
 * @returns g/d
 * @valid all of it is turned; growth of the nitrifiers themselves would save a tenth
 * @throws RangeError below zero
 * @source nitrificationStoichiometry two oxygen molecules for one nitrogen atom
 * @example nitrifierOxygen_g_d(1) // 4.57
 */
export function nitrifierOxygen_g_d(tan_g_d: number): number {
  if (!(0 <= tan_g_d)) throw new RangeError(`nitrifierOxygen_g_d(${tan_g_d})`);
  return oxygenPerNitrogen.value * tan_g_d;
}

/**
 * Ammonia nitrogen that a bed at constant flood can turn into nitrate with the oxygen that flows into it.
 * Flow × (oxygen in − oxygen that must be left) ÷ 4.57, over a day.
 * @param flow_L_h water through the bed, 0 or more
 * @param oxygenIn_mg_L oxygen of the water that enters
 * @param oxygenLeft_mg_L oxygen that must be left at the outlet, 0 or more
 * @returns g of nitrogen a day
 * @valid before anything else in the bed takes oxygen: it is a ceiling, never a promise
 * @throws RangeError below zero
 * @source nitrificationStoichiometry a balance of oxygen over the bed
 * @example bedCeiling_g_d(1000, 6, 2) // 21.00656455
 */
export function bedCeiling_g_d(flow_L_h: number, oxygenIn_mg_L: number, oxygenLeft_mg_L: number): number {
  if (!(0 <= flow_L_h && 0 <= oxygenLeft_mg_L)) {
    throw new RangeError(`bedCeiling_g_d(${flow_L_h}, ${oxygenIn_mg_L}, ${oxygenLeft_mg_L})`);
  }
  return ((flow_L_h * Math.max(0, oxygenIn_mg_L - oxygenLeft_mg_L)) / 1000 / oxygenPerNitrogen.value) * 24;
}

/**
 * Time until the fish have breathed the water down to a limit, with nothing coming in.
 * Water × (oxygen now − limit) ÷ what all fish breathe.
 * @param water_L water around the fish, 0 or more
 * @param oxygen_mg_L oxygen at the start
 * @param limit_mg_L oxygen at which the fish suffer
 * @param breathed_g_h what all fish breathe in an hour, above 0
 * @returns minutes; 0 where the start is at the limit or below it
 * @valid still, dark, clear water; the surface gives a little more, mud and plants take some
 * @throws RangeError where nothing breathes or a volume is below zero
 * @source geometry
 * @example timeInHand_min(500, 6, 5, 1) // 30
 */
export function timeInHand_min(
  water_L: number,
  oxygen_mg_L: number,
  limit_mg_L: number,
  breathed_g_h: number,
): number {
  if (!(0 <= water_L && 0 < breathed_g_h)) {
    throw new RangeError(`timeInHand_min(${water_L} L, ${breathed_g_h} g/h)`);
  }
  return (60 * water_L * Math.max(0, oxygen_mg_L - limit_mg_L)) / (1000 * breathed_g_h);
}
