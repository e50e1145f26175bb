/** What a person wrote about a season, into the core's task; or every problem that stands in the way, at once. */
import type { Problem } from '../core/problem.ts';
import type { TurnoverTask } from '../core/turnover/turnover.ts';
import { type Again, againIn } from './again.ts';
import { checkAgains } from './checkAgain.ts';
import { checkTurnover } from './checkTurnover.ts';
import type { CropFacts } from './facts.ts';
import { readBySchema } from './issues.ts';
import { checkLabels } from './labels.ts';
import type { Path } from './schemaAt.ts';
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
 * @param place where it stands in the whole, in front of every problem's place
 */
export function toTurnover(raw: unknown, facts: CropFacts, place: Path = []): ToTurnover {
  const given = withoutNulls(raw);
  const read = readBySchema(turnoverFile, given, place);
  const across = [
    ...[...checkTurnover(given, facts), ...checkAgains(given, facts)].map((one) => ({
      ...one,
      place: [...place, ...one.place],
    })),
    ...checkLabels(given, [...place, 'labels']),
  ];
  if ('problems' in read) return { problems: [...read.problems, ...across] };
  if (across.length > 0) return { problems: across };
  return { task: taskOf(read.value, facts), raw: read.value, again: againIn(read.value, facts) };
}
