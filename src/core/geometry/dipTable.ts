/** One line of a dip table: so much water was poured in, and it stood so deep. */
export type Dip = { readonly depth_mm: number; readonly volume_L: number };

/**
 * Water in a container of any form, from known litres poured in and the depth noted after each.
 *
 * Volume = lower volume + (upper volume − lower volume) × (depth − lower depth) ÷ (upper depth − lower depth).
 *
 * @param dips lines of the table, depth and volume both rising from line to line; empty at depth 0
 * @param depth_mm water over the inside floor, mm, 0 to the last dip
 * @returns volume, L
 * @valid between the dips; the finer the dips where the wall bends, the closer
 * @throws RangeError where the table does not rise or does not reach
 * @source epanetManual, volume curve
 * @example dipTableVolume_L([{ depth_mm: 100, volume_L: 20 }, { depth_mm: 200, volume_L: 50 }], 150) // 35
 */
export function dipTableVolume_L(dips: readonly Dip[], depth_mm: number): number {
  const { lower, upper } = dipsAround(dips, 'depth_mm', depth_mm);
  return lower.volume_L + dipSlope_m2(lower, upper) * (depth_mm - lower.depth_mm);
}

/**
 * How deep a volume stands in a container with a dip table.
 *
 * Depth = lower depth + (upper depth − lower depth) × (volume − lower volume) ÷ (upper volume − lower volume).
 *
 * @param dips lines of the table, depth and volume both rising from line to line; empty at depth 0
 * @param volume_L volume, L, 0 to the last dip
 * @returns water over the inside floor, mm
 * @valid between the dips
 * @throws RangeError where the table does not rise or does not reach
 * @source epanetManual, volume curve
 * @example dipTableDepth_mm([{ depth_mm: 100, volume_L: 20 }, { depth_mm: 200, volume_L: 50 }], 35) // 150
 */
export function dipTableDepth_mm(dips: readonly Dip[], volume_L: number): number {
  const { lower, upper } = dipsAround(dips, 'volume_L', volume_L);
  return lower.depth_mm + (volume_L - lower.volume_L) / dipSlope_m2(lower, upper);
}

/**
 * Mean plan area between the two dips around a depth.
 *
 * Area = (upper volume − lower volume) ÷ (upper depth − lower depth).
 *
 * @param dips lines of the table, depth and volume both rising from line to line; empty at depth 0
 * @param depth_mm water over the inside floor, mm, 0 to the last dip; at a dip, the area just below it
 * @returns area, m2
 * @valid between the dips
 * @throws RangeError where the table does not rise or does not reach
 * @source epanetManual, volume curve
 * @example dipTableArea_m2([{ depth_mm: 100, volume_L: 20 }, { depth_mm: 200, volume_L: 50 }], 150) // 0.3
 */
export function dipTableArea_m2(dips: readonly Dip[], depth_mm: number): number {
  const { lower, upper } = dipsAround(dips, 'depth_mm', depth_mm);
  return dipSlope_m2(lower, upper);
}

/** Litres per millimetre are square metres. */
function dipSlope_m2(lower: Dip, upper: Dip): number {
  return (upper.volume_L - lower.volume_L) / (upper.depth_mm - lower.depth_mm);
}

/** The two neighbouring dips: `lower` lies under the value (or both start at nothing), `upper` at or over it. */
export function dipsAround(
  dips: readonly Dip[],
  measure: 'depth_mm' | 'volume_L',
  value: number,
): { readonly lower: Dip; readonly upper: Dip } {
  if (!(0 <= value)) throw new RangeError(`dip table: ${measure} is ${value}, must be 0 or more`);
  let lower: Dip = { depth_mm: 0, volume_L: 0 };
  for (const upper of dips) {
    if (upper.depth_mm === 0 && upper.volume_L === 0) continue;
    if (!(lower.depth_mm < upper.depth_mm && lower.volume_L < upper.volume_L)) {
      throw new RangeError(`dip table: does not rise at ${upper.depth_mm} mm, ${upper.volume_L} L`);
    }
    if (value <= upper[measure]) return { lower, upper };
    lower = upper;
  }
  throw new RangeError(`dip table: ends at ${lower[measure]}, asked for ${measure} ${value}`);
}
