/**
 * Water in an upright cylinder.
 *
 * Volume = π × diameter² ÷ 4 × depth.
 *
 * @param diameter_mm inside diameter, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid upright wall, flat floor
 * @throws RangeError where a measure is out of its range
 * @source msdTankVolumes, cylindrical tank
 * @example cylinderVolume_L(1000, 1000) // 785.3981634
 */
export function cylinderVolume_L(diameter_mm: number, depth_mm: number): number {
  if (!(0 <= depth_mm)) throw new RangeError(`cylinderVolume_L: depth_mm is ${depth_mm}, must be 0 or more`);
  // A square metre one millimetre deep is a litre.
  return circleArea_m2(diameter_mm) * depth_mm;
}

/**
 * Plan area of a circle of water.
 *
 * Area = π × diameter² ÷ 4.
 *
 * @param diameter_mm inside diameter, mm, 0 or more
 * @returns area, m2
 * @valid any circle
 * @throws RangeError where the diameter is out of its range
 * @source msdTankVolumes, cylindrical tank
 * @example circleArea_m2(1000) // 0.7853981634
 */
export function circleArea_m2(diameter_mm: number): number {
  if (!(0 <= diameter_mm)) {
    throw new RangeError(`circleArea_m2: diameter_mm is ${diameter_mm}, must be 0 or more`);
  }
  return (Math.PI * diameter_mm ** 2) / 4 / 1e6;
}
