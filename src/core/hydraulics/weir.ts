import { gravity_m_s2 } from '../constants.ts';

/**
 * Water that flows over a straight level crest.
 *
 * Flow = 2 ÷ 3 × Cd × √(2 × g) × crest × head^1.5.
 *
 * @param crest_mm length of the crest, mm, above 0
 * @param head_mm still water over the crest, mm, 0 or more
 * @param Cd discharge coefficient, above 0 to 1; a thin crest about 0.6, a thick or rough one less
 * @returns flow, L/h
 * @valid water that springs clear of the crest, slow approach; not a head of a few millimetres, where the
 * skin of the water holds it back (this limit is from memory)
 * @throws RangeError where a measure is out of its range
 * @source lalHydraulics, example 4.5
 * @example weirFlow_L_h(1000, 100, 0.6) // 201668.3884
 */
export function weirFlow_L_h(crest_mm: number, head_mm: number, Cd: number): number {
  if (!(0 < crest_mm)) throw new RangeError(`weirFlow_L_h: crest_mm is ${crest_mm}, must be above 0`);
  if (!(0 <= head_mm)) throw new RangeError(`weirFlow_L_h: head_mm is ${head_mm}, must be 0 or more`);
  if (!(0 < Cd && Cd <= 1)) throw new RangeError(`weirFlow_L_h: Cd is ${Cd}, must be above 0, at most 1`);
  const L = crest_mm / 1000;
  const H = head_mm / 1000;
  // A cubic metre a second is 3,600,000 litres an hour.
  return (2 / 3) * Cd * Math.sqrt(2 * gravity_m_s2) * L * H ** 1.5 * 3.6e6;
}
