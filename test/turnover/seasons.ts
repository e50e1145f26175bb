/** Plans of our own seasons, made once for all tests. */
import { grown } from '../../src/core/crops/growth.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import { seasonFigures } from '../../src/core/turnover/seasonFigures.ts';
import type { TurnoverPlan, TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import type { PaperName } from '../../src/sheets/sheet.ts';
import type { TurnoverInput } from '../../src/sheets/turnoverSheet.ts';
import { nodeSolver } from '../../src/solver/node.ts';

export const { content } = await readContent('content');
const solver = await nodeSolver();

/** Seconds enough for a plan that can be looked at; which one is the best is tested elsewhere. */
const most_s = 1.5;
const now_s = () => performance.now() / 1000;

export function planOf(task: TurnoverTask): TurnoverPlan {
  const plan = [
    ...turnoverPlans(task, {
      ...{ grows: (crop, ...days) => grown(crop, task.place, ...days), solver },
      clock: clockFor(now_s, most_s),
    }),
  ].at(-1);
  if (plan === undefined) throw new Error('no plan');
  return plan;
}

const made = new Map<string, TurnoverPlan>();

export function seasonPlan(id: string): TurnoverPlan {
  const known = made.get(id);
  if (known !== undefined) return known;
  const of = content.turnovers.find((one) => one.id === id);
  if (of === undefined) throw new Error(`no season ${id}`);
  const plan = planOf(of.task);
  made.set(id, plan);
  return plan;
}

export const words = {
  catalogue: content.wording['en'] ?? {},
  terms: content.terms,
  sources: content.sources,
};

export function seasonInput(plan: TurnoverPlan, paper: PaperName = 'A4'): TurnoverInput {
  const units = paper === 'A4' ? 'metric' : 'us';
  return {
    plan,
    jobs: jobsOf(plan),
    figures: seasonFigures(plan),
    words,
    paper,
    units,
    day: '2030-12-01',
    labels: null,
  };
}
