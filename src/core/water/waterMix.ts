/** What comes out when tap water is poured into a tank: worked through before anybody pours. */
import { unionised_frac } from './ammonia.ts';
import {
  carbonDioxide_mg_L,
  inorganicCarbon_mmol_L,
  pHAtCarbonDioxide,
  pHOfCarbonates,
} from './carbonate.ts';

/** One of the two waters. Total ammonia is counted as N. */
export type Water = {
  readonly pH: number;
  readonly alkalinity_mg_L: number;
  readonly water_degC: number;
  readonly tan_mg_L: number;
};

/** The mix at once, and hours later when the tank's fish and air have brought its carbon dioxide back. */
export type Mix = Water & { readonly settledPH: number };

/** How far a change may go. */
export type MixLimits = {
  readonly unionisedMax_mg_L: number;
  readonly pHStep: number;
  readonly most_frac: number;
};

/**
 * The water after a change: alkalinity, inorganic carbon, warmth and ammonia of both in their shares.
 * Nothing escapes while pouring; the pH is the one at which alkalinity and carbon balance.
 * @param tank the water that stays
 * @param tap the water that comes
 * @param share_frac share of the tank's water that is exchanged, 0 to 1
 * @returns the mix, and its pH once the tank's own carbon dioxide is back
 * @valid as inorganicCarbon_mmol_L; specific heat alike
 * @throws RangeError as inorganicCarbon_mmol_L
 * @source plummerBusenberg1982 with alkalinity and inorganic carbon conserved
 */
export function mixOf(tank: Water, tap: Water, share_frac: number): Mix {
  if (!(0 <= share_frac && share_frac <= 1)) throw new RangeError(`mixOf(${share_frac})`);
  const both = (stays: number, comes: number): number => stays + (comes - stays) * share_frac;
  const carbonOf = (of: Water): number => inorganicCarbon_mmol_L(of.pH, of.alkalinity_mg_L, of.water_degC);
  const alkalinity_mg_L = both(tank.alkalinity_mg_L, tap.alkalinity_mg_L);
  const water_degC = both(tank.water_degC, tap.water_degC);
  const carbon_mmol_L = both(carbonOf(tank), carbonOf(tap));
  const usual_mg_L = carbonDioxide_mg_L(tank.pH, tank.alkalinity_mg_L, tank.water_degC);
  const pH = pHOfCarbonates(alkalinity_mg_L, carbon_mmol_L, water_degC);
  return {
    pH,
    settledPH: usual_mg_L > 0 ? pHAtCarbonDioxide(alkalinity_mg_L, usual_mg_L, water_degC) : pH,
    alkalinity_mg_L,
    water_degC,
    tan_mg_L: both(tank.tan_mg_L, tap.tan_mg_L),
  };
}

/**
 * Un-ionised ammonia of a mix, at once or settled, whichever is worse.
 * Total ammonia as NH3 times the un-ionised share at the higher pH.
 * @param mix a mix of two waters
 * @returns mg/L as NH3
 * @valid as unionised_frac; a pH beyond 4 to 11 counts as its end
 * @source emerson1975 the two equations
 * @example unionisedOfMix_mg_L({ pH: 8, settledPH: 7, water_degC: 20, tan_mg_L: 1, alkalinity_mg_L: 100 }) // 0.04629053914
 */
export function unionisedOfMix_mg_L(mix: Mix): number {
  const pH = Math.min(11, Math.max(4, mix.pH, mix.settledPH));
  return mix.tan_mg_L * ammoniaPerNitrogen * unionised_frac(pH, mix.water_degC);
}

/** NH3 for each N, by molar mass. */
const ammoniaPerNitrogen = 17.031 / 14.007;

/** A change is tried in this many steps upward; then halving finds the place within the first that goes too far. */
const tries = 20;
const halvings = 8;

/**
 * Largest share of the tank that may be exchanged at once.
 * The last share, going up from nothing, at which pH and un-ionised ammonia stay within their limits all the way.
 * Where the tank is over the ammonia limit already, a change must not make it worse.
 * @param tank the water that stays
 * @param tap the water that comes
 * @param limits un-ionised ammonia as NH3, the step of pH, and the most that is ever exchanged at once
 * @returns share, 0 to limits.most_frac
 * @valid as mixOf
 * @throws RangeError as mixOf
 * @source plummerBusenberg1982 with emerson1975
 * @example largestChange_frac({ pH: 7, alkalinity_mg_L: 80, water_degC: 20, tan_mg_L: 1 }, { pH: 7, alkalinity_mg_L: 80, water_degC: 20, tan_mg_L: 0 }, { unionisedMax_mg_L: 0.05, pHStep: 0.3, most_frac: 0.5 }) // 0.5
 */
export function largestChange_frac(tank: Water, tap: Water, limits: MixLimits): number {
  const start = mixOf(tank, tap, 0);
  const most_mg_L = Math.max(limits.unionisedMax_mg_L, unionisedOfMix_mg_L(start));
  const fits = (share_frac: number): boolean => {
    const mix = mixOf(tank, tap, share_frac);
    const moved = Math.max(Math.abs(mix.pH - tank.pH), Math.abs(mix.settledPH - tank.pH));
    return moved <= limits.pHStep && unionisedOfMix_mg_L(mix) <= most_mg_L * (1 + 1e-9);
  };
  return lastThatFits(limits.most_frac, fits);
}

function lastThatFits(most_frac: number, fits: (share_frac: number) => boolean): number {
  const step_frac = most_frac / tries;
  let good = 0;
  while (good < tries && fits(step_frac * (good + 1))) good += 1;
  if (good === tries) return most_frac;
  let low = step_frac * good;
  let high = low + step_frac;
  for (let i = 0; i < halvings; i += 1) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}
