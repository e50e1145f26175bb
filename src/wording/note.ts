/** A note as a sentence. Its numbers carry their unit in their names, so each can be shown in the reader's units. */
import type { Note } from '../core/note.ts';
import { type Catalogue, say } from './catalogue.ts';
import { dayInYear, dayText } from './date.ts';
import { shorten } from './shorten.ts';
import { amount, type Side, type UnitSystem } from './quantity.ts';

/** Suffixes that carry a unit, longest first, so that `topUp_L_d` is litres a day and not litres. */
const suffixes = [
  'kg_m2',
  'm_s',
  'mg_L',
  'L_min',
  'g_h',
  'min',
  'm2',
  'm',
  'kg_L',
  'L_d',
  'L_h',
  'g_d',
  'degC',
  'frac',
  'mm',
  'kg',
  'L',
  'g',
] as const;

/** Limits and wants are rounded up, what is there is rounded down: a sentence must not soften itself. */
const roundedUp = new Set([
  'wanted_L',
  'over_L',
  'intake_mm',
  'surface_mm',
  'wanted_L_h',
  'sure_L_h',
  'across_mm',
  'lift_m',
  'load_kg_m2',
  'weight_kg',
  'before_mg_L',
  'value_mg_L',
  'freed_mg_L',
  'demand_g_h',
  'wanted_g_d',
  'wanted_m2',
  'needed_m2',
  'media_L',
]);

/** The sentence of a note. */
export function noteSentence(note: Note, catalogue: Catalogue, units: UnitSystem): string {
  const numbers = Object.entries(note.numbers).map(
    ([name, value]) => [name, shown(name, value, units)] as const,
  );
  const words = Object.entries(note.words ?? {}).map(
    ([name, word]) => [name, spoken(name, word, catalogue)] as const,
  );
  return say(catalogue, `notes.${note.code}`, Object.fromEntries([...numbers, ...words]));
}

/** Names stand as they are; a vessel and a day are said in the reader's language. */
function spoken(name: string, word: string, catalogue: Catalogue): string {
  if (name === 'vessel') return say(catalogue, `words.${word}`);
  if (/^--\d{2}-\d{2}$/.test(word)) return dayInYear(`2000${word.slice(1)}`, catalogue);
  return /^\d{4}-\d{2}-\d{2}$/.test(word) ? dayText(word, catalogue) : shorten(word, 40);
}

function shown(name: string, value: number, units: UnitSystem): string {
  const unit = suffixes.find((suffix) => name.endsWith(`_${suffix}`));
  const side: Side = roundedUp.has(name)
    ? 'up'
    : name.endsWith('_frac') && name !== 'largest_frac'
      ? 'nearest'
      : 'down';
  if (unit !== undefined) return amount(value, unit, side, units);
  return amount(value, name === 'pH' ? 'pH' : 'ratio', 'nearest', units);
}
