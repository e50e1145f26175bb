/** How high a pump pushes at a flow, from one point of its curve or from several. */

/** One point of a pump's curve: so much flow at such a height. */
export type PumpPoint = { readonly flow_L_h: number; readonly head_m: number };

/** Points in the order of their flow, heads falling from point to point. */
export type PumpCurve = readonly PumpPoint[];

/** Head = A − B × flow^C, from where nothing flows to where nothing is lifted. */
type PowerCurve = { readonly A: number; readonly B: number; readonly C: number };

/**
 * Head of a pump at a flow.
 *
 * One point (Q, H): 4 ÷ 3 × H − H ÷ 3 × (flow ÷ Q)². Three points that begin without flow: A − B × flow^C through all
 * three. Any other number: straight lines from point to point, and the first head before the first point.
 *
 * @param curve points by rising flow, L/h, with falling heads, m; one or more
 * @param flow_L_h flow, L/h, 0 to `mostFlow_L_h`
 * @returns head, m of water
 * @valid clean water and a clean pump; a curve from a single point may be off by a third at either end
 * @throws RangeError for no point, or a flow beyond the end of the curve
 * @source epanetManual, chapter 3, pump curves
 * @example pumpHead_m([{ flow_L_h: 1000, head_m: 1.5 }], 0) // 2
 * @example pumpHead_m([{ flow_L_h: 0, head_m: 2 }, { flow_L_h: 1000, head_m: 1 }], 500) // 1.5
 */
export function pumpHead_m(curve: PumpCurve, flow_L_h: number): number {
  const most = mostFlow_L_h(curve);
  if (!(0 <= flow_L_h && flow_L_h <= most)) {
    throw new RangeError(`pumpHead_m: flow_L_h is ${flow_L_h}, must be 0 to ${most}`);
  }
  const power = powerCurve(curve);
  return power ? power.A - power.B * flow_L_h ** power.C : onLines_m(curve, flow_L_h);
}

/**
 * Most flow that a pump's curve speaks of.
 *
 * Where a curve through one or three points comes down to no head, (A ÷ B)^(1 ÷ C); else the flow of the last point.
 *
 * @param curve points by rising flow, L/h, with falling heads, m; one or more
 * @returns flow, L/h
 * @valid as pumpHead_m
 * @throws RangeError for no point
 * @source epanetManual, chapter 3, pump curves
 * @example mostFlow_L_h([{ flow_L_h: 1000, head_m: 1.5 }]) // 2000
 */
export function mostFlow_L_h(curve: PumpCurve): number {
  const last = curve.at(-1);
  if (last === undefined) throw new RangeError('mostFlow_L_h: a curve without points');
  const power = powerCurve(curve);
  return power ? (power.A / power.B) ** (1 / power.C) : last.flow_L_h;
}

/** Null where straight lines have to do: the points bend so that no power of the flow goes through them. */
function powerCurve(curve: PumpCurve): PowerCurve | null {
  const [first, second, third] = curve;
  if (first === undefined) return null;
  if (curve.length === 1) {
    return { A: (4 / 3) * first.head_m, B: first.head_m / 3 / first.flow_L_h ** 2, C: 2 };
  }
  if (curve.length !== 3 || second === undefined || third === undefined || first.flow_L_h !== 0) return null;
  const fall2 = first.head_m - second.head_m;
  const fall3 = first.head_m - third.head_m;
  if (!(0 < fall2 && fall2 < fall3 && 0 < second.flow_L_h && second.flow_L_h < third.flow_L_h)) return null;
  const C = Math.log(fall3 / fall2) / Math.log(third.flow_L_h / second.flow_L_h);
  return leastPower <= C && C <= mostPower ? { A: first.head_m, B: fall2 / second.flow_L_h ** C, C } : null;
}

/** A steeper power is no pump, but two points typed too close together. */
const mostPower = 20;

/** A smaller power falls upright from the greatest height, which no pump does, and leaves no flow to find there. */
const leastPower = 0.1;

function onLines_m(curve: PumpCurve, flow_L_h: number): number {
  let before = curve[0];
  if (before === undefined || flow_L_h <= before.flow_L_h) return before?.head_m ?? 0;
  for (const point of curve) {
    if (flow_L_h <= point.flow_L_h && before.flow_L_h < point.flow_L_h) {
      const share = (flow_L_h - before.flow_L_h) / (point.flow_L_h - before.flow_L_h);
      return before.head_m + share * (point.head_m - before.head_m);
    }
    before = point;
  }
  return before.head_m;
}
