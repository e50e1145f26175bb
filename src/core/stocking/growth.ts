/** Growth by warmth: the cube root of a fish's mass rises evenly with degrees and days. */

/**
 * Mass of a fish after so much warmth.
 * Cube root of the mass plus coefficient times degree-days over 1,000, cubed.
 * @param mass_g mass at the start, above 0
 * @param coefficient thermal growth coefficient, as printed times 1,000; 0 to 10
 * @param warmth_degC_d sum of the water's temperature over the days, 0 or more
 * @returns g
 * @valid well fed fish within the temperatures of the coefficient's own trial; fails near and above the best temperature
 * @throws RangeError when an argument is out of range
 * @source iwamaTautz1981
 * @example massAfter_g(1, 1, 1000) // 8
 */
export function massAfter_g(mass_g: number, coefficient: number, warmth_degC_d: number): number {
  if (!(0 < mass_g && 0 <= coefficient && coefficient <= 10 && 0 <= warmth_degC_d)) {
    throw new RangeError(`massAfter_g(${mass_g}, ${coefficient}, ${warmth_degC_d})`);
  }
  return (Math.cbrt(mass_g) + (coefficient * warmth_degC_d) / 1000) ** 3;
}

/**
 * Warmth that a fish takes to grow from one mass to another.
 * Difference of the cube roots, times 1,000, over the coefficient; none where it is that heavy already.
 * @param mass_g mass at the start, above 0
 * @param target_g mass to come to, above 0
 * @param coefficient thermal growth coefficient, as printed times 1,000; above 0, up to 10
 * @returns degree-days
 * @valid as massAfter_g
 * @throws RangeError when an argument is out of range
 * @source iwamaTautz1981
 * @example warmthTo_degC_d(1, 8, 1) // 1000
 */
export function warmthTo_degC_d(mass_g: number, target_g: number, coefficient: number): number {
  if (!(0 < mass_g && 0 < target_g && 0 < coefficient && coefficient <= 10)) {
    throw new RangeError(`warmthTo_degC_d(${mass_g}, ${target_g}, ${coefficient})`);
  }
  return Math.max(0, ((Math.cbrt(target_g) - Math.cbrt(mass_g)) * 1000) / coefficient);
}

/**
 * Warmth of one day that counts for growth.
 * The water's temperature, none below the coefficient's range, and never more than its upper end.
 * @param water_degC mean of the day, -5 to 60
 * @param from_degC lower end of the coefficient's range
 * @param to_degC upper end, above the lower
 * @returns degrees over one day
 * @valid growth above the best temperature falls; counting no more than the upper end is the careful side for the fish, not for the date
 * @throws RangeError when an argument is out of range
 * @source iwamaTautz1981, jobling2003 for where it fails
 * @example countedWarmth_degC(24, 20, 32) // 24
 * @example countedWarmth_degC(12, 20, 32) // 0
 * @example countedWarmth_degC(35, 20, 32) // 32
 */
export function countedWarmth_degC(water_degC: number, from_degC: number, to_degC: number): number {
  if (!(-5 <= water_degC && water_degC <= 60 && from_degC < to_degC)) {
    throw new RangeError(`countedWarmth_degC(${water_degC}, ${from_degC}, ${to_degC})`);
  }
  if (water_degC < from_degC) return 0;
  return Math.min(water_degC, to_degC);
}
