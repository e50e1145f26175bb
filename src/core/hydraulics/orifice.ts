import { gravity_m_s2 } from '../constants.ts';

/**
 * Water that flows out of a round hole.
 *
 * Flow = Cd × π × bore² ÷ 4 × √(2 × g × head).
 *
 * @param bore_mm diameter of the hole, mm, above 0
 * @param head_mm still water over the middle of the hole, mm, 0 or more
 * @param Cd discharge coefficient, above 0 to 1; a sharp edge about 0.6
 * @returns flow, L/h
 * @valid free outflow, head well above the bore, slow approach
 * @throws RangeError where a measure is out of its range
 * @source lalHydraulics, chapter 3
 * @example orificeFlow_L_h(50, 1000, 0.6) // 18782.74130
 */
export function orificeFlow_L_h(bore_mm: number, head_mm: number, Cd: number): number {
  if (!(0 < bore_mm)) throw new RangeError(`orificeFlow_L_h: bore_mm is ${bore_mm}, must be above 0`);
  if (!(0 <= head_mm)) throw new RangeError(`orificeFlow_L_h: head_mm is ${head_mm}, must be 0 or more`);
  if (!(0 < Cd && Cd <= 1)) throw new RangeError(`orificeFlow_L_h: Cd is ${Cd}, must be above 0, at most 1`);
  const a = (Math.PI / 4) * (bore_mm / 1000) ** 2;
  const H = head_mm / 1000;
  // A cubic metre a second is 3,600,000 litres an hour.
  return Cd * a * Math.sqrt(2 * gravity_m_s2 * H) * 3.6e6;
}
