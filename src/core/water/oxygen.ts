/** How much oxygen water holds: from its temperature, its salt, and the height above the sea. */

const kelvin = 273.15;

/**
 * Share of the sea's air pressure that is left at a height.
 * (1 − 2.25577e-5 × height)^5.25588.
 * @param altitude_m height above the sea, -400 to 5000
 * @returns 0.5 to 1.05, of 101,325 Pa
 * @valid the standard atmosphere; weather moves it by some three in a hundred
 * @throws RangeError outside this range
 * @source standardAtmosphere formula of the lowest layer
 * @example pressure_frac(0) // 1
 * @example pressure_frac(1000) // 0.8869929477
 */
export function pressure_frac(altitude_m: number): number {
  if (!(-400 <= altitude_m && altitude_m <= 5000)) throw new RangeError(`pressure_frac(${altitude_m} m)`);
  return (1 - 2.25577e-5 * altitude_m) ** 5.25588;
}

/**
 * Dissolved oxygen of water that has taken from the air all it can.
 * Exponential of a row in one over the temperature, less for salt, times the share of pressure that is not vapour.
 * @param water_degC 0 to 40
 * @param pressureLeft_frac air pressure as a share of the sea's, 0.5 to 1.1
 * @param salinity_g_L 0 to 40; fresh water 0
 * @returns mg/L
 * @valid 0 to 40 °C; salt of the sea's kind
 * @throws RangeError outside these ranges
 * @source bensonKrause1984 equations as the United States Geological Survey uses them
 * @example oxygenSaturation_mg_L(20, 1, 0) // 9.092426043
 */
export function oxygenSaturation_mg_L(
  water_degC: number,
  pressureLeft_frac: number,
  salinity_g_L: number,
): number {
  const inRange =
    0 <= water_degC &&
    water_degC <= 40 &&
    0.5 <= pressureLeft_frac &&
    pressureLeft_frac <= 1.1 &&
    0 <= salinity_g_L &&
    salinity_g_L <= 40;
  if (!inRange) {
    throw new RangeError(`oxygenSaturation_mg_L(${water_degC}, ${pressureLeft_frac}, ${salinity_g_L})`);
  }
  return atSea_mg_L(water_degC, salinity_g_L) * ofPressure(water_degC, pressureLeft_frac);
}

function atSea_mg_L(water_degC: number, S: number): number {
  const T = water_degC + kelvin;
  const fresh = -139.34411 + 1.575701e5 / T - 6.642308e7 / T ** 2 + 1.2438e10 / T ** 3 - 8.621949e11 / T ** 4;
  return Math.exp(fresh - S * (0.017674 - 10.754 / T + 2140.7 / T ** 2));
}

function ofPressure(water_degC: number, P: number): number {
  const T = water_degC + kelvin;
  const u = Math.exp(11.8571 - 3840.7 / T - 216961 / T ** 2);
  const theta = 0.000975 - 1.426e-5 * water_degC + 6.436e-8 * water_degC ** 2;
  return ((P - u) * (1 - theta * P)) / ((1 - u) * (1 - theta));
}
