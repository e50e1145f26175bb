/** What is done beside the crops page: reads what was typed, shows a first draft at once, then each better plan, and makes files. */
import '../noCompiling.ts';
import { grown } from '../../core/crops/growth.ts';
import { jobsOf } from '../../core/turnover/jobs.ts';
import { planChanges } from '../../core/turnover/planChanges.ts';
import type { Change } from '../../core/turnover/change.ts';
import { seasonFigures } from '../../core/turnover/seasonFigures.ts';
import type { TurnoverPlan } from '../../core/turnover/turnover.ts';
import { draftPlan } from '../../core/turnover/turnoverPlan.ts';
import { toChange } from '../../schemas/toChange.ts';
import { toTurnover } from '../../schemas/toTurnover.ts';
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import type { TurnoverInput } from '../../sheets/turnoverSheet.ts';
import type { Side } from '../messages.ts';
import type { Planned, SeasonAsk, SeasonContent, SeasonTold } from './seasonMessages.ts';
import { calendarSides, shownOf } from './seasonShown.ts';
import { madeFile } from './seasonFiles.ts';
import { otherPages } from './otherPages.ts';
import { thePress } from './seasonPress.ts';

let content: SeasonContent | undefined;

/** What better plans are plans of: the file, and of planning again what was there before. */
type Asked = {
  readonly file: TurnoverFile;
  readonly day: string;
  readonly rest: { readonly before: TurnoverPlan; readonly change: Change } | null;
};
let asked: Asked | undefined;

/** What is drawn now, or was drawn last; `sides` is null until all are. */
type Drawing = {
  readonly key: string;
  planned: Planned;
  number: number;
  first: Side | null;
  sides: number | null;
};
let drawing: Drawing | undefined;
const others = otherPages();

/** What comes of it is told piece by piece. */
export async function answer(ask: SeasonAsk): Promise<void> {
  switch (ask.kind) {
    case 'start':
      content = ask.content;
      return;
    case 'plan':
      return draft(ask);
    case 'again':
      return planAgain(ask);
    case 'show':
      return showKnown(ask);
    case 'draw':
      return drawBetter(ask);
    case 'settled':
      return others.settle();
    case 'look':
      return others.look(ask.index);
    case 'make':
      return make(ask);
  }
}

function tell(told: SeasonTold): void {
  self.postMessage(told);
}

type Ask<Kind> = Extract<SeasonAsk, { readonly kind: Kind }>;

async function draft({ turn, raw, day }: Omit<Ask<'plan'>, 'kind'>): Promise<void> {
  others.begin('coming');
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { task, raw: file } = result;
  tell({ kind: 'job', turn, job: { kind: 'season', task } });
  asked = { file, day, rest: null };
  const plan = draftPlan(task, (crop, ...days) => grown(crop, task.place, ...days));
  await show({ turn, number: 0, planned: { plan, file, changed: null }, day });
}

/** Planning again has no draft: the plan from before is on the screen. */
async function planAgain({ turn, planned, change: raw, day }: Ask<'again'>): Promise<void> {
  others.begin('coming');
  const { plan } = planned;
  const { crops, climates } = started();
  const result = toChange(raw, planned, { crops, climates }, ['again']);
  if ('problems' in result) return tell({ kind: 'problems', turn, problems: result.problems });
  const { change, file } = result;
  asked = { file, day, rest: { before: plan, change } };
  tell({ kind: 'job', turn, job: { kind: 'rest', plan, change } });
}

/**
 * The plan stays as it is; paper, units and labels are those of the form. One that nobody keeps to is planned anew where
 * more is known of its crops and its place than when it was made.
 */
async function showKnown({ turn, planned, held, raw, day }: Ask<'show'>): Promise<void> {
  others.begin('none');
  const { crops, climates } = started();
  const result = toTurnover(raw, { crops, climates });
  if ('problems' in result) {
    await show({ turn, number: 0, planned, day });
    return tell({ kind: 'problems', turn, problems: result.problems });
  }
  const isOld = JSON.stringify(result.task) !== JSON.stringify(planned.plan.task);
  if (held === 'no' && isOld) return draft({ turn, raw, day });
  const { sheet, labels } = result.raw;
  await show({ turn, number: 0, planned: { ...planned, file: { ...planned.file, sheet, labels } }, day });
  tell({ kind: 'done', turn });
}

async function drawBetter({ turn, number, plan }: Ask<'draw'>): Promise<void> {
  if (asked === undefined) throw new Error('no season was asked for');
  const { file, day, rest } = asked;
  const changed = rest && planChanges(rest.before, plan, rest.change);
  await show({ turn, number, planned: { plan, file, changed }, day });
}

function inputOf({ plan, file }: Planned, day: string): TurnoverInput {
  const { catalogue, terms, sources } = started();
  const words = { catalogue, terms, sources };
  return {
    plan,
    jobs: jobsOf(plan),
    figures: seasonFigures(plan),
    words,
    labels: file.labels ?? null,
    ...file.sheet,
    day,
  };
}

type Show = {
  readonly turn: number;
  readonly number: number;
  readonly planned: Planned;
  readonly day: string;
};

/** The first page comes with the words, so that there is something to see; something newer may come between pages. */
async function show({ turn, number, planned, day }: Show): Promise<void> {
  const key = `${turn} ${JSON.stringify(planned.plan.sowings)}`;
  if (drawing?.key === key) return showOnceMore(drawing, { turn, number, planned, day });
  const mine: Drawing = { key, planned, number, first: null, sides: null };
  drawing = mine;
  let sides = 0;
  for await (const side of calendarSides(inputOf(planned, day), await thePress())) {
    await messagesTaken();
    if (mine !== drawing) return;
    if (sides > 0) tell({ kind: 'side', turn, index: sides, side });
    else {
      showFirst(mine, turn, day, side);
      await others.mayCome();
      if (mine !== drawing) return;
    }
    sides += 1;
  }
  if (sides === 0) showFirst(mine, turn, day, null);
  mine.sides = sides;
  tell({ kind: 'drawn', turn, number: mine.number, sides });
}

function showFirst(of: Drawing, turn: number, day: string, side: Side | null): void {
  of.first = side;
  const { planned } = of;
  tell({ kind: 'shown', turn, planned, shown: shownOf(inputOf(planned, day), planned.changed), side });
}

/** A stage that moves nothing is only told; what is still drawn of it goes on. */
function showOnceMore(of: Drawing, { turn, number, planned, day }: Show): void {
  of.number = number;
  of.planned = planned;
  if (of.first !== null || of.sides !== null) showFirst(of, turn, day, of.first);
  if (of.sides !== null) tell({ kind: 'drawn', turn, number, sides: of.sides });
}

function messagesTaken(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

async function make({ turn, planned, file, day }: Ask<'make'>): Promise<void> {
  tell({ kind: 'made', turn, made: await madeFile(file, inputOf(planned, day), await thePress()) });
}

function started(): SeasonContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}
