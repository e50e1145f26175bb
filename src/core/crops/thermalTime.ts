/** Thermal time: warmth that a crop makes use of, summed over days. */

/**
 * Thermal time of one day.
 * Warmth above the base; above the cap nothing more is gained.
 * @param mean_degC mean of the day
 * @param base_degC no growth below this
 * @param cap_degC no credit above this; above the base
 * @returns degree-days, 0 or more
 * @valid crops that grow in a straight line with warmth between the two
 * @throws RangeError where the cap is not above the base
 * @source em9305
 * @example thermalTime_degC_d(18.5, 4, 22) // 14.5
 * @example thermalTime_degC_d(30, 4, 22) // 18
 */
export function thermalTime_degC_d(mean_degC: number, base_degC: number, cap_degC: number): number {
  if (!(base_degC < cap_degC)) throw new RangeError(`thermal time from ${base_degC} to ${cap_degC} degC`);
  return Math.max(0, Math.min(mean_degC, cap_degC) - base_degC);
}

/**
 * Days that something takes at an even warmth, from the thermal time that it needs.
 * @param need_degC_d thermal time, above 0
 * @param mean_degC mean of the days
 * @param base_degC no growth below this
 * @param cap_degC no credit above this
 * @returns days; infinite at or below the base
 * @valid as thermalTime_degC_d
 * @throws RangeError where the need is not above 0
 * @source em9305
 * @example daysAt_d(406, 18.5, 4, 22) // 28
 */
export function daysAt_d(
  need_degC_d: number,
  mean_degC: number,
  base_degC: number,
  cap_degC: number,
): number {
  if (!(0 < need_degC_d)) throw new RangeError(`thermal time of ${need_degC_d}`);
  return need_degC_d / thermalTime_degC_d(mean_degC, base_degC, cap_degC);
}
