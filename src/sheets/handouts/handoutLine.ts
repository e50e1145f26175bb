/** One line of a worksheet: a step in words, numbers that are told, and blanks, with what holds together on paper. */
import type { Quantity } from '../../core/plan/figure.ts';
import type { AskedStep, From } from '../../core/workshop/askedSteps.ts';
import { type Catalogue, say } from '../../wording/catalogue.ts';
import { amount, precise, roughly } from '../../wording/quantity.ts';
import { quantityText, type StepPart, stepParts } from '../../wording/step.ts';
import { type HandoutInput, handoutWords } from './handout.ts';

export type NumberIn = {
  readonly kind: 'number';
  readonly name: string;
  /** With its unit, but for one that is a word. */
  readonly text: string;
  /** Stands behind a blank. */
  readonly unit: string;
  /** Stands behind the number too: a unit that is a word. */
  readonly behind: string;
  /** open: a blank, on the key an answer. told: printed, for everybody another. fixed: the same wherever the line is. */
  readonly is: 'open' | 'told' | 'fixed';
  readonly slot: string;
  /** In the formula of its step. */
  readonly sign: string;
};
export type PartIn = NumberIn | { readonly kind: 'word'; readonly text: string };

/** Parts that stand together on one line of print come in groups. */
export type LineIn = { readonly groups: readonly (readonly PartIn[])[]; readonly result: NumberIn };

type Of = {
  readonly key: string;
  readonly step: AskedStep;
  /** The last line gives what the task is called. */
  readonly at: 'inside' | 'last';
  /** Of all numbers on the sheet, so that a number is the same wherever it stands. */
  readonly digits: number;
};

export function handoutLine(input: HandoutInput, { key, step, at, digits }: Of): LineIn {
  const { catalogue, terms } = input.words;
  const { parts, result } = stepParts(step, catalogue, terms, digits);
  const slot = (part: number | 'result'): string => `${key}-${step.number}-${part}`;
  const own = parts.map((part, i): PartIn => {
    if (part.kind === 'word') return part;
    const from = step.from[part.sign] ?? { is: 'told' };
    const symbol = step.symbols.find(({ sign }) => sign === part.sign);
    return withUnit(input, {
      ...part,
      text: symbol === undefined ? part.text : symbolText(symbol, digits),
      name: nameOf(input, part, from),
      is: isOf(part, from),
      slot: slot(i + 1),
    });
  });
  const hint = hintOf(input, key, step);
  return {
    groups: hint === null ? together(squared(own)) : [[{ kind: 'word', text: hint }]],
    result: withUnit(input, {
      ...result,
      text: resultText(step, digits),
      name: at === 'last' ? '' : termName(input, result.term),
      is: step.way === 'given' ? 'told' : 'open',
      slot: slot('result'),
    }),
  };
}

type NumberPart = Extract<StepPart, { kind: 'number' }>;

function termName({ words }: HandoutInput, term: string): string {
  return words.terms[term]?.name ?? term;
}

/** Every blank has a name; a number that is told has one where it stands for the first time. */
function nameOf(input: HandoutInput, part: NumberPart, from: From): string {
  const bed = from.is === 'result' ? /^bed(\d+)\.wetMedia_L$/.exec(from.key)?.[1] : undefined;
  if (bed !== undefined && input.system.beds.length > 1) return handoutWords(input, 'wetMediaOf', { bed });
  return from.is === 'told' ? part.name : termName(input, part.term);
}

/** Limits on fish are told to children only. */
function isOf(part: NumberPart, from: From): NumberIn['is'] {
  if (from.is !== 'told') return 'open';
  return isFixed(part.term) ? 'fixed' : 'told';
}

/** Whether a number that is told is the same for everybody. */
export function isFixed(term: string): boolean {
  return !term.startsWith('fishBy') && term !== 'pumpFlow';
}

const flowDigits = 3;

/** A number of a step; what a pump gives is worked out from its curve, and is not known to the litre. */
export function symbolText(of: Quantity, digits: number): string {
  if (of.term !== 'pumpFlow') return quantityText(of, digits);
  return quantityText({ ...of, value: roughly(of.value, flowDigits) }, flowDigits);
}

/** Pumps are not known as well as tapes: two digits say enough. */
export function resultText({ gives }: AskedStep, digits: number): string {
  return gives.term === 'turnover' ? precise(gives.value, 2) : quantityText(gives, digits);
}

const counted = { fishBy: 'fish', fishPlanned: 'fish', places: 'plants', turnover: 'turnover' } as const;

type Bare = NumberPart & Pick<NumberIn, 'is' | 'slot'>;

/** What is counted has a word behind it, where the core has no unit. */
function withUnit(input: HandoutInput, { term, ...part }: Bare): NumberIn {
  const of = Object.entries(counted).find(([start]) => part.unit === '' && term.startsWith(start));
  if (of === undefined) return { ...part, behind: '' };
  const word = handoutWords(input, `counted.${of[1]}`);
  return { ...part, unit: word, behind: word };
}

/** What stands instead of a sum: the rule, or why the number is told. */
export function hintOf(input: HandoutInput, key: string, step: AskedStep): string | null {
  if (step.way === 'worked') return null;
  if (step.way === 'given')
    return handoutWords(input, key.endsWith('.placesSquare') ? 'hints.drawn' : 'hints.given');
  return ruleText(step, input.words.catalogue);
}

/** The rule that gives a result without a sum. */
export function ruleText({ symbols }: AskedStep, catalogue: Catalogue): string {
  const wanted = symbols.find(({ term }) => term === 'tableFishTank');
  const least = wanted === undefined ? '' : amount(wanted.value, wanted.unit, 'up', 'metric');
  return say(catalogue, 'workshop.hints.fishByTank', { wanted: least });
}

/** "D^2" with brackets, so that nobody takes the millimetres of its blank for square ones. */
function squared(parts: readonly PartIn[]): readonly PartIn[] {
  return parts.flatMap((part, at): readonly PartIn[] => {
    const next = parts[at + 1];
    const isSquare = part.kind === 'number' && next?.kind === 'word' && next.text.startsWith('^2');
    if (isSquare) return [{ kind: 'word', text: '(' }, part];
    if (part.kind === 'number') return [part];
    return [{ kind: 'word', text: part.text.replace(/^\^2/, ')²').replaceAll(')^2', ')²') }];
  });
}

/** A bracket never stands alone at the end of a line, nor at its beginning. */
function together(parts: readonly PartIn[]): readonly (readonly PartIn[])[] {
  const groups: PartIn[][] = [];
  for (const part of parts.flatMap(inPieces)) {
    const before = groups.at(-1)?.at(-1);
    const opened = before?.kind === 'word' && before.text === '(';
    const closes = part.kind === 'word' && /^[);]/.test(part.text);
    if (opened || closes) groups.at(-1)?.push(part);
    else groups.push([part]);
  }
  return groups;
}

/** ") × (" is three pieces: one that closes, one between, one that opens. */
function inPieces(part: PartIn): readonly PartIn[] {
  if (part.kind === 'number') return [part];
  const pieces = part.text.split(' ').flatMap((piece) => piece.split(/(?<=\()/));
  return pieces.filter((text) => text !== '').map((text) => ({ kind: 'word', text }));
}
