/**
 * Water in a cylinder that lies on its side: a drum cut along its length is one.
 *
 * Volume = length × (R² × acos((R − depth) ÷ R) − (R − depth) × √(2 × R × depth − depth²)), R the radius.
 *
 * @param diameter_mm inside diameter of the whole cylinder, mm, above 0
 * @param length_mm inside length between the flat ends, mm, 0 or more
 * @param depth_mm water over the lowest line of the wall, mm, 0 to `diameter_mm`
 * @returns volume, L
 * @valid level axis, flat ends; depth less or more than the radius
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, circular segment
 * @example lyingCylinderVolume_L(1500, 5000, 750) // 4417.864669
 */
export function lyingCylinderVolume_L(diameter_mm: number, length_mm: number, depth_mm: number): number {
  if (!(0 <= length_mm)) {
    throw new RangeError(`lyingCylinderVolume_L: length_mm is ${length_mm}, must be 0 or more`);
  }
  const R = diameter_mm / 2;
  const halfChord_mm = chord_mm(diameter_mm, depth_mm) / 2;
  // The same angle as acos((R − depth) ÷ R), which loses its digits where the water is shallow.
  const angle = Math.atan2(halfChord_mm, R - depth_mm);
  const segment_mm2 = R ** 2 * angle - (R - depth_mm) * halfChord_mm;
  return (length_mm * segment_mm2) / 1e6;
}

/**
 * Plan area of the water in a cylinder that lies on its side.
 *
 * Area = length × chord.
 *
 * @param diameter_mm inside diameter of the whole cylinder, mm, above 0
 * @param length_mm inside length between the flat ends, mm, 0 or more
 * @param depth_mm water over the lowest line of the wall, mm, 0 to `diameter_mm`
 * @returns area, m2
 * @valid level axis, flat ends
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, circular segment
 * @example lyingCylinderArea_m2(1500, 5000, 750) // 7.5
 */
export function lyingCylinderArea_m2(diameter_mm: number, length_mm: number, depth_mm: number): number {
  if (!(0 <= length_mm)) {
    throw new RangeError(`lyingCylinderArea_m2: length_mm is ${length_mm}, must be 0 or more`);
  }
  return (length_mm * chord_mm(diameter_mm, depth_mm)) / 1e6;
}

/**
 * Width of a lying cylinder at a height: the chord of its circle.
 *
 * Chord = 2 × √(2 × R × depth − depth²), R the radius.
 *
 * @param diameter_mm inside diameter, mm, above 0
 * @param depth_mm height over the lowest point, mm, 0 to `diameter_mm`
 * @returns width, mm
 * @valid any circle
 * @throws RangeError where a measure is out of its range
 * @source weissteinMathematics, circular segment
 * @example chord_mm(1000, 200) // 800
 */
export function chord_mm(diameter_mm: number, depth_mm: number): number {
  if (!(0 < diameter_mm)) throw new RangeError(`chord_mm: diameter_mm is ${diameter_mm}, must be above 0`);
  if (!(0 <= depth_mm && depth_mm <= diameter_mm)) {
    throw new RangeError(`chord_mm: depth_mm is ${depth_mm}, must be 0 to ${diameter_mm}`);
  }
  return 2 * Math.sqrt(depth_mm * (diameter_mm - depth_mm));
}
