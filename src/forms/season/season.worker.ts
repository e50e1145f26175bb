/** Works beside the crops page: plans a season stage by stage, shows each plan, and makes its files. */
import { grown } from '../../core/crops/growth.ts';
import type { Crop } from '../../core/crops/crop.ts';
import { jobsOf } from '../../core/turnover/jobs.ts';
import type { TurnoverPlan } from '../../core/turnover/turnover.ts';
import { turnoverPlans } from '../../core/turnover/turnoverPlan.ts';
import { browserPress } from '../../paper/browser.ts';
import { toTurnover } from '../../schemas/toTurnover.ts';
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import type { TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { browserSolver } from '../../solver/browser.ts';
import { loaded } from '../loaded.ts';
import type { SeasonAsk, SeasonContent, SeasonTold } from './seasonMessages.ts';
import { calendarSides, shownOf } from './seasonShown.ts';
import { madeFile } from './seasonFiles.ts';

/** Seconds for a whole plan. */
const most_s = 9;

const thePress = loaded(browserPress);
const theSolver = loaded(browserSolver);
let content: SeasonContent | undefined;
let last: TurnoverInput | null = null;

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
  return ask.kind === 'plan' ? plan(ask.turn, ask.raw, ask.day) : make(ask);
}

async function plan(turn: number, raw: unknown, day: string): Promise<void> {
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { task, raw: file } = result;
  const grows = (crop: Crop, sow_d: number) => grown(crop, task.place, sow_d);
  const means = { grows, solver: await theSolver(), most_s };
  for (const one of turnoverPlans(task, means)) await show(turn, inputOf(one, file, day));
  tell({ kind: 'done', turn });
}

function inputOf(plan: TurnoverPlan, { sheet }: TurnoverFile, day: string): TurnoverInput {
  const { catalogue, terms, sources } = started();
  const words = { catalogue, terms, sources };
  return { plan, jobs: jobsOf(plan), words, labels: null, ...sheet, day };
}

async function show(turn: number, input: TurnoverInput): Promise<void> {
  last = input;
  const sides = await calendarSides(input, await thePress());
  tell({ kind: 'shown', turn, shown: { ...shownOf(input), sides } });
}

async function make({ turn, file }: Extract<SeasonAsk, { readonly kind: 'make' }>): Promise<void> {
  if (last === null) throw new Error('nothing was planned');
  tell({ kind: 'made', turn, made: await madeFile(file, last, await thePress()) });
}

function started(): SeasonContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}
