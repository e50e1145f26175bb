/**
 * Numbers with units for people. Rounded here and nowhere else, always to the safe side that the figure names.
 * Our own code instead of the platform's: a sheet must come out the same in every browser.
 */
import { gallon_L } from '../core/units.ts';

export type UnitSystem = 'metric' | 'us';
export type Side = 'down' | 'up' | 'nearest';

/** How a unit of the core is shown: factor and offset into it, its sign, and the decimals by size. */
type Shown = {
  readonly sign: string;
  readonly per: number;
  readonly offset: number;
  readonly decimals: (value: number) => number;
};

const whole = (): number => 0;
const oneBelowTen = (value: number): number => (Math.abs(value) < 10 ? 1 : 0);
const one = (): number => 1;
const oneBelowHundred = (value: number): number => (Math.abs(value) < 100 ? 1 : 0);
const twoBelowOne = (value: number): number => (Math.abs(value) < 1 ? 2 : Math.abs(value) < 10 ? 1 : 0);

const gramsPerPound = 453.59237;

const metric: Readonly<Record<string, Shown>> = {
  mm: { sign: 'mm', per: 1, offset: 0, decimals: whole },
  m: { sign: 'm', per: 1, offset: 0, decimals: oneBelowTen },
  L: { sign: 'L', per: 1, offset: 0, decimals: oneBelowTen },
  L_d: { sign: 'L', per: 1, offset: 0, decimals: oneBelowTen },
  L_h: { sign: 'L/h', per: 1, offset: 0, decimals: whole },
  g: { sign: 'g', per: 1, offset: 0, decimals: oneBelowTen },
  g_d: { sign: 'g', per: 1, offset: 0, decimals: oneBelowTen },
  kg: { sign: 'kg', per: 1, offset: 0, decimals: oneBelowHundred },
  kg_L: { sign: 'kg/L', per: 1, offset: 0, decimals: () => 3 },
  degC: { sign: '°C', per: 1, offset: 0, decimals: whole },
  mg_L: { sign: 'mg/L', per: 1, offset: 0, decimals: twoBelowOne },
  frac: { sign: '%', per: 0.01, offset: 0, decimals: oneBelowTen },
  g_h: { sign: 'g/h', per: 1, offset: 0, decimals: twoBelowOne },
  L_min: { sign: 'L/min', per: 1, offset: 0, decimals: oneBelowTen },
  min: { sign: 'min', per: 1, offset: 0, decimals: whole },
  W: { sign: 'W', per: 1, offset: 0, decimals: oneBelowTen },
  m2: { sign: 'm²', per: 1, offset: 0, decimals: twoBelowOne },
  s: { sign: 's', per: 1, offset: 0, decimals: whole },
  h: { sign: 'h', per: 1, offset: 0, decimals: oneBelowTen },
  m_s: { sign: 'm/s', per: 1, offset: 0, decimals: () => 2 },
  kWh_d: { sign: 'kWh', per: 1, offset: 0, decimals: twoBelowOne },
  kg_m2: { sign: 'kg/m²', per: 1, offset: 0, decimals: whole },
  weeks: { sign: 'weeks', per: 1, offset: 0, decimals: whole },
  months: { sign: 'months', per: 1, offset: 0, decimals: whole },
  d: { sign: 'days', per: 1, offset: 0, decimals: whole },
  plants: { sign: 'plants', per: 1, offset: 0, decimals: whole },
  money: { sign: '', per: 1, offset: 0, decimals: () => 2 },
  fish: { sign: 'fish', per: 1, offset: 0, decimals: whole },
  ratio: { sign: '', per: 1, offset: 0, decimals: oneBelowTen },
  pH: { sign: '', per: 1, offset: 0, decimals: one },
  spoons: { sign: '', per: 1, offset: 0, decimals: () => 2 },
};

/** US customary where people use it; grams stay grams, since feed is weighed on a kitchen scale. */
const us: Readonly<Record<string, Shown>> = {
  ...metric,
  mm: { sign: 'in', per: 25.4, offset: 0, decimals: one },
  m: { sign: 'ft', per: 0.3048, offset: 0, decimals: whole },
  L: { sign: 'gal', per: gallon_L, offset: 0, decimals: oneBelowTen },
  L_d: { sign: 'gal', per: gallon_L, offset: 0, decimals: oneBelowTen },
  L_h: { sign: 'gal/h', per: gallon_L, offset: 0, decimals: whole },
  kg: { sign: 'lb', per: gramsPerPound / 1000, offset: 0, decimals: oneBelowHundred },
  m2: { sign: 'ft²', per: 0.3048 ** 2, offset: 0, decimals: oneBelowTen },
  m_s: { sign: 'ft/s', per: 0.3048, offset: 0, decimals: one },
  kg_m2: { sign: 'lb/ft²', per: gramsPerPound / 1000 / 0.3048 ** 2, offset: 0, decimals: whole },
  degC: { sign: '°F', per: 5 / 9, offset: 32, decimals: whole },
};

