/** A siphon over a standpipe: from which flow it starts, and how fast it then empties the bed. */
import { gravity_m_s2 } from '../constants.ts';
import { frictionFactor, type StraightPipe } from './friction.ts';
import { reynolds } from './reynolds.ts';
import { lipCd, mouthCd, standpipeFlow_L_h } from './standpipe.ts';

/**
 * Flow at which the mouth of a standpipe closes over: from here on the pipe is sure to run full.
 *
 * The flow where weir and orifice agree: at a head of 3 ÷ 8 × Cd of the mouth ÷ Cd of the lip × bore.
 *
 * @param bore_mm inside diameter of the standpipe, mm, above 0
 * @returns flow, L/h
 * @valid a plain mouth; one that widens, a bend below, or a narrow bell make it start much earlier, so this is the
 * upper end of a band
 * @throws RangeError where the bore is not above 0
 * @source epaSwmmHydraulics, orifices in a floor; lalHydraulics, example 3.5; gmuWeirLecture
 * @example mouthCloses_L_h(25) // 370.456770
 */
export function mouthCloses_L_h(bore_mm: number): number {
  return standpipeFlow_L_h(bore_mm, (3 / 8) * (mouthCd / lipCd) * bore_mm);
}

/**
 * Flow of a pipe that runs full under a head: a siphon, or a pipe between two waters.
 *
 * Flow = area × √(2 × g × head ÷ (K + f × length ÷ bore)), f the friction factor at this flow. Each round takes f
 * from the flow before and leaps ahead to where two such rounds are heading.
 *
 * @param pipe inside diameter, mm, length, m, and roughness, mm
 * @param K sum of the loss coefficients, above 0; the water that leaves takes 1 with it
 * @param head_mm fall from the water above to the open end or to the water below, mm, 0 or more
 * @param viscosity_m2_s kinematic viscosity, m2/s, above 0
 * @returns flow, L/h
 * @valid pipes that run full without air; not higher over the water above than some metres
 * @throws RangeError where a measure is out of its range
 * @source cengel2006, example 5-7; epanetManual, chapter 12
 * @example fullPipeFlow_L_h({ bore_mm: 5, length_m: 0, roughness_mm: 0 }, 1, 750, 1e-6) // 271.105519
 */
export function fullPipeFlow_L_h(
  pipe: StraightPipe,
  K: number,
  head_mm: number,
  viscosity_m2_s: number,
): number {
  if (!(0 < K)) throw new RangeError(`fullPipeFlow_L_h: K is ${K}, must be above 0`);
  if (!(0 <= head_mm)) throw new RangeError(`fullPipeFlow_L_h: head_mm is ${head_mm}, must be 0 or more`);
  if (head_mm === 0) return 0;
  const losslessFlow = Math.sqrt((2 * gravity_m_s2 * head_mm) / 1000) * boreArea_m2(pipe.bore_mm) * 3.6e6;
  let flow = losslessFlow / Math.sqrt(K);
  if (pipe.length_m === 0) return flow;
  for (let round = 0; round < mostRounds; round++) {
    const second = losslessFlow / Math.sqrt(K + frictionHeads(pipe, flow, viscosity_m2_s));
    const third = losslessFlow / Math.sqrt(K + frictionHeads(pipe, second, viscosity_m2_s));
    const next = leap(flow, second, third);
    // Each round doubles the digits that are right, so after a step this small all of them are.
    if (Math.abs(next - flow) <= 1e-8 * flow) return next;
    flow = next;
  }
  return flow;
}

/** Far more than any pipe needs; five or six do. */
const mostRounds = 40;

function boreArea_m2(bore_mm: number): number {
  return (Math.PI / 4) * (bore_mm / 1000) ** 2;
}

/** Friction in velocity heads; none where the flow is so small that it is no number any more. */
function frictionHeads(pipe: StraightPipe, flow_L_h: number, viscosity_m2_s: number): number {
  const { bore_mm, length_m, roughness_mm } = pipe;
  const Re = reynolds(flow_L_h, bore_mm, viscosity_m2_s);
  if (Re === 0) return Number.POSITIVE_INFINITY;
  return (frictionFactor(Re, roughness_mm / bore_mm) * length_m * 1000) / bore_mm;
}

/** Where three flows in a row are heading for, if each error is the same share of the one before (Aitken). */
function leap(first: number, second: number, third: number): number {
  const bend = third - 2 * second + first;
  const ahead = first - (second - first) ** 2 / bend;
  return ahead > 0 && Number.isFinite(ahead) ? ahead : third;
}
