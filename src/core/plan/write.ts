/** Short hands for writing figures and steps down as the plain records they are. */
import type { Note, SourceKey } from '../note.ts';
import type { Unit } from '../units.ts';
import type { Figure, Quantity, Step } from './figure.ts';

/** A sign of a formula with its term, value and unit. */
export function quantity(sign: string, term: string, value: number, unit: Unit): Quantity {
  return { sign, term, value, unit };
}

/** A step that a person can follow with a pencil. */
export function byHand(
  gives: Quantity,
  formula: string,
  symbols: readonly Quantity[],
  source: SourceKey,
): Step {
  return { kind: 'formula', gives, formula, symbols, byHand: 'yes', source };
}

/** A figure that is read from a file or a table instead of worked out. */
export function lookup(gives: Quantity, source: SourceKey): Step {
  return { kind: 'lookup', gives, formula: '', symbols: [], byHand: 'no', source };
}

type FigureParts = Pick<Figure, 'key' | 'value' | 'unit' | 'safeSide' | 'confidence' | 'steps'> & {
  readonly low?: number;
  readonly high?: number;
  readonly notes?: readonly Note[];
};

/** A figure whose sources are those of its steps and notes. */
export function figure(parts: FigureParts): Figure {
  const notes = parts.notes ?? [];
  const sources: SourceKey[] = [];
  // There are only ever a few, and this is done for every figure of every plan.
  for (const { source } of [...parts.steps, ...notes]) if (!sources.includes(source)) sources.push(source);
  return { ...parts, notes, sources };
}

/** A figure that has no value here, and the note that says why. */
export function noFigure(key: string, unit: Unit, why: Note): Figure {
  return figure({ key, value: null, unit, safeSide: 'nearest', confidence: 'none', steps: [], notes: [why] });
}

/**
 * The value of a figure that is known to have one.
 * Its value as it stands; a missing one is our own mistake.
 * @param of a figure with a value
 * @returns the value in the figure's unit
 * @valid figures that have a value
 * @throws RangeError where there is none
 * @source see the figures
 * @example numberOf({ key: 'tankFull_L', value: 700 }) // 700
 */
export function numberOf(of: Figure): number {
  if (of.value === null) throw new RangeError(`${of.key} has no value here`);
  return of.value;
}
