/**
 * A key that would be right with another unit: `length_cm` where `length_mm` is wanted. The factors are
 * definitions (BIPM, SI Brochure 2019; inch, US gallon and avoirdupois pound of 1959).
 */
import { gallon_L } from '../core/units.ts';

const factors: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mm: { cm: 10, m: 1000, in: 25.4, inch: 25.4, inches: 25.4, ft: 304.8 },
  L: { l: 1, mL: 0.001, ml: 0.001, m3: 1000, gal: gallon_L },
  L_h: { l_h: 1, L_min: 60, l_min: 60, m3_h: 1000, gal_h: gallon_L, gph: gallon_L, gpm: 60 * gallon_L },
  g: { kg: 1000, mg: 0.001, lb: 453.59237, oz: 28.349523125 },
  frac: { percent: 0.01, pct: 0.01 },
  degC: { C: 1, celsius: 1, degF: Number.NaN, F: Number.NaN },
  mg_L: { mg_l: 1, ppm: 1, g_L: 1000 },
};

export type OtherUnit = {
  /** The key as it should be. */
  readonly key: string;
  readonly unit: string;
  /** The unit that was written; empty where none was. */
  readonly from: string;
  /** Key and converted value, ready to be written; only the key where the value was no number. */
  readonly write: string;
};

/** The key that was meant, if what was typed is a known key with another unit or with none. */
export function otherUnit(typed: string, value: unknown, known: readonly string[]): OtherUnit | null {
  for (const key of known) {
    const [stem, unit] = splitKey(key);
    if (unit === '' || (typed !== stem && !typed.startsWith(`${stem}_`))) continue;
    const from = typed.slice(stem.length + 1);
    const factor = from === '' ? undefined : factors[unit]?.[from];
    if (from !== '' && factor === undefined) continue;
    return { key, unit, from, write: factor === undefined ? key : written(key, value, from, factor) };
  }
  return null;
}

/** `standpipeBore_mm` in `standpipeBore` and `mm`; the unit is empty where the key carries none. */
function splitKey(key: string): readonly [stem: string, unit: string] {
  const cut = key.indexOf('_');
  return cut < 0 ? [key, ''] : [key.slice(0, cut), key.slice(cut + 1)];
}

function written(key: string, value: unknown, from: string, factor: number): string {
  if (typeof value !== 'number' || !Number.isFinite(value)) return key;
  const converted = from === 'degF' || from === 'F' ? ((value - 32) * 5) / 9 : value * factor;
  return `${key}: ${Number(converted.toPrecision(6))}`;
}
