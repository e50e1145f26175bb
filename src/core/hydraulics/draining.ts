import { orificeFlow_L_h } from './orifice.ts';

/**
 * Time in which a vessel with upright walls drains through a hole in its floor, while water runs in.
 *
 * With k = flow of the hole ÷ √head and the areas and flows in metres and seconds: time = 2 × area ÷ k² × (k ×
 * (√H1 − √H2) + q × ln((k × √H1 − q) ÷ (k × √H2 − q))), q the inflow.
 *
 * @param area_m2 plan area that fills with water, m2, above 0; of a bed, its area times its void fraction
 * @param hole bore, mm, above 0, and discharge coefficient, above 0 to 1
 * @param from_mm head at the start, mm
 * @param to_mm head at the end, mm, 0 or more, below `from_mm`
 * @param inflow_L_h water that runs in meanwhile, L/h, 0 or more
 * @returns time, s; infinite where the inflow holds the water up
 * @valid upright walls; the real shapes are filled and drained by `filling.ts`, which this checks
 * @throws RangeError where a measure is out of its range
 * @source schaschkeFluids, chapter 6
 * @example drainTime_s(1, { bore_mm: 20, Cd: 0.6 }, 1000, 250, 0) // 1197.908210
 */
export function drainTime_s(
  area_m2: number,
  hole: { readonly bore_mm: number; readonly Cd: number },
  from_mm: number,
  to_mm: number,
  inflow_L_h: number,
): number {
  if (!(0 < area_m2)) throw new RangeError(`drainTime_s: area_m2 is ${area_m2}, must be above 0`);
  if (!(0 <= to_mm && to_mm < from_mm)) throw new RangeError(`drainTime_s: from ${from_mm} to ${to_mm} mm`);
  if (!(0 <= inflow_L_h)) throw new RangeError(`drainTime_s: inflow_L_h is ${inflow_L_h}`);
  const k = orificeFlow_L_h(hole.bore_mm, 1000, hole.Cd) / 3.6e6;
  const q = inflow_L_h / 3.6e6;
  const start = k * Math.sqrt(from_mm / 1000);
  const end = k * Math.sqrt(to_mm / 1000);
  if (end <= q && q > 0) return Number.POSITIVE_INFINITY;
  const held = q === 0 ? 0 : q * Math.log((start - q) / (end - q));
  return ((2 * area_m2) / k ** 2) * (start - end + held);
}
