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
};

/** A number of a step with its unit, in the units of the core: the steps are worked in litres and millimetres. */
function worked(of: Quantity): string {
  const sign = signs[of.unit] ?? of.unit;
  return sign === '' ? precise(of.value) : `${precise(of.value)}${unitSpace}${sign}`;
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
  const result = worked(step.gives);
  if (step.formula === '') return result;
  return `${spoken(withNumbers(step, terms), catalogue)} = ${result}`;
}

/** Every sign of the formula replaced by its name and number; functions and digits stay. */
function withNumbers(step: Step, terms: Terms): string {
  const bySign = new Map(step.symbols.map((symbol) => [symbol.sign, symbol]));
  const named = new Set<string>();
  return step.formula.replace(/[A-Za-z][A-Za-z0-9]*/g, (sign) => {
    const symbol = bySign.get(sign);
    if (symbol === undefined) return sign;
    const first = !named.has(sign);
    named.add(sign);
    return first ? `${termName(symbol.term, terms)} ${worked(symbol)}` : worked(symbol);
  });
}

function spoken(formula: string, catalogue: Catalogue): string {
  return formula
    .replace(/\bfloor\(/g, `${say(catalogue, 'words.roundDown')}(`)
    .replace(/\bmin\(/g, `${say(catalogue, 'words.leastOf')}(`)
    .replace(/\bsqrt\(/g, '√(');
}
