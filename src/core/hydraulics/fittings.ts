/** What bends, mouths and valves take from the water. */
import { gravity_m_s2 } from '../constants.ts';
import { velocity_m_s } from './reynolds.ts';

/**
 * Loss coefficients of fittings, in velocity heads (epanetManual, table of minor loss coefficients). The elbow is
 * the one of short radius; one of long radius has the lower figure.
 */
export const fittingK = {
  entrance: 0.5,
  exit: 1,
  elbowShort: 0.9,
  elbowLong: 0.6,
  returnBend: 2.2,
} as const;

/**
 * Head that fittings take from the water.
 *
 * Head = K × velocity² ÷ (2 × g).
 *
 * @param K sum of the loss coefficients of all fittings, 0 or more
 * @param flow_L_h flow, L/h, 0 or more
 * @param bore_mm inside diameter of the pipe, mm, above 0
 * @returns head, m of water
 * @valid fittings a few bores apart; slow flow in narrow pipes loses more (see twoK)
 * @throws RangeError where a measure is out of its range
 * @source epanetManual, chapter 3, minor losses
 * @example fittingLoss_m(2, 3600, 40) // 0.0645742835
 */
export function fittingLoss_m(K: number, flow_L_h: number, bore_mm: number): number {
  if (!(0 <= K)) throw new RangeError(`fittingLoss_m: K is ${K}, must be 0 or more`);
  return (K * velocity_m_s(flow_L_h, bore_mm) ** 2) / (2 * gravity_m_s2);
}

/** The two constants of one screwed or glued bend of 90 degrees (hooper1981); swept bends take less, kinked hose more. */
export const bend = { K1: 800, Kinf: 0.4 } as const;

/**
 * Loss coefficient of a fitting by two constants, for narrow pipes and slow flow.
 *
 * K = K1 ÷ Re + K∞ × (1 + 25.4 ÷ bore).
 *
 * @param K1 constant of the fitting at a Reynolds number of one, 0 or more
 * @param Kinf constant of the fitting in a wide pipe and fast flow, 0 or more
 * @param Re Reynolds number, above 0
 * @param bore_mm inside diameter, mm, above 0
 * @returns a ratio, in velocity heads
 * @valid pipes of plumbing; the wider the pipe, the nearer the fixed coefficients
 * @throws RangeError where an argument is out of its range
 * @source hooper1981
 * @example twoK(800, 0.4, 10000, 25.4) // 0.88
 */
export function twoK(K1: number, Kinf: number, Re: number, bore_mm: number): number {
  if (!(0 <= K1 && 0 <= Kinf && 0 < Re && 0 < bore_mm)) {
    throw new RangeError(`twoK(${K1}, ${Kinf}, ${Re}, ${bore_mm})`);
  }
  return K1 / Re + Kinf * (1 + 25.4 / bore_mm);
}
