import { boxArea_m2 } from './box.ts';
import { prismatoidVolume_L } from './prismatoid.ts';

/**
 * Water in a box with sloping walls; length and width may slope differently.
 *
 * Volume = depth ÷ 6 × (area at the floor + 4 × area halfway + area at the surface).
 *
 * @param floorLength_mm inside length at the floor, mm, 0 or more
 * @param floorWidth_mm inside width at the floor, mm, 0 or more
 * @param surfaceLength_mm inside length at the water surface, mm, 0 or more
 * @param surfaceWidth_mm inside width at the water surface, mm, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid straight walls, square corners, level floor
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, prismatoid
 * @example taperedBoxVolume_L(500, 300, 700, 400, 600) // 127
 */
export function taperedBoxVolume_L(
  floorLength_mm: number,
  floorWidth_mm: number,
  surfaceLength_mm: number,
  surfaceWidth_mm: number,
  depth_mm: number,
): number {
  return prismatoidVolume_L(
    boxArea_m2(floorLength_mm, floorWidth_mm),
    boxArea_m2((floorLength_mm + surfaceLength_mm) / 2, (floorWidth_mm + surfaceWidth_mm) / 2),
    boxArea_m2(surfaceLength_mm, surfaceWidth_mm),
    depth_mm,
  );
}
