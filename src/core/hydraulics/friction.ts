/** Friction of water in a straight pipe, in all three ways of running. */
import { gravity_m_s2 } from '../constants.ts';
import { reynolds, velocity_m_s } from './reynolds.ts';

/** Inside diameter, length, and how rough the wall is. */
export type StraightPipe = {
  readonly bore_mm: number;
  readonly length_m: number;
  readonly roughness_mm: number;
};

/** Up to here water runs in smooth layers. */
const laminarTo = 2000;

/** From here on it runs in whirls. */
const turbulentFrom = 4000;

/**
 * Darcy's friction factor.
 *
 * Up to a Reynolds number of 2000: 64 ÷ Re. From 4000: 0.25 ÷ log10(k ÷ 3.7 + 5.74 ÷ Re^0.9)², k the roughness as a
 * share of the bore. In between: the cubic through both ends with their slopes.
 *
 * @param Re Reynolds number, above 0
 * @param roughness_frac roughness over bore, 0 to 0.05
 * @returns friction factor, a ratio; four times the one named after Fanning
 * @valid round pipes; between 2000 and 4000 nobody knows how the water runs, so the cubic is only a fair guess
 * @throws RangeError where an argument is out of its range
 * @source epanetManual, chapter 12: Hagen and Poiseuille, Dunlop (1991), Swamee and Jain (1976). The manual prints
 * Dunlop's AA with the wrong sign; with the other sign the slope at 4000 agrees.
 * @example frictionFactor(1000, 0) // 0.064
 * @example frictionFactor(100000, 0.0001) // 0.0184524453
 */
export function frictionFactor(Re: number, roughness_frac: number): number {
  if (!(0 < Re)) throw new RangeError(`frictionFactor: Re is ${Re}, must be above 0`);
  if (!(0 <= roughness_frac && roughness_frac <= 0.05)) {
    throw new RangeError(`frictionFactor: roughness_frac is ${roughness_frac}, must be 0 to 0.05`);
  }
  if (Re <= laminarTo) return 64 / Re;
  return Re < turbulentFrom ? betweenBoth(Re, roughness_frac) : inWhirls(Re, roughness_frac);
}

function inWhirls(Re: number, k: number): number {
  return 0.25 / Math.log10(k / 3.7 + 5.74 / Re ** 0.9) ** 2;
}

/** Dunlop's cubic in R = Re ÷ 2000. FA is the factor at 4000, FB carries its slope there. */
function betweenBoth(Re: number, k: number): number {
  const at4000 = 5.74 / turbulentFrom ** 0.9;
  const Y2 = k / 3.7 + at4000;
  const Y3 = (-2 / Math.LN10) * Math.log(Y2);
  const FA = Y3 ** -2;
  const FB = FA * (2 - ((3.6 / Math.LN10) * at4000) / (Y2 * Y3));
  const R = Re / laminarTo;
  const X1 = 7 * FA - FB;
  const X2 = 0.128 - 17 * FA + 2.5 * FB;
  const X3 = -0.128 + 13 * FA - 2 * FB;
  const X4 = R * (0.032 - 3 * FA + 0.5 * FB);
  return X1 + R * (X2 + R * (X3 + X4));
}

/**
 * Head that a straight pipe takes from the water.
 *
 * Head = f × length ÷ bore × velocity² ÷ (2 × g), f the friction factor of Darcy.
 *
 * @param pipe inside diameter, mm, above 0; length, m, 0 or more; roughness, mm, 0 or more
 * @param flow_L_h flow, L/h, 0 or more
 * @param viscosity_m2_s kinematic viscosity, m2/s, above 0
 * @returns head, m of water
 * @valid a round pipe that runs full; roughness up to a twentieth of the bore
 * @throws RangeError where a measure is out of its range
 * @source epanetManual, chapter 12, formula of Darcy and Weisbach
 * @example frictionLoss_m({ bore_mm: 40, length_m: 10, roughness_mm: 0.0015 }, 3600, 1e-6) // 0.186989334
 */
export function frictionLoss_m(pipe: StraightPipe, flow_L_h: number, viscosity_m2_s: number): number {
  const { bore_mm, length_m, roughness_mm } = pipe;
  if (!(0 <= length_m)) throw new RangeError(`frictionLoss_m: length_m is ${length_m}, must be 0 or more`);
  const Re = reynolds(flow_L_h, bore_mm, viscosity_m2_s);
  if (Re === 0) return 0;
  const f = frictionFactor(Re, roughness_mm / bore_mm);
  const V = velocity_m_s(flow_L_h, bore_mm);
  return (f * length_m * 1000 * V ** 2) / (bore_mm * 2 * gravity_m_s2);
}
