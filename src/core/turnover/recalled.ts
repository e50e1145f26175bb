/** A plan of the rest of a season whose first part was worked out anew, and is not what somebody has on paper for sure. */
import type { Note } from '../note.ts';
import type { TurnoverPlan } from './turnover.ts';

/**
 * Two plans can be equally good, and one that was not proven best can come out otherwise the next time.
 * @param plan the plan of the rest
 * @param before the plans that it goes back to
 * @returns the plan with a note, where one of those before was not proven best
 * @valid plans that were worked out within a time
 * @source commonPractice
 */
export function recalled(plan: TurnoverPlan, before: readonly TurnoverPlan[]): TurnoverPlan {
  const isSure = before.every(({ stages }) => stages.every(({ state }) => state === 'proven'));
  if (isSure) return plan;
  const note: Note = { code: 'planRecalled', level: 'caution', numbers: {}, source: 'commonPractice' };
  return { ...plan, notes: [note, ...plan.notes] };
}
