/** A worked step as a line that a pencil can follow: every number after its name, then the result. */
import type { Quantity, Step } from '../core/plan/figure.ts';
import { type Catalogue, say } from './catalogue.ts';
import { grouped, precise, unitSpace } from './quantity.ts';

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
export function quantityText(of: Quantity, digits: number): string {
  const sign = signs[of.unit] ?? of.unit;
  const number = grouped(precise(of.value, digits));
  return sign === '' ? number : `${number}${unitSpace}${sign}`;
}

/** The fewest digits, but for a count just under a whole as many as show it: "299.998 L ÷ 25 L" is 11, "300 L ÷ 25 L" is not. */
export function digitsOf(step: Step, fewest = 5): number {
  const inner = /floor\(([^()]*)\)/.exec(step.formula)?.[1];
  if (inner === undefined) return fewest;
  const exact = wholeOf(inner, step, (value) => value);
  const shows = (digits: number): boolean =>
    wholeOf(inner, step, (value) => Number(precise(value, digits))) === exact;
  return [4, 5, 6, 7, 8, 9, 10].find((digits) => fewest <= digits && shows(digits)) ?? 11;
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

/** A word of a step, or a number with the name of what it is. */
export type StepPart =
  | { readonly kind: 'word'; readonly text: string }
  | {
      readonly kind: 'number';
      /** Its sign in the formula. */
      readonly sign: string;
      readonly term: string;
      /** Only where it stands for the first time. */
      readonly name: string;
      /** With its unit. */
      readonly text: string;
      readonly unit: string;
    };

/** What a step is read from: words and numbers in turn, then its result. */
export type StepParts = {
  readonly parts: readonly StepPart[];
  readonly result: Extract<StepPart, { kind: 'number' }>;
};

/** A step in parts, for a sheet that leaves some of its numbers open; its numbers may have more digits than it wants itself. */
export function stepParts(
  step: Step,
  catalogue: Catalogue,
  terms: Terms,
  digits = digitsOf(step),
): StepParts {
  const bySign = new Map(step.symbols.map((symbol) => [symbol.sign, symbol]));
  const named = new Set<string>();
  const parts = (step.formula.match(/[A-Za-z][A-Za-z0-9]*|[^A-Za-z]+/g) ?? []).map((token): StepPart => {
    const symbol = bySign.get(token);
    if (symbol === undefined) return { kind: 'word', text: grouped(token) };
    const first = !named.has(token);
    named.add(token);
    return numberPart(symbol, first ? termName(symbol.term, terms) : '', digits);
  });
  return { parts: spoken(parts, catalogue), result: numberPart(step.gives, '', digits) };
}

function numberPart(of: Quantity, name: string, digits: number): Extract<StepPart, { kind: 'number' }> {
  const { sign, term } = of;
  const unit = signs[of.unit] ?? of.unit;
  return { kind: 'number', sign, term, name, text: quantityText(of, digits), unit };
}

/**
 * The step with every number after its name: "rounded down (wet media 300 L ÷ media per fish 25 L) = 12".
 * A name stands only at its first number. A looked-up figure is only its value.
 */
export function stepLine(step: Step, catalogue: Catalogue, terms: Terms): string {
  const { parts, result } = stepParts(step, catalogue, terms);
  const line = parts
    .map((part) => (part.kind === 'number' && part.name !== '' ? `${part.name} ${part.text}` : part.text))
    .join('');
  return line === '' ? result.text : `${line} = ${result.text}`;
}

/** Functions by their names in the reader's language; their bracket stands in the next part. */
function spoken(parts: readonly StepPart[], catalogue: Catalogue): readonly StepPart[] {
  return parts.map((part) => {
    const name = part.kind === 'word' ? functionName(part.text, catalogue) : null;
    return name === null ? part : { kind: 'word', text: name };
  });
}

function functionName(of: string, catalogue: Catalogue): string | null {
  if (of === 'floor') return say(catalogue, 'words.roundDown');
  if (of === 'min') return say(catalogue, 'words.leastOf');
  return of === 'sqrt' ? '√' : null;
}
