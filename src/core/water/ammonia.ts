/** Which share of the ammonia is the poisonous one, and how much total ammonia that allows. */

/**
 * Share of total ammonia that is un-ionised (NH3).
 * pKa = 0.09018 + 2729.92 over the temperature in kelvin; share = 1 over (1 + 10^(pKa − pH)).
 * @param pH 4 to 11
 * @param water_degC 0 to 50
 * @returns 0 to 1
 * @valid fresh water, 0 to 50 °C
 * @throws RangeError outside these ranges
 * @source emerson1975 the two equations, as reprinted
 * @example unionised_frac(8, 20) // 0.0380712572
 */
export function unionised_frac(pH: number, water_degC: number): number {
  if (!(4 <= pH && pH <= 11 && 0 <= water_degC && water_degC <= 50)) {
    throw new RangeError(`unionised_frac(pH ${pH}, ${water_degC} °C)`);
  }
  const pKa = 0.09018 + 2729.92 / (water_degC + 273.15);
  return 1 / (1 + 10 ** (pKa - pH));
}

/**
 * Total ammonia at which the un-ionised part reaches a limit.
 * Limit over the un-ionised share.
 * @param unionisedMax_mg_L limit of un-ionised ammonia, above 0
 * @param pH 4 to 11
 * @param water_degC 0 to 50
 * @returns mg/L of total ammonia, in the same form (NH3 or N) as the limit
 * @valid as unionised_frac
 * @throws RangeError outside these ranges
 * @source emerson1975 solved for the total
 * @example tanAtUnionised_mg_L(0.05, 8, 20) // 1.313326736
 */
export function tanAtUnionised_mg_L(unionisedMax_mg_L: number, pH: number, water_degC: number): number {
  if (!(0 < unionisedMax_mg_L)) throw new RangeError(`tanAtUnionised_mg_L(${unionisedMax_mg_L})`);
  return unionisedMax_mg_L / unionised_frac(pH, water_degC);
}
