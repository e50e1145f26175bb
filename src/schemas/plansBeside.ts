/** The plan that somebody worked by when a season is planned again: the last that its file names. */
import type { Problem } from '../core/problem.ts';
import type { TurnoverTask } from '../core/turnover/turnover.ts';
import type { Again } from './again.ts';
import { liesBelow } from './liesBelow.ts';
import { valueAt } from './schemaAt.ts';
import { changeOf } from './toChange.ts';
import { toSown } from './toSown.ts';
import type { YamlFile } from './yamlFile.ts';

/** Files beside a season's; of a broken one whoever read it has told what is wrong. */
export type Beside = (name: string) => YamlFile | 'missing' | 'broken';

/** Names of the plans that a season's file names, as far as it can be read. */
export function plansNamed(season: unknown): readonly string[] {
  const again = valueAt(season, ['again']);
  const names = Array.isArray(again) ? again.map((one) => valueAt(one, ['plan'])) : [];
  return names.filter((name): name is string => typeof name === 'string' && liesBelow(name));
}

/**
 * @param again what came differently, as the season's file says it
 * @param task the season as it began
 * @param beside reads the plans
 * @returns the same, the last that names a plan with it; and what is wrong with that plan, or cannot have come differently
 * in it
 */
export function withPlans(
  again: readonly Again[],
  task: TurnoverTask,
  beside: Beside,
): { readonly again: readonly Again[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  // What was planned before the last plan that is kept is over, and its own file may be gone or written over since.
  const last = again.findLastIndex(({ told }) => told.plan !== undefined);
  let { wishes } = task;
  const found = again.map((one, at): Again => {
    const then = { ...task, wishes };
    wishes = one.wishes ?? wishes;
    if (at < last) return one;
    const read = planFor(one, then, beside, ['again', at, 'plan']);
    problems.push(...read.problems);
    if (read.before === null) return one;
    const result = changeOf(one, read.before, ['again', at]);
    if ('problems' in result) problems.push(...result.problems);
    return { ...one, before: read.before };
  });
  return { again: found, problems };
}

function planFor(
  { told }: Again,
  task: TurnoverTask,
  beside: Beside,
  place: Problem['place'],
): { readonly before: Again['before']; readonly problems: readonly Problem[] } {
  const none = { before: null, problems: [] };
  if (told.plan === undefined) return none;
  const file = beside(told.plan);
  if (file === 'broken') return none;
  if (file === 'missing')
    return { before: null, problems: [{ code: 'fileMissing', place, given: told.plan }] };
  const read = toSown(file.raw, task);
  return 'problems' in read
    ? { before: null, problems: read.problems.map(file.locate) }
    : { before: read, problems: [] };
}
