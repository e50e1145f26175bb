/**
 * Worksheets of one kind have the same tasks in the same words, with other numbers in them: the words are put together
 * once, and for everybody else only the numbers are read.
 */
import type { Asked, AskedStep } from '../../core/workshop/askedSteps.ts';
import { quantityText } from '../../wording/step.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { hintOf, isFixed, type LineIn, type NumberIn, resultText, symbolText } from './handoutLine.ts';
import { givenSlot, handoutShape, handoutTasks, numberText, sheetDigits } from './handoutTasks.ts';

/** Somebody's worksheet among those of its kind. */
export type OfKind = {
  /** Of its layouts: several kinds may share one. */
  readonly shapes: Readonly<Record<HandoutView, string>>;
  /** All texts that differ from person to person, by their slots. */
  readonly values: (view: HandoutView) => Readonly<Record<string, string>>;
};

type Kind = { readonly shapes: OfKind['shapes']; readonly slots: readonly Slot[] };

/** Where a number stands, and what it says on somebody's sheet. */
type Slot = {
  readonly name: string;
  readonly on: 'both' | 'key';
  readonly text: (asked: readonly Asked[], digits: number) => string;
};

/** More kinds than this and the oldest is put together anew. */
const mostKept = 256;

/** Finds the kind of a worksheet, and remembers it. */
export function handoutKinds(): (input: HandoutInput) => OfKind {
  const kept = new Map<string, Kind>();
  /** Both views of a worksheet ask for it, and each once for every further line of the name. */
  let last: { readonly input: HandoutInput; readonly found: OfKind } | null = null;
  return (input) => {
    if (last?.input !== input) last = { input, found: ofKind(input, kept) };
    return last.found;
  };
}

function ofKind(input: HandoutInput, kept: Map<string, Kind>): OfKind {
  const digits = sheetDigits(input);
  const { shapes, slots } = kindOf(input, digits, kept);
  const textsOn = (on: Slot['on']) =>
    slots.flatMap((slot) => (slot.on === on ? [[slot.name, slot.text(input.asked, digits)] as const] : []));
  const both = { ...whose(input), ...Object.fromEntries(textsOn('both')) };
  return {
    shapes,
    values: (view) => (view === 'blank' ? both : { ...both, ...Object.fromEntries(textsOn('key')) }),
  };
}

function kindOf(input: HandoutInput, digits: number, kept: Map<string, Kind>): Kind {
  const pattern = patternOf(input, digits);
  const known = kept.get(pattern);
  if (known !== undefined) return known;
  const [oldest] = kept.keys();
  if (kept.size >= mostKept && oldest !== undefined) kept.delete(oldest);
  const shape = handoutShape(input);
  const shapes = { blank: `blank ${shape}`, key: `key ${shape}` };
  const made = { shapes, slots: slotsOf(input) };
  kept.set(pattern, made);
  return made;
}

function whose(input: HandoutInput): Readonly<Record<string, string>> {
  const { name, team, typed } = input;
  return { name, team, number: numberText(input), ...(typed === null ? {} : { typed }) };
}

function patternOf(input: HandoutInput, digits: number): string {
  const { session, paper, units, shared, typed, system, asked } = input;
  const parts: unknown[] = [session, paper, units, shared, typed === null, system.beds.length, digits];
  for (const { key, measures, steps } of asked) {
    parts.push(key);
    for (const { term, unit } of measures) parts.push(term, unit);
    for (const step of steps) parts.push(hintOf(input, key, step), ...stepPattern(step));
  }
  return JSON.stringify(parts);
}

/** A number that is the same for everybody stands among the words. */
function stepPattern({ number, way, formula, symbols, from, gives }: AskedStep): readonly unknown[] {
  const parts: unknown[] = [number, way, formula, gives.term, gives.unit];
  for (const { sign, term, unit, value } of formula === '' ? [] : symbols) {
    const of = from[sign];
    parts.push(sign, term, unit, of);
    if ((of === undefined || of.is === 'told') && isFixed(term)) parts.push(value);
  }
  return parts;
}

function slotsOf(input: HandoutInput): readonly Slot[] {
  const given = input.asked.flatMap(({ key, measures }, task) =>
    measures.map((_, at): Slot => {
      const text: Slot['text'] = (asked, digits) => quantityText(sure(asked[task]?.measures[at]), digits);
      return { name: givenSlot(key, at), on: 'both', text };
    }),
  );
  const worked = handoutTasks(input).flatMap(({ lines }, task) =>
    lines.flatMap((line, at) => slotsOfLine(line, (asked) => asked[task]?.steps[at], input.asked)),
  );
  return [...given, ...worked];
}

type StepAt = (asked: readonly Asked[]) => AskedStep | undefined;

function slotsOfLine({ groups, result }: LineIn, stepAt: StepAt, asked: readonly Asked[]): readonly Slot[] {
  const numbers = groups.flat().filter((part) => part.kind === 'number' && part.is !== 'fixed');
  const within = (numbers as readonly NumberIn[]).map((number): Slot => {
    const at = stepAt(asked)?.symbols.findIndex(({ sign }) => sign === number.sign) ?? -1;
    return {
      ...placeOf(number),
      text: (others, digits) => symbolText(sure(stepAt(others)?.symbols[at]), digits),
    };
  });
  return [
    ...within,
    { ...placeOf(result), text: (others, digits) => resultText(sure(stepAt(others)), digits) },
  ];
}

function placeOf({ slot, is }: NumberIn): Pick<Slot, 'name' | 'on'> {
  return { name: slot, on: is === 'open' ? 'key' : 'both' };
}

/** All of a kind have the same steps. */
function sure<Thing>(thing: Thing | undefined): Thing {
  if (thing === undefined) throw new RangeError('a worksheet of another kind');
  return thing;
}
