/** Solids that the fish leave, and the still water that lets them sink. */

/**
 * Solids of a day.
 *
 * Solids = feed × solids a gram of feed.
 *
 * @param feed_g_d feed, g a day, 0 or more
 * @param solids_frac dry solids for a gram of feed, 0 to 1
 * @returns dry solids, g a day
 * @valid well-fed fish that leave no feed; feed that is not eaten is added whole
 * @throws RangeError where an argument is out of its range
 * @source wasSolidsAbstract
 * @example solids_g_d(100, 0.35) // 35
 */
export function solids_g_d(feed_g_d: number, solids_frac: number): number {
  if (!(0 <= feed_g_d && 0 <= solids_frac && solids_frac <= 1)) {
    throw new RangeError(`solids_g_d(${feed_g_d} g/d, ${solids_frac})`);
  }
  return feed_g_d * solids_frac;
}

/**
 * Water surface of a settler for a flow.
 *
 * Area = flow ÷ overflow rate: what sinks faster than the water rises stays below.
 *
 * @param flow_L_h flow, L/h, 0 or more
 * @param overflow_m_s overflow rate, m/s, above 0
 * @returns plan area, m2
 * @valid calm flow; a stream that shoots through needs more
 * @throws RangeError where an argument is out of its range
 * @source davidsonSummerfelt2005
 * @example settlerArea_m2(11160, 0.0031) // 1
 */
export function settlerArea_m2(flow_L_h: number, overflow_m_s: number): number {
  if (!(0 <= flow_L_h && 0 < overflow_m_s)) {
    throw new RangeError(`settlerArea_m2(${flow_L_h} L/h, ${overflow_m_s} m/s)`);
  }
  return flow_L_h / 3.6e6 / overflow_m_s;
}
