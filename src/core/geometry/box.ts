/**
 * Water in a box with upright walls.
 *
 * Volume = length × width × depth.
 *
 * @param length_mm inside length, mm, 0 or more
 * @param width_mm inside width, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid four upright walls and square corners
 * @throws RangeError where a measure is out of its range
 * @source msdTankVolumes, rectangular tank
 * @example boxVolume_L(1000, 800, 300) // 240
 */
export function boxVolume_L(length_mm: number, width_mm: number, depth_mm: number): number {
  if (!(0 <= depth_mm)) throw new RangeError(`boxVolume_L: depth_mm is ${depth_mm}, must be 0 or more`);
  // A square metre one millimetre deep is a litre.
  return boxArea_m2(length_mm, width_mm) * depth_mm;
}

/**
 * Plan area of a rectangle of water.
 *
 * Area = length × width.
 *
 * @param length_mm inside length, mm, 0 or more
 * @param width_mm inside width, mm, 0 or more
 * @returns area, m2
 * @valid square corners
 * @throws RangeError where a measure is out of its range
 * @source msdTankVolumes, rectangular tank
 * @example boxArea_m2(1000, 800) // 0.8
 */
export function boxArea_m2(length_mm: number, width_mm: number): number {
  if (!(0 <= length_mm)) throw new RangeError(`boxArea_m2: length_mm is ${length_mm}, must be 0 or more`);
  if (!(0 <= width_mm)) throw new RangeError(`boxArea_m2: width_mm is ${width_mm}, must be 0 or more`);
  return (length_mm * width_mm) / 1e6;
}
