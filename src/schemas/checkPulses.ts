/** Weeks in which another amount is wanted: they lie in the season, and no week is told twice. */
import { mondayOf_d } from '../core/isoWeek.ts';
import type { Problem } from '../core/problem.ts';
import { dayAt_d, inOrder } from './dayOrder.ts';
import { type Path, valueAt } from './schemaAt.ts';

/** Mondays of the first and the last week. */
type Weeks = { readonly first_d: number; readonly last_d: number };

/** Checks the list at a place. */
export function checkPulses(raw: unknown, place: Path): readonly Problem[] {
  const list = valueAt(raw, place);
  if (!Array.isArray(list)) return [];
  const season = weeksAt(raw, ['season']);
  const all = list.map((_, index) => weeksAt(raw, [...place, index]));
  return all.flatMap((weeks, index) => {
    const own = [...place, index];
    const order = inOrder(raw, own);
    if (weeks === null || order.length > 0) return order;
    const given = String(valueAt(raw, [...own, 'from']));
    if (season && (weeks.last_d < season.first_d || season.last_d < weeks.first_d))
      return [{ code: 'outsideSeason' as const, place: [...own, 'from'], given }];
    const isTold = all.slice(0, index).some((before) => before !== null && overlap(before, weeks));
    return isTold ? [{ code: 'weekTwice' as const, place: [...own, 'from'], given }] : [];
  });
}

function weeksAt(raw: unknown, place: Path): Weeks | null {
  const from_d = dayAt_d(raw, [...place, 'from']);
  if (from_d === null) return null;
  const to_d = dayAt_d(raw, [...place, 'to']) ?? from_d;
  return { first_d: mondayOf_d(from_d), last_d: mondayOf_d(to_d) };
}

function overlap(one: Weeks, other: Weeks): boolean {
  return one.first_d <= other.last_d && other.first_d <= one.last_d;
}
