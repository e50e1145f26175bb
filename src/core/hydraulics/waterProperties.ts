/** What the warmth of the water changes: how heavy it is, and how thick. */

/**
 * Density of fresh water.
 *
 * Density = 999.9 + 0.02034 × T − 0.006162 × T² + 0.00002261 × T³ − 0.00000004657 × T⁴.
 *
 * @param water_degC temperature of the water, degC, 0 to 50
 * @returns density, kg/m3
 * @valid fresh water at the pressure of the air; salt of a few grams a litre adds less than a per cent
 * @throws RangeError outside that range
 * @source sharqawy2010, equation 8 without salt
 * @example waterDensity_kg_m3(20) // 998.0154288
 */
export function waterDensity_kg_m3(water_degC: number): number {
  const T = liquid('waterDensity_kg_m3', water_degC);
  return 999.9 + 0.02034 * T - 0.006162 * T ** 2 + 2.261e-5 * T ** 3 - 4.657e-8 * T ** 4;
}

/**
 * Kinematic viscosity of fresh water: how thick it is, for its weight.
 *
 * Viscosity = 1 ÷ (557.82468 + 19.408782 × T + 0.1360459 × T² − 0.00031160832 × T³) ÷ density.
 *
 * @param water_degC temperature of the water, degC, 0 to 50
 * @returns kinematic viscosity, m2/s
 * @valid fresh water at the pressure of the air
 * @throws RangeError outside that range
 * @source popiel1998, dynamic viscosity; sharqawy2010 for the density
 * @example waterViscosity_m2_s(20) // 0.00000100407115
 */
export function waterViscosity_m2_s(water_degC: number): number {
  const T = liquid('waterViscosity_m2_s', water_degC);
  const dynamic = 1 / (557.82468 + 19.408782 * T + 0.1360459 * T ** 2 - 3.1160832e-4 * T ** 3);
  return dynamic / waterDensity_kg_m3(T);
}

function liquid(name: string, water_degC: number): number {
  if (!(0 <= water_degC && water_degC <= 50)) {
    throw new RangeError(`${name}: water_degC is ${water_degC}, must be 0 to 50`);
  }
  return water_degC;
}
