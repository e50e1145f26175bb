/** Checks on the care rota of a workshop that need more than one of its days. */
import type { Problem } from '../core/problem.ts';
import { inOrder, notTooLong } from './dayOrder.ts';
import { valueAt } from './schemaAt.ts';

/** A school year and the holidays at both of its ends. */
const longest_d = 400;

/** Works on whatever could be read, so that everything is told at once. */
export function checkRota(raw: unknown): readonly Problem[] {
  const away = valueAt(raw, ['rota', 'away']);
  const gaps = Array.isArray(away) ? away.flatMap((_, index) => inOrder(raw, ['rota', 'away', index])) : [];
  return [
    ...inOrder(raw, ['rota']),
    ...notTooLong(raw, ['rota'], { code: 'rotaLong', most_d: longest_d }),
    ...gaps,
  ];
}
