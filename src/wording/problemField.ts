import type { Problem } from '../core/problem.ts';
import type { Catalogue } from './catalogue.ts';

export type FieldWords = {
  /** What the field is called, to begin a sentence with. */
  readonly name: string;
  /** What to measure and how; empty where nothing is to be said. */
  readonly how: string;
};

/** The words for a field: those of its longest key that has some (`dips.depth_mm` before `depth_mm`). */
export function fieldWords(place: Problem['place'], catalogue: Catalogue): FieldWords {
  const { problems } = catalogue;
  const { fields } = typeof problems === 'object' ? problems : {};
  if (typeof fields !== 'object') return { name: '', how: '' };
  const keys = place.filter((step) => typeof step === 'string');
  const names = keys.map((_, from) => keys.slice(from).join('.'));
  const found = names.find((name) => Object.hasOwn(fields, name)) ?? 'other';
  const words = fields[found];
  if (typeof words !== 'object') return { name: '', how: '' };
  const { name, how } = words;
  return { name: typeof name === 'string' ? name : '', how: typeof how === 'string' ? how : '' };
}
