import { measureAt_mm } from './taper.ts';

/**
 * Water in a round tub or bucket with a sloping wall.
 *
 * Volume = π × depth ÷ 12 × (floor diameter² + floor diameter × surface diameter + surface diameter²).
 *
 * @param floorDiameter_mm inside diameter at the floor, mm, 0 or more
 * @param surfaceDiameter_mm inside diameter at the water surface, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid straight wall, flat floor
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, conical frustum
 * @example taperedRoundVolume_L(240, 440, 350) // 32.69350088
 */
export function taperedRoundVolume_L(
  floorDiameter_mm: number,
  surfaceDiameter_mm: number,
  depth_mm: number,
): number {
  for (const [name, value] of Object.entries({ floorDiameter_mm, surfaceDiameter_mm, depth_mm })) {
    if (!(0 <= value)) throw new RangeError(`taperedRoundVolume_L: ${name} is ${value}, must be 0 or more`);
  }
  const d0 = floorDiameter_mm;
  const d = surfaceDiameter_mm;
  return ((Math.PI * depth_mm) / 12) * ((d0 ** 2 + d0 * d + d ** 2) / 1e6);
}

/**
 * How deep a volume stands in a round tub with a sloping wall.
 *
 * Surface diameter³ = floor diameter³ + 12 × slope × volume ÷ π, with slope = (top − floor) ÷ inside depth;
 * then depth = 12 × volume ÷ (π × (floor diameter² + floor diameter × surface diameter + surface diameter²)).
 *
 * @param floorDiameter_mm inside diameter at the floor, mm, 0 or more
 * @param topDiameter_mm inside diameter at the rim, mm, 0 or more
 * @param rim_mm inside floor to rim, mm, above 0
 * @param volume_L volume, L, above 0 and no more than the tub holds
 * @returns water over the inside floor, mm
 * @valid straight wall, flat floor; the second line keeps it exact for a slope of nothing
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, conical frustum solved for its height
 * @example taperedRoundDepth_mm(240, 440, 350, 32.693500876512) // 350
 */
export function taperedRoundDepth_mm(
  floorDiameter_mm: number,
  topDiameter_mm: number,
  rim_mm: number,
  volume_L: number,
): number {
  if (!(0 < volume_L)) throw new RangeError(`taperedRoundDepth_mm: volume_L is ${volume_L}, must be above 0`);
  const d0 = floorDiameter_mm;
  const slope = (measureAt_mm(d0, topDiameter_mm, rim_mm, rim_mm) - d0) / rim_mm;
  const twelveV_mm3 = 12 * volume_L * 1e6;
  // A tub closing to a point leaves a remainder of rounding just below nothing when it is full.
  const d = Math.cbrt(Math.max(0, d0 ** 3 + (slope * twelveV_mm3) / Math.PI));
  return twelveV_mm3 / (Math.PI * (d0 ** 2 + d0 * d + d ** 2));
}
