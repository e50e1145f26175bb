import { prismatoidVolume_L } from './prismatoid.ts';

/**
 * Water in an elliptical tub, straight or tapered; length and width may slope differently.
 *
 * Volume = depth ÷ 6 × (area at the floor + 4 × area halfway + area at the surface).
 *
 * @param floorLength_mm inside length at the floor, mm, 0 or more
 * @param floorWidth_mm inside width at the floor, mm, 0 or more
 * @param surfaceLength_mm inside length at the water surface, mm, 0 or more
 * @param surfaceWidth_mm inside width at the water surface, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid straight walls, level floor, the two axes in line
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, ellipse and prismatoid
 * @example ellipseVolume_L(1000, 1000, 1000, 1000, 1000) // 785.3981634
 * @example ellipseVolume_L(800, 400, 1000, 600, 500) // 178.0235837
 */
export function ellipseVolume_L(
  floorLength_mm: number,
  floorWidth_mm: number,
  surfaceLength_mm: number,
  surfaceWidth_mm: number,
  depth_mm: number,
): number {
  return prismatoidVolume_L(
    ellipseArea_m2(floorLength_mm, floorWidth_mm),
    ellipseArea_m2((floorLength_mm + surfaceLength_mm) / 2, (floorWidth_mm + surfaceWidth_mm) / 2),
    ellipseArea_m2(surfaceLength_mm, surfaceWidth_mm),
    depth_mm,
  );
}

/**
 * Plan area of an ellipse of water.
 *
 * Area = π ÷ 4 × length × width.
 *
 * @param length_mm longest inside measure, mm, 0 or more
 * @param width_mm inside measure square to it, mm, 0 or more
 * @returns area, m2
 * @valid a true ellipse; most steel stock tanks are obround instead
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, ellipse
 * @example ellipseArea_m2(1000, 600) // 0.4712388980
 */
export function ellipseArea_m2(length_mm: number, width_mm: number): number {
  if (!(0 <= length_mm)) throw new RangeError(`ellipseArea_m2: length_mm is ${length_mm}, must be 0 or more`);
  if (!(0 <= width_mm)) throw new RangeError(`ellipseArea_m2: width_mm is ${width_mm}, must be 0 or more`);
  return ((Math.PI / 4) * length_mm * width_mm) / 1e6;
}
