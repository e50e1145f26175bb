/** Works beside the crops page: plans a season stage by stage, shows each plan, and makes its files. */
import { grown } from '../../core/crops/growth.ts';
import { jobsOf } from '../../core/turnover/jobs.ts';
import type { TurnoverTask } from '../../core/turnover/turnover.ts';
import { planChanges } from '../../core/turnover/planChanges.ts';
import { type Means, replans, turnoverPlans } from '../../core/turnover/turnoverPlan.ts';
import { browserPress } from '../../paper/browser.ts';
import { toChange } from '../../schemas/toChange.ts';
import { toTurnover } from '../../schemas/toTurnover.ts';
import type { TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { browserSolver } from '../../solver/browser.ts';
import { loaded } from '../loaded.ts';
import type { Planned, SeasonAsk, SeasonContent, SeasonTold } from './seasonMessages.ts';
import { calendarSides, shownOf } from './seasonShown.ts';
import { madeFile } from './seasonFiles.ts';

/** Seconds for a whole plan. */
const most_s = 9;

const thePress = loaded(browserPress);
const theSolver = loaded(browserSolver);
let content: SeasonContent | undefined;

self.onmessage = ({ data: ask }: MessageEvent<SeasonAsk>) => {
  if (ask.kind === 'start') {
    content = ask.content;
    // Fetched while nobody waits for it yet.
    thePress().catch(() => undefined);
    theSolver().catch(() => undefined);
    return;
  }
  answer(ask).catch((error: unknown) => {
    tell({ kind: 'failed', turn: ask.turn, message: error instanceof Error ? error.message : String(error) });
  });
};

function tell(told: SeasonTold): void {
  self.postMessage(told);
}

function answer(ask: Exclude<SeasonAsk, { readonly kind: 'start' }>): Promise<void> {
  switch (ask.kind) {
    case 'plan':
      return plan(ask);
    case 'again':
      return planAgain(ask);
    case 'show':
      return showAgain(ask);
    case 'make':
      return make(ask);
  }
}

type Ask<Kind> = Extract<SeasonAsk, { readonly kind: Kind }>;

async function plan({ turn, raw, day }: Ask<'plan'>): Promise<void> {
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { task, raw: file } = result;
  for (const one of turnoverPlans(task, await means(task)))
    await show(turn, { plan: one, file, changed: null }, day);
  tell({ kind: 'done', turn });
}

async function planAgain({ turn, planned, change: raw, day }: Ask<'again'>): Promise<void> {
  const { plan: before, file } = planned;
  const result = toChange(raw, before, ['again']);
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { change } = result;
  for (const one of replans(before, change, await means(before.task)))
    await show(turn, { plan: one, file, changed: planChanges(before, one, change) }, day);
  tell({ kind: 'done', turn });
}

/**
 * The plan stays as it is; paper, units and labels are those of the form. One that nobody keeps to is planned anew where
 * more is known of its crops and its place than when it was made.
 */
async function showAgain({ turn, planned, held, raw, day }: Ask<'show'>): Promise<void> {
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) {
    await show(turn, planned, day);
    return tell({ kind: 'problems', turn, problems: result.problems });
  }
  const isOld = JSON.stringify(result.task) !== JSON.stringify(planned.plan.task);
  if (held === 'no' && isOld) return plan({ kind: 'plan', turn, raw, day });
  const { sheet, labels } = result.raw;
  await show(turn, { ...planned, file: { ...planned.file, sheet, labels } }, day);
  tell({ kind: 'done', turn });
}

async function means(task: TurnoverTask): Promise<Means> {
  return { grows: (crop, sow_d) => grown(crop, task.place, sow_d), solver: await theSolver(), most_s };
}

function inputOf({ plan: of, file }: Planned, day: string): TurnoverInput {
  const { catalogue, terms, sources } = started();
  const words = { catalogue, terms, sources };
  return { plan: of, jobs: jobsOf(of), words, labels: file.labels ?? null, ...file.sheet, day };
}

async function show(turn: number, planned: Planned, day: string): Promise<void> {
  const input = inputOf(planned, day);
  const sides = await calendarSides(input, await thePress());
  tell({ kind: 'shown', turn, planned, shown: { ...shownOf(input, planned.changed), sides } });
}

async function make({ turn, planned, file, day }: Ask<'make'>): Promise<void> {
  tell({ kind: 'made', turn, made: await madeFile(file, inputOf(planned, day), await thePress()) });
}

function started(): SeasonContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}
