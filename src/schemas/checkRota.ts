/** Checks on the care rota of a workshop that need more than one of its days. */
import type { Problem } from '../core/problem.ts';
import { dayAt_d, inOrder } from './dayOrder.ts';
import { valueAt } from './schemaAt.ts';

/** A school year and the holidays at both of its ends. */
const longest_d = 400;

/** Works on whatever could be read, so that everything is told at once. */
export function checkRota(raw: unknown): readonly Problem[] {
  const away = valueAt(raw, ['rota', 'away']);
  const gaps = Array.isArray(away) ? away.flatMap((_, index) => inOrder(raw, ['rota', 'away', index])) : [];
  return [...inOrder(raw, ['rota']), ...tooLong(raw), ...gaps];
}

function tooLong(raw: unknown): readonly Problem[] {
  const [from_d, to_d] = ['from', 'to'].map((key) => dayAt_d(raw, ['rota', key]));
  if (typeof from_d !== 'number' || typeof to_d !== 'number') return [];
  const days = to_d - from_d + 1;
  return days > longest_d
    ? [{ code: 'rotaLong', place: ['rota', 'to'], given: String(days), max: longest_d }]
    : [];
}
