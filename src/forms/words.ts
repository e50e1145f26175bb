/** The words of a form: labels and how-to of a field, and every other sentence of the planner. */
import type { Catalogue } from '../wording/catalogue.ts';
import { hasSentence, say } from '../wording/catalogue.ts';
import { fieldWords, withMonth } from '../wording/problemField.ts';
import type { Place } from './draft.ts';

export function planner(
  catalogue: Catalogue,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  return say(catalogue, `planner.${key}`, values);
}

/** Where a form has its words. */
export type Words = {
  readonly catalogue: Catalogue;
  /** Its part of the catalogue. */
  readonly block: 'planner' | 'crops' | 'class';
};

/** A sentence of this form; of the planner, where forms share it. */
export function formWords(
  { catalogue, block }: Words,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  const own = `${block}.${key}`;
  return say(catalogue, hasSentence(catalogue, own) ? own : `planner.${key}`, values);
}

export function labelOf(place: Place, { catalogue, block }: Words): string {
  const label = longest([block, 'labels'], namesOf(place), catalogue) ?? fieldWords(place, catalogue).name;
  return withMonth(label, place, catalogue);
}

/** What to measure and how. `variant` goes before the key where the same field is measured in another way. */
export function howOf(place: Place, { catalogue, block }: Words, variant?: string): string {
  const names = variant === undefined ? [] : [`${variant}.${String(place.at(-1))}`];
  return (
    longest([block, 'hows'], [...names, ...namesOf(place)], catalogue) ?? fieldWords(place, catalogue).how
  );
}

/** `beds.container.depth_mm`, `container.depth_mm`, `depth_mm`. */
function namesOf(place: Place): readonly string[] {
  const keys = place.filter((step) => typeof step === 'string');
  return keys.map((_, from) => keys.slice(from).join('.'));
}

/** The words of the form itself, else those of the planner. */
function longest(
  [block, group]: readonly [string, string],
  names: readonly string[],
  catalogue: Catalogue,
): string | null {
  for (const of of [block, 'planner']) {
    const all = catalogue[of];
    const words = typeof all === 'object' ? all[group] : undefined;
    if (typeof words !== 'object') continue;
    const found = names.map((name) => words[name]).find((text) => typeof text === 'string');
    if (typeof found === 'string') return found;
  }
  return null;
}
