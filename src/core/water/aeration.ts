/** What brings oxygen in: bubbles from a stone, and water that falls back. */
import { oxygenOfAir_g_L } from './waterConstants.ts';

/** Saturation of clean water at 20 °C and the sea's pressure, by which air stones are rated. */
const rated_mg_L = 9.09;
/** A millimetre in feet. */
const foot_mm = 304.8;

/**
 * Oxygen that an air stone brings into clean, oxygen-free water at 20 °C.
 * Air × oxygen in a litre of it × share that dissolves on a metre × depth.
 * @param air_L_min air through all stones, 0 or more
 * @param depth_mm water over the stones, 0 or more
 * @param shareOfMetre_frac share that dissolves on a metre of way, 0 to 0.15
 * @param pressureLeft_frac air pressure as a share of the sea's, 0.5 to 1.1
 * @returns g/h
 * @valid depths up to some 2 m, where the share grows with the depth
 * @throws RangeError outside these ranges
 * @source fromMemory oxygen of air; efficiencies of makers and trade articles
 * @example standardTransfer_g_h(10, 600, 0.066, 1) // 6.621912
 */
export function standardTransfer_g_h(
  air_L_min: number,
  depth_mm: number,
  shareOfMetre_frac: number,
  pressureLeft_frac: number,
): number {
  const inRange =
    0 <= air_L_min &&
    0 <= depth_mm &&
    0 <= shareOfMetre_frac &&
    shareOfMetre_frac <= 0.15 &&
    0.5 <= pressureLeft_frac &&
    pressureLeft_frac <= 1.1;
  if (!inRange) throw new RangeError(`standardTransfer_g_h(${air_L_min}, ${depth_mm}, ${shareOfMetre_frac})`);
  const share = Math.min(1, (shareOfMetre_frac * depth_mm) / 1000);
  return air_L_min * 60 * oxygenOfAir_g_L.value * pressureLeft_frac * share;
}

/**
 * Oxygen that an aerator brings into the water as it is.
 * Rated transfer × alpha × (beta × saturation − oxygen) ÷ 9.09 × 1.024^(temperature − 20).
 * @param standard_g_h what it brings into clean, oxygen-free water at 20 °C, 0 or more
 * @param alpha how much slower it goes in this water, above 0 to 1.2
 * @param beta how much less oxygen this water holds, above 0 to 1
 * @param saturation_mg_L saturation of clean water at this temperature and height
 * @param oxygen_mg_L oxygen that the water has
 * @param water_degC 0 to 40
 * @returns g/h, below zero where the water gives oxygen away
 * @valid bubbles and surface aerators
 * @throws RangeError outside these ranges
 * @source asceAeration field correction, as quoted
 * @example fieldTransfer_g_h(100, 0.5, 0.95, 9.09, 2, 20) // 36.49889988
 */
export function fieldTransfer_g_h(
  standard_g_h: number,
  alpha: number,
  beta: number,
  saturation_mg_L: number,
  oxygen_mg_L: number,
  water_degC: number,
): number {
  const inRange = 0 <= standard_g_h && 0 < alpha && alpha <= 1.2 && 0 < beta && beta <= 1;
  if (!(inRange && 0 <= water_degC && water_degC <= 40)) {
    throw new RangeError(`fieldTransfer_g_h(${standard_g_h}, ${alpha}, ${beta}, ${water_degC})`);
  }
  const drive = (beta * saturation_mg_L - oxygen_mg_L) / rated_mg_L;
  return standard_g_h * alpha * drive * 1.024 ** (water_degC - 20);
}

/**
 * Height of a fall that lifts water from one oxygen to another.
 * ((saturation − before) ÷ (saturation − after) − 1) ÷ (0.11 × a × b × (1 + 0.046 × temperature)), in feet.
 * @param saturation_mg_L above what comes out
 * @param before_mg_L oxygen of the water that goes in
 * @param after_mg_L oxygen of the water that comes out, not below what goes in
 * @param a quality of the water: 0.8 treated waste water, up to 1.8 clean
 * @param b shape of the fall: 1 a weir, 1.1 steps, 1.3 a step weir
 * @param water_degC 0 to 40
 * @returns mm
 * @valid a free fall through air in drops or a thin sheet; the formula is in feet, though some print it in metres
 * @throws RangeError where saturation is not above both
 * @source metcalfEddyCascade the formula of its cascade, as quoted
 * @example fallHeight_mm(9.08, 1, 6, 0.8, 1.1, 20) // 2662.304121
 */
export function fallHeight_mm(
  saturation_mg_L: number,
  before_mg_L: number,
  after_mg_L: number,
  a: number,
  b: number,
  water_degC: number,
): number {
  if (!(before_mg_L <= after_mg_L && after_mg_L < saturation_mg_L)) {
    throw new RangeError(`fallHeight_mm(${saturation_mg_L}, ${before_mg_L}, ${after_mg_L})`);
  }
  const ratio = (saturation_mg_L - before_mg_L) / (saturation_mg_L - after_mg_L);
  return ((ratio - 1) / perFoot(a, b, water_degC)) * foot_mm;
}

/**
 * Oxygen of water after a fall.
 * Saturation − (saturation − before) ÷ (1 + 0.11 × a × b × (1 + 0.046 × temperature) × height in feet).
 * @param saturation_mg_L saturation at this temperature and height above the sea
 * @param before_mg_L oxygen of the water that goes in
 * @param fall_mm height of the fall through air, 0 or more
 * @param a quality of the water, above 0
 * @param b shape of the fall, above 0
 * @param water_degC 0 to 40
 * @returns mg/L
 * @valid as fallHeight_mm
 * @throws RangeError below zero
 * @source metcalfEddyCascade solved for the oxygen that comes out
 * @example oxygenAfterFall_mg_L(9, 5, 0, 0.8, 1, 20) // 5
 */
export function oxygenAfterFall_mg_L(
  saturation_mg_L: number,
  before_mg_L: number,
  fall_mm: number,
  a: number,
  b: number,
  water_degC: number,
): number {
  if (!(0 <= fall_mm)) throw new RangeError(`oxygenAfterFall_mg_L(${fall_mm} mm)`);
  const ratio = 1 + perFoot(a, b, water_degC) * (fall_mm / foot_mm);
  return saturation_mg_L - (saturation_mg_L - before_mg_L) / ratio;
}

function perFoot(a: number, b: number, water_degC: number): number {
  if (!(0 < a && 0 < b && 0 <= water_degC && water_degC <= 40)) {
    throw new RangeError(`a fall with a ${a}, b ${b} at ${water_degC} °C`);
  }
  return 0.11 * a * b * (1 + 0.046 * water_degC);
}
