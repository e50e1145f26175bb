/** What came differently in a season, against its weeks and wishes; not yet against any plan. */
import { dayNumber_d } from '../core/calendar.ts';
import type { Change } from '../core/turnover/change.ts';
import type { SownPlan } from '../core/turnover/sown.ts';
import { weekFrom, weekWith } from '../core/turnover/weeks.ts';
import type { ChangeFile } from './changeFile.ts';
import type { CropFacts } from './facts.ts';
import type { TurnoverFile } from './turnoverFile.ts';
import { taskOf } from './turnoverTask.ts';
import { wishesJoined } from './wishesJoined.ts';

export type Again = Pick<Change, 'now_week' | 'missed_weeks' | 'wishes'> & {
  readonly told: ChangeFile;
  /** The plan that it happened to; null where that is to be worked out anew. */
  readonly before: SownPlan | null;
};

/** All that a checked file says of planning again, one after the other. */
export function againIn(file: TurnoverFile, facts: CropFacts): readonly Again[] {
  const found: Again[] = [];
  let season = file;
  for (const told of file.again) {
    const next = againOf(told, season, facts);
    found.push(next.again);
    season = next.file;
  }
  return found;
}

/** One change of a season; `file` is the season with the wishes from then on. */
export function againOf(
  told: ChangeFile,
  file: TurnoverFile,
  facts: CropFacts,
): { readonly again: Again; readonly file: TurnoverFile } {
  const task = taskOf(file, facts);
  const now_week = Math.max(0, weekFrom(task, dayNumber_d(told.from)));
  const missed_weeks = told.missed.map(({ on }) => weekWith(task, dayNumber_d(on)));
  const own = { told, now_week, missed_weeks, before: null };
  if (told.wishes === undefined) return { again: { ...own, wishes: null }, file };
  const from_week = told.wishesFrom === undefined ? 0 : weekWith(task, dayNumber_d(told.wishesFrom));
  const week = Math.max(now_week, from_week);
  const next = { ...file, wishes: wishesJoined({ file, task }, told.wishes, week) };
  return { again: { ...own, wishes: taskOf(next, facts).wishes }, file: next };
}
