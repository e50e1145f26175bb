/** Feed of a day, from the fish that are there. */

/**
 * Feed for a day.
 * Count times mass times ration.
 * @param count fish present, 0 or more
 * @param mass_g mean mass now, above 0
 * @param ration_frac share of the body mass fed in a day, 0 to 0.2
 * @returns grams a day
 * @valid the ration's own size and temperature range
 * @throws RangeError when an argument is out of range
 * @source fao589 section 7.2
 * @example ration_g_d(1, 100, 0.01) // 1
 * @example ration_g_d(12, 180, 0.015) // 32.4
 */
export function ration_g_d(count: number, mass_g: number, ration_frac: number): number {
  if (!(0 <= count && 0 < mass_g && 0 <= ration_frac && ration_frac <= 0.2)) {
    throw new RangeError(`ration_g_d(${count}, ${mass_g}, ${ration_frac})`);
  }
  return count * mass_g * ration_frac;
}
