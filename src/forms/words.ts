/** The words of the planner: labels and how-to of a field, and every other sentence of the page. */
import type { Catalogue } from '../wording/catalogue.ts';
import { say } from '../wording/catalogue.ts';
import { fieldWords } from '../wording/problemField.ts';
import type { Place } from './draft.ts';

export function planner(
  catalogue: Catalogue,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  return say(catalogue, `planner.${key}`, values);
}

export function labelOf(place: Place, catalogue: Catalogue): string {
  return longest('labels', namesOf(place), catalogue) ?? fieldWords(place, catalogue).name;
}

/** What to measure and how. `variant` goes before the key where the same field is measured in another way. */
export function howOf(place: Place, catalogue: Catalogue, variant?: string): string {
  const names = variant === undefined ? [] : [`${variant}.${String(place.at(-1))}`];
  return longest('hows', [...names, ...namesOf(place)], catalogue) ?? fieldWords(place, catalogue).how;
}

/** `beds.container.depth_mm`, `container.depth_mm`, `depth_mm`. */
function namesOf(place: Place): readonly string[] {
  const keys = place.filter((step) => typeof step === 'string');
  return keys.map((_, from) => keys.slice(from).join('.'));
}

function longest(group: string, names: readonly string[], catalogue: Catalogue): string | null {
  const block = catalogue['planner'];
  const words = typeof block === 'object' ? block[group] : undefined;
  if (typeof words !== 'object') return null;
  const found = names.map((name) => words[name]).find((text) => typeof text === 'string');
  return typeof found === 'string' ? found : null;
}
