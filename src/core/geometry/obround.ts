import { prismatoidVolume_L } from './prismatoid.ts';

/**
 * Water in an obround tub (straight sides, half-round ends), straight or tapered.
 *
 * Volume = depth ÷ 6 × (area at the floor + 4 × area halfway + area at the surface).
 *
 * Exact, not an approximation: where length l and width w each run in a straight line, the area
 * l × w − (1 − π ÷ 4) × w² is a quadratic in the height, and this rule integrates quadratics exactly.
 *
 * @param floorLength_mm inside length over the round ends at the floor, mm, `floorWidth_mm` or more
 * @param floorWidth_mm inside width at the floor, mm, 0 or more
 * @param surfaceLength_mm inside length over the round ends at the water, mm, `surfaceWidth_mm` or more
 * @param surfaceWidth_mm inside width at the water surface, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid straight walls, level floor, ends half-round at every height
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, stadium and prismatoid
 * @example obroundVolume_L(1000, 1000, 1000, 1000, 1000) // 785.3981634
 * @example obroundVolume_L(900, 500, 1000, 600, 500) // 229.1187214
 */
export function obroundVolume_L(
  floorLength_mm: number,
  floorWidth_mm: number,
  surfaceLength_mm: number,
  surfaceWidth_mm: number,
  depth_mm: number,
): number {
  return prismatoidVolume_L(
    obroundArea_m2(floorLength_mm, floorWidth_mm),
    obroundArea_m2((floorLength_mm + surfaceLength_mm) / 2, (floorWidth_mm + surfaceWidth_mm) / 2),
    obroundArea_m2(surfaceLength_mm, surfaceWidth_mm),
    depth_mm,
  );
}

/**
 * Plan area of an obround: a rectangle with a half circle at each end.
 *
 * Area = (length − width) × width + π ÷ 4 × width².
 *
 * @param length_mm inside length over the round ends, mm, `width_mm` or more
 * @param width_mm inside width between the straight sides, mm, 0 or more
 * @returns area, m2
 * @valid ends that are true half circles
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, stadium
 * @example obroundArea_m2(1000, 600) // 0.5227433388
 */
export function obroundArea_m2(length_mm: number, width_mm: number): number {
  if (!(0 <= width_mm)) throw new RangeError(`obroundArea_m2: width_mm is ${width_mm}, must be 0 or more`);
  if (!(width_mm <= length_mm)) {
    throw new RangeError(`obroundArea_m2: length_mm is ${length_mm}, must be ${width_mm} or more`);
  }
  return ((length_mm - width_mm) * width_mm + (Math.PI / 4) * width_mm ** 2) / 1e6;
}
