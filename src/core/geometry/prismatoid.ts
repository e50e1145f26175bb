/**
 * Volume between two level faces whose area changes as a square of the height or slower.
 *
 * Volume = depth ÷ 6 × (area at the floor + 4 × area halfway + area at the surface).
 *
 * Exact wherever length and width change in a straight line, each at its own rate: rectangle, ellipse and
 * round-ended shape all have an area that is then a quadratic in the height. The frustum rule with the
 * square root of the two areas is exact only where both faces have the same proportions.
 *
 * @param floor_m2 area at the inside floor, m2, 0 or more
 * @param middle_m2 area halfway up the water, m2, 0 or more
 * @param surface_m2 area of the water surface, m2, 0 or more
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns volume, L
 * @valid area that is at most a cubic in the height
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, prismatoid
 * @example prismatoidVolume_L(0.1, 0.2, 0.32, 300) // 61
 */
export function prismatoidVolume_L(
  floor_m2: number,
  middle_m2: number,
  surface_m2: number,
  depth_mm: number,
): number {
  // One comparison for the rule, the names only for the one who broke it: levels ask here thousands of times a plan.
  if (!(0 <= floor_m2 && 0 <= middle_m2 && 0 <= surface_m2 && 0 <= depth_mm)) {
    const given = { floor_m2, middle_m2, surface_m2, depth_mm };
    throw new RangeError(`prismatoidVolume_L: must all be 0 or more: ${JSON.stringify(given)}`);
  }
  return (depth_mm / 6) * (floor_m2 + 4 * middle_m2 + surface_m2);
}
