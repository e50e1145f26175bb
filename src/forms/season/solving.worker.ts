/** Solves beside the crops page: a season comes in, a plan goes out after each stage. It is stopped by ending it. */
import { grown } from '../../core/crops/growth.ts';
import type { Grows } from '../../core/turnover/choices.ts';
import { clockFor } from '../../core/turnover/clock.ts';
import type { TurnoverPlan } from '../../core/turnover/turnover.ts';
import { type Means, replans, turnoverPlans } from '../../core/turnover/turnoverPlan.ts';
import { browserSolver } from '../../solver/browser.ts';
import type { Job, SolvingAsk, SolvingTold } from './seasonMessages.ts';

const now_s = () => performance.now() / 1000;

let start: (ask: SolvingAsk) => void = () => undefined;
const theSolver = new Promise<SolvingAsk>((resolve) => {
  start = resolve;
}).then((ask) => {
  if (ask.kind === 'start') return browserSolver(ask.compiled);
  throw new Error(ask.kind === 'fail' ? ask.message : 'the solver was not started');
});
// Whoever asks for a plan hears of it.
theSolver.catch(() => undefined);

self.onmessage = ({ data: ask }: MessageEvent<SolvingAsk>) => {
  if (ask.kind !== 'solve') start(ask);
  else
    solve(ask).catch((error: unknown) => {
      const message = error instanceof Error ? error.message : String(error);
      tell({ kind: 'failed', turn: ask.turn, message });
    });
};

function tell(told: SolvingTold): void {
  self.postMessage(told);
}

type Solve = Extract<SolvingAsk, { readonly kind: 'solve' }>;

async function solve({ turn, job, most_s }: Solve): Promise<void> {
  const solver = await theSolver;
  // Where it had to be fetched first, that takes nothing from the plan.
  const clock = clockFor(now_s, most_s);
  const { place } = job.kind === 'season' ? job.task : job.plan.task;
  const grows: Grows = (crop, ...days) => grown(crop, place, ...days);
  for (const plan of plansOf(job, { grows, solver, clock })) tell({ kind: 'solved', turn, plan });
  tell({ kind: 'done', turn });
}

function plansOf(job: Job, means: Means): Iterable<TurnoverPlan> {
  return job.kind === 'season' ? turnoverPlans(job.task, means) : replans(job.plan, job.change, means);
}
