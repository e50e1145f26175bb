/** The plan of a season's file: of the season, and of its rest each time that something came differently. */
import { grown } from '../core/crops/growth.ts';
import type { Grows } from '../core/turnover/choices.ts';
import { clockFor } from '../core/turnover/clock.ts';
import { recalled } from '../core/turnover/recalled.ts';
import type { Solver } from '../core/turnover/solver.ts';
import type { TurnoverPlan, TurnoverTask } from '../core/turnover/turnover.ts';
import { replans, turnoverPlans } from '../core/turnover/turnoverPlan.ts';
import type { ReadTurnover } from '../schemas/content.ts';
import { changeOf } from '../schemas/toChange.ts';
import type { Catalogue } from '../wording/catalogue.ts';
import { problemLine } from '../wording/problem.ts';

const now_s = () => performance.now() / 1000;

/**
 * What is kept of a plan that somebody works by is taken as it is; the rest is worked out.
 * @param most_s seconds for the season, and as many for each time that its rest is planned again
 * @throws Error with a sentence for everything that cannot have come differently in this plan
 */
export function seasonPlan(
  { task, again }: Pick<ReadTurnover, 'task' | 'again'>,
  solver: Solver,
  catalogue: Catalogue,
  most_s: number,
): TurnoverPlan {
  const grows: Grows = (crop, ...days) => grown(crop, task.place, ...days);
  const means = () => ({ grows, solver, clock: clockFor(now_s, most_s) });
  const known = again.findLastIndex(({ before }) => before !== null);
  const plans: TurnoverPlan[] = known < 0 ? [lastOf(task, turnoverPlans(task, means()))] : [];
  for (const [at, told] of again.entries()) {
    if (at < known) continue;
    const before = at === known ? told.before : plans.at(-1);
    if (!before) break;
    const result = changeOf(told, before, ['again', at]);
    if ('problems' in result)
      throw new Error(result.problems.map((one) => problemLine(one, catalogue)).join(' '));
    plans.push(lastOf(task, replans(before, result.change, means())));
  }
  return recalled(lastOf(task, plans), plans.slice(0, -1));
}

function lastOf({ id }: TurnoverTask, plans: Iterable<TurnoverPlan>): TurnoverPlan {
  const plan = [...plans].at(-1);
  if (plan === undefined) throw new Error(`no plan for ${id}`);
  return plan;
}
