/**
 * Numbers as people type them: decimal point or comma, fractions of an inch, the unit behind them or not; and the
 * units in which a field is typed. The exact value is kept in the unit of the field's key.
 */
import { gallon_L } from '../core/units.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import type { Typed } from './draft.ts';

type TypedUnit = {
  readonly sign: string;
  /** One of these in the unit of the key, and where its zero lies. */
  readonly per: number;
  readonly zero: number;
  /** Decimals that a changed value shows; its exact value is kept beside it. */
  readonly decimals: number;
  /** What people write for it. */
  readonly written: RegExp;
};

const one = (sign: string, written: RegExp): TypedUnit => ({ sign, per: 1, zero: 0, decimals: 6, written });

/** Inch, foot, US gallon: by definition of 1959, exact. */
const inch: TypedUnit = { sign: 'in', per: 25.4, zero: 0, decimals: 3, written: /(?:in|inch|inches|"|″)$/i };
const gallon: TypedUnit = { sign: 'gal', per: gallon_L, zero: 0, decimals: 3, written: /gal(?:lons?)?$/i };

const metric: Readonly<Record<string, TypedUnit>> = {
  mm: one('mm', /mm$/i),
  L: one('L', /(?:l|litres?)$/i),
  L_h: one('L/h', /l\/h$/i),
  g: one('g', /g$/i),
  degC: one('°C', /°?\s*c$/i),
  L_min: one('L/min', /l\/min$/i),
  m: one('m', /m$/i),
  min: one('min', /min$/i),
  W: one('W', /w$/i),
  mg_L: one('mg/L', /mg\/l$/i),
  frac: { sign: '%', per: 0.01, zero: 0, decimals: 6, written: /%$/ },
};

const us: Readonly<Record<string, TypedUnit>> = {
  ...metric,
  mm: inch,
  m: { sign: 'ft', per: 0.3048, zero: 0, decimals: 2, written: /(?:ft|feet|′)$/i },
  L: gallon,
  L_h: { ...gallon, sign: 'gal/h', decimals: 1, written: /gal\/h$/i },
  degC: { sign: '°F', per: 5 / 9, zero: 32, decimals: 1, written: /°?\s*f$/i },
};

/** `mm` of `full_mm`; empty for what is only counted. */
function unitOf(key: string): string {
  const cut = key.indexOf('_');
  return cut < 0 ? '' : key.slice(cut + 1);
}

/** The sign that stands behind the field. */
export function signOf(key: string, units: UnitSystem): string {
  return typedUnit(key, units)?.sign ?? '';
}

/** The value of a field in the unit of its key; the text itself where it is no number; undefined where it is empty. */
export function siOf(typed: Typed, key: string, units: UnitSystem): number | string | undefined {
  const text = typed.text.trim();
  if (text === '') return undefined;
  if (typed.si !== undefined) return typed.si;
  const unit = typedUnit(key, units);
  const number = numberOf(unit ? text.replace(unit.written, '') : text);
  if (number === null) return text;
  return unit === null ? number : exact((number - unit.zero) * unit.per);
}

/** A value as a field shows it, with the exact value kept beside it. */
export function typedOf(si: number, key: string, units: UnitSystem): Typed {
  const unit = typedUnit(key, units);
  const shown = unit === null ? si : Number((si / unit.per + unit.zero).toFixed(unit.decimals));
  return { text: String(exact(shown)), si };
}

function typedUnit(key: string, units: UnitSystem): TypedUnit | null {
  return (units === 'us' ? us : metric)[unitOf(key)] ?? null;
}

/** Twelve digits: what binary fractions leave behind the last digit that anybody typed is dropped. */
function exact(value: number): number {
  return Number(value.toPrecision(12));
}

const fractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** "1,200" may be 1200 or 1.2, so it stays a text and the message asks which one is meant. */
export function numberOf(typed: string): number | null {
  const text = typed
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${fractions[sign] ?? ''}`)
    .replace(/\s+/g, ' ')
    .replace(/^[−–]/, '-')
    .trim();
  const mixed = /^(-?)(?:(\d+)[ -])?(\d+)\s?\/\s?(\d+)$/.exec(text);
  if (mixed) return mixedNumber(mixed);
  if (/^-?\d{1,3}(?: \d{3})+$/.test(text)) return Number(text.replaceAll(' ', ''));
  if (/^-?\d{1,3},\d{3}$/.test(text)) return null;
  return /^-?(?:\d+[.,]?\d*|[.,]\d+)$/.test(text) ? Number(text.replace(',', '.')) : null;
}

function mixedNumber([, sign, whole = '0', over, under]: RegExpExecArray): number | null {
  if (Number(under) === 0) return null;
  const value = Number(whole) + Number(over) / Number(under);
  return sign === '-' ? -value : value;
}
