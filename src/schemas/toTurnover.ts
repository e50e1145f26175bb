/** What a person wrote about a season, into the core's task; or every problem that stands in the way, at once. */
import type { Problem } from '../core/problem.ts';
import type { TurnoverTask } from '../core/turnover/turnover.ts';
import { type Again, againIn } from './again.ts';
import { checkAgains } from './checkAgain.ts';
import { checkTurnover } from './checkTurnover.ts';
import type { CropFacts } from './facts.ts';
import { readBySchema } from './issues.ts';
import { checkLabels } from './labels.ts';
import { type Beside, withPlans } from './plansBeside.ts';
import { type TurnoverFile, turnoverFile } from './turnoverFile.ts';
import { taskOf } from './turnoverTask.ts';
import { withoutNulls } from './withoutNulls.ts';

export type ToTurnover =
  /** `raw` is what was written, with everything left out filled in. */
  | { readonly task: TurnoverTask; readonly raw: TurnoverFile; readonly again: readonly Again[] }
  | { readonly problems: readonly Problem[] };

/**
 * Checks a season and turns it into the core's task.
 * @param raw plain data: from YAML or from a form
 * @param facts the crops and climates that it may name
 * @param beside reads the plans that it names
 */
export function toTurnover(raw: unknown, facts: CropFacts, beside: Beside = () => 'missing'): ToTurnover {
  const given = withoutNulls(raw);
  const read = readBySchema(turnoverFile, given, []);
  const across = [
    ...checkTurnover(given, facts),
    ...checkAgains(given, facts),
    ...checkLabels(given, ['labels']),
  ];
  if ('problems' in read) return { problems: [...read.problems, ...across] };
  if (across.length > 0) return { problems: across };
  const task = taskOf(read.value, facts);
  const { again, problems } = withPlans(againIn(read.value, facts), task, beside);
  return problems.length > 0 ? { problems } : { task, raw: read.value, again };
}
