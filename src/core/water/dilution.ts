/** What a water change leaves of a substance. */

/**
 * What is left of a substance after equal changes, each mixed before the next.
 * Incoming + (before − incoming) × (1 − share)^times.
 * @param before_mg_L in the tank, 0 or more
 * @param incoming_mg_L in the new water, 0 or more
 * @param share_frac share of the water exchanged each time, 0 to 1
 * @param times how often, 0 or more; 1 for a single change
 * @returns mg/L
 * @valid well mixed, and nothing comes or goes besides
 * @throws RangeError outside these ranges
 * @source geometry
 * @example afterChanges_mg_L(100, 0, 0.25, 2) // 56.25
 */
export function afterChanges_mg_L(
  before_mg_L: number,
  incoming_mg_L: number,
  share_frac: number,
  times: number,
): number {
  if (!(0 <= before_mg_L && 0 <= incoming_mg_L && 0 <= share_frac && share_frac <= 1 && 0 <= times)) {
    throw new RangeError(`afterChanges_mg_L(${before_mg_L}, ${incoming_mg_L}, ${share_frac}, ${times})`);
  }
  return incoming_mg_L + (before_mg_L - incoming_mg_L) * (1 - share_frac) ** times;
}

/**
 * Share that one change must take to bring a substance down to a wanted level.
 * (Before − wanted) ÷ (before − incoming).
 * @param before_mg_L in the tank
 * @param incoming_mg_L in the new water, below what is wanted
 * @param wanted_mg_L not above what is in the tank
 * @returns share, 0 to 1
 * @valid as afterChanges_mg_L; whether pH and fish bear it is another question
 * @throws RangeError where the new water cannot bring it there
 * @source geometry
 * @example changeFor_frac(100, 20, 80) // 0.25
 */
export function changeFor_frac(before_mg_L: number, incoming_mg_L: number, wanted_mg_L: number): number {
  if (!(0 <= incoming_mg_L && incoming_mg_L < wanted_mg_L && wanted_mg_L <= before_mg_L)) {
    throw new RangeError(`changeFor_frac(${before_mg_L}, ${incoming_mg_L}, ${wanted_mg_L})`);
  }
  return (before_mg_L - wanted_mg_L) / (before_mg_L - incoming_mg_L);
}
