/** Under what the water's balances are worked out: how warm, how high above the sea, how much oxygen that allows. */
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import { oxygenSaturation_mg_L, pressure_frac } from '../water/oxygen.ts';

export type Conditions = {
  /** The warm end: what was measured, or the top of what the fish like, whichever is warmer. */
  readonly water_degC: number;
  readonly pressureLeft_frac: number;
  readonly saturation_mg_L: number;
  /** At what it holds. */
  readonly at: Note;
};

/**
 * Conditions of a system, or a note that says why there are none.
 * @param system a checked system
 * @returns conditions at the warm end, where oxygen is shortest
 * @valid 0 to 40 °C
 * @source bensonKrause1984
 */
export function conditionsOf(system: System): Conditions | Note {
  const now = system.water.now_degC;
  const good = system.fish?.species.good_degC.max ?? null;
  if (now === null && good === null) return missing('oxygenNeedsWarmth');
  const water_degC = Math.max(now ?? -Infinity, good ?? -Infinity);
  if (!(0 <= water_degC && water_degC <= 40)) return outside(water_degC);
  const pressureLeft_frac = pressure_frac(system.altitude_m ?? 0);
  return {
    water_degC,
    pressureLeft_frac,
    saturation_mg_L: oxygenSaturation_mg_L(water_degC, pressureLeft_frac, 0),
    at: heldAt(system, water_degC),
  };
}

function heldAt(system: System, water_degC: number): Note {
  const height = system.altitude_m ?? null;
  return {
    code: height === null ? 'oxygenAtSea' : 'oxygenAt',
    level: 'info',
    numbers: { water_degC, ...(height === null ? {} : { height_m: height }) },
    source: 'bensonKrause1984',
  };
}

function missing(code: 'oxygenNeedsWarmth'): Note {
  return { code, level: 'info', numbers: {}, source: 'bensonKrause1984' };
}

function outside(water_degC: number): Note {
  return { code: 'oxygenOutside', level: 'caution', numbers: { water_degC }, source: 'bensonKrause1984' };
}
