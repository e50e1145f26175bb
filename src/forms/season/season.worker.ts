/** Works beside the crops page: reads what was typed, shows a first draft at once, then each better plan, and makes files. */
import { grown } from '../../core/crops/growth.ts';
import type { Crop } from '../../core/crops/crop.ts';
import { jobsOf } from '../../core/turnover/jobs.ts';
import type { TurnoverPlan } from '../../core/turnover/turnover.ts';
import { draftPlan } from '../../core/turnover/turnoverPlan.ts';
import { browserPress } from '../../paper/browser.ts';
import { toTurnover } from '../../schemas/toTurnover.ts';
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import type { TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { loaded } from '../loaded.ts';
import type { Side } from '../messages.ts';
import type { SeasonAsk, SeasonContent, SeasonTold } from './seasonMessages.ts';
import { calendarSides, shownOf } from './seasonShown.ts';
import { madeFile } from './seasonFiles.ts';

const thePress = loaded(browserPress);
let content: SeasonContent | undefined;
let asked: { readonly file: TurnoverFile; readonly day: string } | undefined;
let last: TurnoverInput | null = null;
/** What is drawn now, or was drawn last; `sides` is null until all are. */
type Drawing = { readonly key: string; number: number; first: Side | null; sides: number | null };
let drawing: Drawing | undefined;

self.onmessage = ({ data: ask }: MessageEvent<SeasonAsk>) => {
  if (ask.kind === 'start') {
    content = ask.content;
    // Fetched while nobody waits for it yet.
    thePress().catch(() => undefined);
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
  if (ask.kind === 'plan') return draft(ask.turn, ask.raw, ask.day);
  return ask.kind === 'draw' ? show(ask) : make(ask);
}

async function draft(turn: number, raw: unknown, day: string): Promise<void> {
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { task, raw: file } = result;
  tell({ kind: 'task', turn, task });
  asked = { file, day };
  const plan = draftPlan(task, (crop: Crop, sow_d: number) => grown(crop, task.place, sow_d));
  await show({ turn, number: 0, plan });
}

function inputOf(plan: TurnoverPlan): TurnoverInput {
  if (asked === undefined) throw new Error('no season was asked for');
  const { catalogue, terms, sources } = started();
  const words = { catalogue, terms, sources };
  return { plan, jobs: jobsOf(plan), words, labels: null, ...asked.file.sheet, day: asked.day };
}

type Drawn = Omit<Extract<SeasonAsk, { readonly kind: 'draw' }>, 'kind'>;

/** The first page comes with the words, so that there is something to see; something newer may come between pages. */
async function show({ turn, number, plan }: Drawn): Promise<void> {
  const input = inputOf(plan);
  last = input;
  const key = `${turn} ${JSON.stringify(plan.sowings)}`;
  if (drawing?.key === key) return showAgain(drawing, turn, number);
  const mine: Drawing = { key, number, first: null, sides: null };
  drawing = mine;
  let sides = 0;
  for await (const side of calendarSides(input, await thePress())) {
    await messagesTaken();
    if (mine !== drawing) return;
    if (sides > 0) tell({ kind: 'side', turn, index: sides, side });
    else showFirst(mine, turn, side);
    sides += 1;
  }
  if (sides === 0) showFirst(mine, turn, null);
  mine.sides = sides;
  tell({ kind: 'drawn', turn, number: mine.number, sides });
}

function showFirst(of: Drawing, turn: number, side: Side | null): void {
  of.first = side;
  if (last !== null) tell({ kind: 'shown', turn, shown: shownOf(last), side });
}

/** A stage that moves nothing is only told; what is still drawn of it goes on. */
function showAgain(of: Drawing, turn: number, number: number): void {
  of.number = number;
  if (of.first !== null || of.sides !== null) showFirst(of, turn, of.first);
  if (of.sides !== null) tell({ kind: 'drawn', turn, number, sides: of.sides });
}

function messagesTaken(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

async function make({ turn, file }: Extract<SeasonAsk, { readonly kind: 'make' }>): Promise<void> {
  if (last === null) throw new Error('nothing was planned');
  tell({ kind: 'made', turn, made: await madeFile(file, last, await thePress()) });
}

function started(): SeasonContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}
