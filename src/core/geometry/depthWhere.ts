/**
 * The depth at which a volume that rises with depth reaches a wanted one, by halving.
 *
 * Halve the span that holds the depth until no number lies between its two ends; about sixty halvings. Slower
 * than a method with slopes, and it cannot miss: the volume of a container always rises with depth.
 *
 * @param volumeBelow_L volume below a depth, L; rising
 * @param volume_L wanted volume, L, between the volumes at 0 and at `rim_mm`
 * @param rim_mm upper end of the search, mm, above 0
 * @returns depth, mm, to the last digit a number can carry
 * @valid any rising function
 * @throws RangeError where the wanted volume does not lie between the two ends
 * @source weissteinMathematics, bisection procedure
 * @example depthWhere_mm((h) => h ** 2, 2, 10) // 1.414213562
 */
export function depthWhere_mm(
  volumeBelow_L: (depth_mm: number) => number,
  volume_L: number,
  rim_mm: number,
): number {
  let low = 0;
  let high = rim_mm;
  if (!(volumeBelow_L(low) <= volume_L && volume_L <= volumeBelow_L(high))) {
    throw new RangeError(`depthWhere_mm: ${volume_L} L is not reached between 0 and ${rim_mm} mm`);
  }
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || high <= middle) return high;
    if (volumeBelow_L(middle) < volume_L) low = middle;
    else high = middle;
  }
}
