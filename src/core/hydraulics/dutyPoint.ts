/** Where a pump and its pipe agree. */
import { mostFlow_L_h, type PumpCurve, pumpHead_m } from './pumpCurve.ts';

/**
 * Flow at which a pump's head is what the lift and the pipe ask for.
 *
 * Halve the span between no flow and the end of the curve until no number lies between: the pump's head falls with
 * flow and what is asked for rises, so there is one crossing and halving cannot miss it. That is why no root finder
 * is borrowed: any faster one would need a fall-back to this.
 *
 * @param curve the pump's curve
 * @param asked_m head that lift, pipe and fittings ask for at a flow, m; rising
 * @returns flow, L/h; null where the pump cannot even reach the lift; the end of the curve where it is never reached
 * @valid one pump, one pipe
 * @throws RangeError as pumpHead_m
 * @source epanetManual, chapter 3, pump curves
 * @example dutyFlow_L_h([{ flow_L_h: 1000, head_m: 1.5 }], () => 1.5) // 1000
 * @example dutyFlow_L_h([{ flow_L_h: 1000, head_m: 1.5 }], () => 2.1) // null
 */
export function dutyFlow_L_h(curve: PumpCurve, asked_m: (flow_L_h: number) => number): number | null {
  const spare_m = (flow_L_h: number): number => pumpHead_m(curve, flow_L_h) - asked_m(flow_L_h);
  if (spare_m(0) <= 0) return null;
  let low = 0;
  let high = mostFlow_L_h(curve);
  if (spare_m(high) >= 0) return high;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || high <= middle) return low;
    if (spare_m(middle) > 0) low = middle;
    else high = middle;
  }
}
