/** A worked step as a line that a pencil can follow: every number after its name, then the result. */
import type { Quantity, Step } from '../core/plan/figure.ts';
import { type Catalogue, say } from './catalogue.ts';
import { precise, unitSpace } from './quantity.ts';

/** Name of a term in the reader's language. */
export type Terms = Readonly<Record<string, { readonly name: string }>>;

const signs: Readonly<Record<string, string>> = {
  L_h: 'L/h',
  g_d: 'g/day',
  L_d: 'L/day',
  mg_L: 'mg/L',
  kg_L: 'kg/L',
  g_h: 'g/h',
  g_L: 'g/L',
  L_min: 'L/min',
  m2: 'm²',
  mg_kg_h: 'mg/kg/h',
  g_m2_d: 'g/m²/day',
  m2_m3: 'm²/m³',
  g_mol: 'g/mol',
  m_s2: 'm/s²',
  m_s: 'm/s',
  kWh_d: 'kWh/day',
  kg_m2: 'kg/m²',
  kg_m3: 'kg/m³',
  degC: '°C',
  frac: '',
  ratio: '',
  pH: '',
  spoons: '',
  fish: '',
  weeks: '',
  months: '',
  plants: '',
  money: '',
};

/** A number of a step with its unit, in the units of the core: the steps are worked in litres and millimetres. */
function worked(of: Quantity, digits: number): string {
  const sign = signs[of.unit] ?? of.unit;
  const number = precise(of.value, digits);
  return sign === '' ? number : `${number}${unitSpace}${sign}`;
}

/** Five digits, but for a count just under a whole as many as show it: "299.998 L ÷ 25 L" is 11, "300 L ÷ 25 L" is not. */
function digitsOf(step: Step): number {
  const inner = /floor\(([^()]*)\)/.exec(step.formula)?.[1];
  if (inner === undefined) return 5;
  const exact = wholeOf(inner, step, (value) => value);
  const shows = (digits: number): boolean =>
    wholeOf(inner, step, (value) => Number(precise(value, digits))) === exact;
  return [5, 6, 7, 8, 9, 10].find(shows) ?? 11;
}

/** The whole part of a row of factors and divisors, with each number as it will be read. */
function wholeOf(formula: string, step: Step, read: (value: number) => number): number {
  const numberAt = (sign: string): number =>
    step.symbols.find((symbol) => symbol.sign === sign)?.value ?? Number(sign);
  const [first = '', ...rest] = formula.split(' ');
  let product = read(numberAt(first));
  for (let i = 0; i + 1 < rest.length; i += 2) {
    const factor = read(numberAt(rest[i + 1] ?? ''));
    product = rest[i] === '÷' ? product / factor : product * factor;
  }
  return Math.floor(product * (1 + 1e-9));
}

/** The name of a term; a term without a file shows its key, and a house test refuses it. */
function termName(key: string, terms: Terms): string {
  return terms[key]?.name ?? key;
}

/**
 * The step with every number after its name: "rounded down (wet media 300 L ÷ media per fish 25 L) = 12".
 * A name stands only at its first number. A looked-up figure is only its value.
 */
export function stepLine(step: Step, catalogue: Catalogue, terms: Terms): string {
  const digits = digitsOf(step);
  const result = worked(step.gives, digits);
  if (step.formula === '') return result;
  return `${spoken(withNumbers(step, terms, digits), catalogue)} = ${result}`;
}

/** Every sign of the formula replaced by its name and number; functions and digits stay. */
function withNumbers(step: Step, terms: Terms, digits: number): string {
  const bySign = new Map(step.symbols.map((symbol) => [symbol.sign, symbol]));
  const named = new Set<string>();
  return step.formula.replace(/[A-Za-z][A-Za-z0-9]*/g, (sign) => {
    const symbol = bySign.get(sign);
    if (symbol === undefined) return sign;
    const first = !named.has(sign);
    named.add(sign);
    const number = worked(symbol, digits);
    return first ? `${termName(symbol.term, terms)} ${number}` : number;
  });
}

function spoken(formula: string, catalogue: Catalogue): string {
  return formula
    .replace(/\bfloor\(/g, `${say(catalogue, 'words.roundDown')}(`)
    .replace(/\bmin\(/g, `${say(catalogue, 'words.leastOf')}(`)
    .replace(/\bsqrt\(/g, '√(');
}
