/**
 * Inside measure of a sloping container at a height: its length, width or diameter there.
 *
 * Measure = floor measure + (top measure − floor measure) × depth ÷ inside depth.
 *
 * @param floor_mm the measure at the inside floor, mm, 0 or more
 * @param top_mm the same measure at the rim, mm, 0 or more
 * @param rim_mm inside floor to rim, mm, above 0
 * @param depth_mm height over the inside floor, mm, 0 to `rim_mm`
 * @returns the measure at that height, mm
 * @valid walls that are straight from floor to rim; wider or narrower at the top
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, conical frustum
 * @example measureAt_mm(400, 600, 500, 250) // 500
 */
export function measureAt_mm(floor_mm: number, top_mm: number, rim_mm: number, depth_mm: number): number {
  if (!(0 <= floor_mm)) throw new RangeError(`measureAt_mm: floor_mm is ${floor_mm}, must be 0 or more`);
  if (!(0 <= top_mm)) throw new RangeError(`measureAt_mm: top_mm is ${top_mm}, must be 0 or more`);
  if (!(0 < rim_mm)) throw new RangeError(`measureAt_mm: rim_mm is ${rim_mm}, must be above 0`);
  if (!(0 <= depth_mm && depth_mm <= rim_mm)) {
    throw new RangeError(`measureAt_mm: depth_mm is ${depth_mm}, must be 0 to ${rim_mm}`);
  }
  // Weighed from both ends, so that rounding never turns a longer side into the shorter one.
  const share = depth_mm / rim_mm;
  return floor_mm * (1 - share) + top_mm * share;
}
