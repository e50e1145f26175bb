import type { Problem } from '../core/problem.ts';
import { type Catalogue, say } from './catalogue.ts';

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
  return {
    name: typeof name === 'string' ? withMonth(name, place, catalogue) : '',
    how: typeof how === 'string' ? how : '',
  };
}

/** "Nights, Mar" for the third of twelve figures; every other name as it is. */
export function withMonth(name: string, place: Problem['place'], catalogue: Catalogue): string {
  const [key, month] = place.slice(-2);
  if (typeof month !== 'number' || typeof key !== 'string' || !key.endsWith('_degC')) return name;
  return `${name}, ${say(catalogue, `months.${String(month + 1).padStart(2, '0')}`)}`;
}
