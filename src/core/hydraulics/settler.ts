/** Still water that lets solids sink. */

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
