/** Units as other people print them, each as so many of ours. Definitions, not measurements. */
const inch_mm = 25.4;
const galUK_L = 4.54609;
const galUS_L = 3.785411784;
const ft3_L = 28.316846592;

const printed: Readonly<Record<string, { readonly ours: string; readonly factor: number }>> = {
  mm: { ours: 'mm', factor: 1 },
  cm: { ours: 'mm', factor: 10 },
  dm: { ours: 'mm', factor: 100 },
  m: { ours: 'mm', factor: 1000 },
  in: { ours: 'mm', factor: inch_mm },
  ft: { ours: 'mm', factor: 12 * inch_mm },
  m2: { ours: 'm2', factor: 1 },
  in2: { ours: 'm2', factor: (inch_mm / 1000) ** 2 },
  mL: { ours: 'L', factor: 0.001 },
  L: { ours: 'L', factor: 1 },
  m3: { ours: 'L', factor: 1000 },
  ft3: { ours: 'L', factor: ft3_L },
  galUK: { ours: 'L', factor: galUK_L },
  galUS: { ours: 'L', factor: galUS_L },
  'm3/s': { ours: 'L_h', factor: 3.6e6 },
  'ft3/s': { ours: 'L_h', factor: 3600 * ft3_L },
  'L/h': { ours: 'L_h', factor: 1 },
  'L/min': { ours: 'L_h', factor: 60 },
  'L/s': { ours: 'L_h', factor: 3600 },
  'galUS/min': { ours: 'L_h', factor: 60 * galUS_L },
  'galUK/min': { ours: 'L_h', factor: 60 * galUK_L },
  'g/d': { ours: 'g_d', factor: 1 },
  'mg/L': { ours: 'mg_L', factor: 1 },
  'g/h': { ours: 'g_h', factor: 1 },
  'kg/d': { ours: 'g_d', factor: 1000 },
  'lb/d': { ours: 'g_d', factor: 453.59237 },
  'kg/h': { ours: 'g_h', factor: 1000 },
  'mmol/L': { ours: 'mmol_L', factor: 1 },
  g: { ours: 'g', factor: 1 },
  frac: { ours: 'frac', factor: 1 },
  mmHg: { ours: 'frac', factor: 1 / 760 },
  ft2: { ours: 'm2', factor: (0.012 * inch_mm) ** 2 },
  'm/s': { ours: 'm_s', factor: 1 },
  'm/d': { ours: 'm_s', factor: 1 / 86_400 },
  'galUS/d/ft2': { ours: 'm_s', factor: galUS_L / 1000 / (0.012 * inch_mm) ** 2 / 86_400 },
  'm2/s': { ours: 'm2_s', factor: 1 },
  'kg/m3': { ours: 'kg_m3', factor: 1 },
  kg: { ours: 'kg', factor: 1 },
  lb: { ours: 'kg', factor: 0.45359237 },
  'lb/ft2': { ours: 'kg_m2', factor: 0.45359237 / (0.012 * inch_mm) ** 2 },
  s: { ours: 's', factor: 1 },
  min: { ours: 's', factor: 60 },
  h: { ours: 'min', factor: 60 },
  d: { ours: 'd', factor: 1 },
  hoursOfDay: { ours: 'h', factor: 1 },
  degreeDays: { ours: 'degC_d', factor: 1 },
  W: { ours: 'W', factor: 1 },
  'kWh/d': { ours: 'kWh_d', factor: 1 },
  // Head: metres of water, which our formulas keep as metres.
  mWater: { ours: 'm', factor: 1 },
  ftWater: { ours: 'm', factor: (12 * inch_mm) / 1000 },
  ratio: { ours: 'ratio', factor: 1 },
};

/** A bare number, a measure with its unit, a word, or a list or record of these: a container, a pump's curve. */
export type Input = number | string | readonly Input[] | { readonly [key: string]: Input };

/** An input as typed in a case (`6 ft`, a bare number, a container) in the units our formulas take. */
export function inOurUnit(input: Input): unknown {
  if (typeof input === 'number') return input;
  if (isList(input)) return input.map(inOurUnit);
  if (typeof input === 'object') {
    return Object.fromEntries(Object.entries(input).map(([key, value]) => [key, inOurUnit(value)]));
  }
  const measure = /^([\d.]+) (\S+)$/.exec(input);
  return measure === null ? input : Number(measure[1]) * unit(measure[2] ?? '').factor;
}

function isList(input: Input): input is readonly Input[] {
  return Array.isArray(input);
}

/** What a formula gave, in the unit of the printed value; the two must measure the same thing. */
export function inPrintedUnit(value: number, formula: string, name: string): number {
  const { ours, factor } = unit(name);
  const measures = formula.includes('_') ? formula.endsWith(`_${ours}`) : ours === 'ratio';
  if (!measures) throw new Error(`${formula} does not give what ${name} measures`);
  return value / factor;
}

function unit(name: string): { readonly ours: string; readonly factor: number } {
  const found = printed[name];
  if (found === undefined) throw new Error(`unit ${name} is not in the list of printed units`);
  return found;
}
