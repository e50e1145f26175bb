/** The days of an absence against each other. */
import { dayNumber_d, dayOf } from '../core/calendar.ts';
import type { Problem } from '../core/problem.ts';
import { type Path, valueAt } from './schemaAt.ts';

/** Longer than this nobody is a sitter any more, and a sheet a day would be a book. */
const most_d = 60;

export function checkAbsence(raw: unknown, place: Path): readonly Problem[] {
  const from = valueAt(raw, ['absence', 'from']);
  const to = valueAt(raw, ['absence', 'to']);
  if (typeof from !== 'string' || typeof to !== 'string' || dayOf(from) === null || dayOf(to) === null)
    return [];
  const days = dayNumber_d(to) - dayNumber_d(from) + 1;
  if (days < 1) return [{ code: 'dayOrder', place: [...place, 'to'], given: to, other: from }];
  return days > most_d
    ? [{ code: 'absenceLong', place: [...place, 'to'], given: String(days), max: most_d }]
    : [];
}
