/** First and last days of something, as far as they can be read. */
import { dayNumber_d, dayOf } from '../core/calendar.ts';
import type { Problem } from '../core/problem.ts';
import { type Path, valueAt } from './schemaAt.ts';

/** The number of the day that stands at a place; null where none does. */
export function dayAt_d(raw: unknown, place: Path): number | null {
  const text = valueAt(raw, place);
  return typeof text === 'string' && dayOf(text) !== null ? dayNumber_d(text) : null;
}

/** The last day of a group comes after its first. */
export function inOrder(raw: unknown, place: Path): readonly Problem[] {
  const [from_d, to_d] = ['from', 'to'].map((key) => dayAt_d(raw, [...place, key]));
  if (typeof from_d !== 'number' || typeof to_d !== 'number' || from_d <= to_d) return [];
  const [from, to] = ['from', 'to'].map((key) => String(valueAt(raw, [...place, key])));
  return [{ code: 'dayOrder', place: [...place, 'to'], given: to ?? '', other: from ?? '' }];
}

/** From its first day to its last, both counted, a group has at most so many days. */
export function notTooLong(
  raw: unknown,
  place: Path,
  { code, most_d }: { readonly code: Problem['code']; readonly most_d: number },
): readonly Problem[] {
  const [from_d, to_d] = ['from', 'to'].map((key) => dayAt_d(raw, [...place, key]));
  if (typeof from_d !== 'number' || typeof to_d !== 'number') return [];
  const days = to_d - from_d + 1;
  return days > most_d ? [{ code, place: [...place, 'to'], given: String(days), max: most_d }] : [];
}