/** Between number and unit: a no-break space, which every font has. */
export const unitSpace = '\u00a0';

/** Between groups of three digits; a narrower one is hardly seen on paper. */
const digitSpace = unitSpace;

const leastGrouped = 5;

/** Digits of a long whole number in threes, as ISO 80000-1 (2022), 7.3.1 has it: "1 000 000". Decimals stay together. */
export function grouped(text: string): string {
  if (text.length < leastGrouped) return text;
  return text.replace(/(?<![\d.])\d{5,}/g, (digits) => digits.replace(/(?<=\d)(?=(?:\d{3})+$)/g, digitSpace));
}

/** The reader's unit of length in millimetres, for drawings that want round lengths. */
export function lengthUnit_mm(units: UnitSystem): number {
  return units === 'us' ? 25.4 : 1;
}

/** What a unit of the US has of ours, for whoever has a tape in inches and a sheet in millimetres. */
export function usInMetric(): { readonly inch_mm: string; readonly gallon_L: string } {
  return { inch_mm: String(lengthUnit_mm('us')), gallon_L: precise(gallon_L, 4) };
}

/** A number in the reader's units, and the unit's sign apart, for figures set in two sizes. */
export function amountParts(
  value: number,
  unit: string,
  side: Side,
  units: UnitSystem,
): { readonly number: string; readonly sign: string } {
  const shown = (units === 'us' ? us : metric)[unit];
  if (shown === undefined) throw new RangeError(`no way to show the unit ${unit}`);
  const inUnit = value / shown.per + shown.offset;
  return { number: plain(rounded(inUnit, shown.decimals(inUnit), side)), sign: shown.sign };
}

/** A number in the reader's units with its sign behind it: "565 L". */
export function amount(value: number, unit: string, side: Side, units: UnitSystem): string {
  const { number, sign } = amountParts(value, unit, side, units);
  return sign === '' ? number : `${number}${unitSpace}${sign}`;
}

/** A range with one unit: "20 to 28 °C"; one number where both ends print alike. Each end may have a safe side of its own. */
export function range(
  ends: { readonly low: number; readonly high: number },
  unit: string,
  side: Side | { readonly low: Side; readonly high: Side },
  units: UnitSystem,
  to: string,
): string {
  const sides = typeof side === 'string' ? { low: side, high: side } : side;
  const from = amountParts(ends.low, unit, sides.low, units);
  const until = amountParts(ends.high, unit, sides.high, units);
  if (from.number === until.number) return amount(ends.low, unit, sides.low, units);
  const sign = until.sign === '' ? '' : `${unitSpace}${until.sign}`;
  return `${from.number}${unitSpace}${to}${unitSpace}${until.number}${sign}`;
}

/** Spoonfuls in quarters, rounded down: "2½". Less than a quarter is null: it has to be weighed. */
export function spoonfuls(value: number): string | null {
  const quarters = Math.floor(value * 4 * (1 + 1e-9));
  if (quarters === 0) return null;
  const wholeSpoons = Math.floor(quarters / 4);
  const part = ['', '¼', '½', '¾'][quarters % 4] ?? '';
  return wholeSpoons === 0 ? part : `${wholeSpoons}${part}`;
}

/** A value that is known to so many digits only, also before the point: of 2802 the first three say 2800. */
export function roughly(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

/** A number of a worked step: five significant digits or more, so that a pencil comes to the same result. */
export function precise(value: number, digits = 5): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))));
  return plain(rounded(value, Math.min(decimals, digits + 3), 'nearest'));
}

/** Slack keeps 299.9999999 from being rounded down to 299. */
function rounded(value: number, decimals: number, side: Side): { value: number; decimals: number } {
  const scale = 10 ** decimals;
  const scaled = value * scale;
  const slack = 1e-9 * Math.max(1, Math.abs(scaled));
  const to = { down: Math.floor(scaled + slack), up: Math.ceil(scaled - slack), nearest: Math.round(scaled) };
  return { value: to[side] / scale, decimals };
}

function plain({ value, decimals }: { value: number; decimals: number }): string {
  const text = withoutLastZeros(Math.abs(value).toFixed(decimals));
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

function withoutLastZeros(text: string): string {
  if (!text.includes('.')) return text;
  let end = text.length;
  while (text[end - 1] === '0') end -= 1;
  return text.slice(0, text[end - 1] === '.' ? end - 1 : end);
}
