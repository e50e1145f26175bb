/**
 * The depth at which a volume that rises with depth reaches a wanted one.
 *
 * Always between two depths, one with too little and one with enough below it. The next one is where a curve through
 * the last three points meets the wanted volume, or halfway where such a curve cannot be trusted, and in
 * every fourth round in any case. Some ten tries where
 * halving alone takes sixty, and it cannot miss either: the volume of a container always rises with depth.
 *
 * @param volumeBelow_L volume below a depth, L; rising
 * @param volume_L wanted volume, L, between the volumes at 0 and at `rim_mm`
 * @param rim_mm upper end of the search, mm, above 0
 * @returns depth, mm, to the last digits a number can carry
 * @valid any rising function
 * @throws RangeError where the wanted volume does not lie between the two ends
 * @source chandrupatla1997; weissteinMathematics, bisection procedure
 * @example depthWhere_mm((h) => h ** 2, 2, 10) // 1.414213562
 */
export function depthWhere_mm(
  volumeBelow_L: (depth_mm: number) => number,
  volume_L: number,
  rim_mm: number,
): number {
  const pointAt = (depth_mm: number): Point => ({ depth_mm, over_L: volumeBelow_L(depth_mm) - volume_L });
  let near = pointAt(rim_mm);
  let far = pointAt(0);
  if (!(far.over_L <= 0 && 0 <= near.over_L)) {
    throw new RangeError(`depthWhere_mm: ${volume_L} L is not reached between 0 and ${rim_mm} mm`);
  }
  if (near.over_L === 0) return rim_mm;
  if (far.over_L === 0) return 0;
  let share = 0.5;
  for (let round = 1; ; round++) {
    const depth_mm = between(near, far, round % 4 === 0 ? 0.5 : share);
    if (depth_mm === null) return nearest(near, far).depth_mm;
    const next = pointAt(depth_mm);
    const sameSide = next.over_L > 0 === near.over_L > 0;
    const before = sameSide ? near : far;
    if (!sameSide) far = near;
    near = next;
    const best = nearest(near, far);
    const least = (2 * Number.EPSILON * best.depth_mm) / Math.abs(far.depth_mm - near.depth_mm);
    if (best.over_L === 0 || least >= 0.5) return best.depth_mm;
    share = Math.min(1 - least, Math.max(least, shareTo(near, far, before)));
  }
}

type Point = { readonly depth_mm: number; readonly over_L: number };

function nearest(near: Point, far: Point): Point {
  return Math.abs(near.over_L) < Math.abs(far.over_L) ? near : far;
}

/** A depth inside the span; halfway where rounding leaves it, and null where no number lies between. */
function between(near: Point, far: Point, share: number): number | null {
  const [low, high] = [Math.min(near.depth_mm, far.depth_mm), Math.max(near.depth_mm, far.depth_mm)];
  const wanted = near.depth_mm + share * (far.depth_mm - near.depth_mm);
  if (low < wanted && wanted < high) return wanted;
  const middle = low + (high - low) / 2;
  return low < middle && middle < high ? middle : null;
}

/** How far from `near` to `far` to go next: along a curve through all three, or half the way. */
function shareTo(near: Point, far: Point, before: Point): number {
  const [a, b, c] = [near.over_L, far.over_L, before.over_L];
  const span = far.depth_mm - near.depth_mm;
  const place = (near.depth_mm - far.depth_mm) / (before.depth_mm - far.depth_mm);
  const height = (a - b) / (c - b);
  const trusted = height ** 2 < place && (1 - height) ** 2 < 1 - place;
  if (!trusted) return 0.5;
  const curve = ((before.depth_mm - near.depth_mm) / span) * (a / (c - a)) * (b / (c - b));
  return (a / (b - a)) * (c / (b - c)) + curve;
}
