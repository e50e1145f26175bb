/** The planning worksheet as one tree: tasks from the plan's own steps. Its three views only differ in what they show. */
import type { Step } from '../core/plan/figure.ts';
import { figureName } from '../wording/figure.ts';
import { amount } from '../wording/quantity.ts';
import { type StepParts, stepParts } from '../wording/step.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

export type WorkTask = {
  readonly key: string;
  readonly title: string;
  /** Steps that a pencil can follow. */
  readonly steps: readonly StepParts[];
  /** Where a step is too long for a pencil, only its result is asked for, with a hint how to come by it. */
  readonly result: StepParts['result'] | null;
  readonly hint: string | null;
};

/** From container to fish, feed, pump and plants. */
const first = ['wetMedia_L', 'tankFull_L', 'tankLow_L', 'fishByBed', 'fishByTank', 'fishByDensity'];
const then = ['fishPlanned', 'feed_g_d', 'turnover'];

/** All tasks of a system, in the order in which they are worked. */
export function worksheetTree(input: SheetInput): readonly WorkTask[] {
  const beds = input.system.beds.map((_, index) => index + 1);
  const keys = [
    ...beds.map((number) => `bed${number}.wetMedia_L`),
    ...first.filter((key) => key !== 'wetMedia_L' || beds.length > 1),
    ...then,
    ...beds.map((number) => `bed${number}.placesSquare`),
  ];
  return keys.flatMap((key) => {
    const figure = input.plan.figures[key];
    if (figure === undefined || figure.value === null || figure.steps.length === 0) return [];
    return [taskOf(input, { key, steps: figure.steps })];
  });
}

type Planned = Pick<SheetInput, 'system' | 'words'>;

/** A figure with its steps as a task; it has one at least. */
function taskOf(
  input: Planned,
  { key, steps }: { readonly key: string; readonly steps: readonly Step[] },
): WorkTask {
  const { catalogue, terms } = input.words;
  const inParts = (step: Step): StepParts => stepParts(step, catalogue, terms);
  const byHand = steps.every((step) => step.byHand === 'yes');
  const last = steps.at(-1);
  if (last === undefined) throw new RangeError(`${key} has no step`);
  return {
    key,
    title: figureName(key, input.system.beds.length, catalogue),
    steps: byHand ? steps.map(inParts) : [],
    result: byHand ? null : inParts(last).result,
    hint: byHand ? null : hintOf(input, key, last),
  };
}

function hintOf(input: Planned, key: string, last: Step): string {
  const wanted = last.symbols.find(({ term }) => term === 'tableFishTank');
  if (wanted !== undefined) {
    const amountWanted = amount(wanted.value, wanted.unit, 'up', 'metric');
    return told(input, 'worksheet', 'hints.fishByTank', { wanted: amountWanted });
  }
  return told(input, 'worksheet', key.endsWith('.placesSquare') ? 'hints.placesSquare' : 'hints.other');
}
