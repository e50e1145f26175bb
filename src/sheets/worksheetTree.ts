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
  return keys.flatMap((key) => taskOf(input, key));
}

function taskOf(input: SheetInput, key: string): readonly WorkTask[] {
  const figure = input.plan.figures[key];
  const last = figure?.steps.at(-1);
  if (figure === undefined || figure.value === null || last === undefined) return [];
  const { catalogue, terms } = input.words;
  const inParts = (step: Step): StepParts => stepParts(step, catalogue, terms);
  const byHand = figure.steps.every((step) => step.byHand === 'yes');
  return [
    {
      key,
      title: figureName(key, input.system.beds.length, catalogue),
      steps: byHand ? figure.steps.map(inParts) : [],
      result: byHand ? null : inParts(last).result,
      hint: byHand ? null : hintOf(input, key, last),
    },
  ];
}

function hintOf(input: SheetInput, key: string, last: Step): string {
  const wanted = last.symbols.find(({ term }) => term === 'tableFishTank');
  if (wanted !== undefined) {
    const amountWanted = amount(wanted.value, wanted.unit, 'up', 'metric');
    return told(input, 'worksheet', 'hints.fishByTank', { wanted: amountWanted });
  }
  return told(input, 'worksheet', key.endsWith('.placesSquare') ? 'hints.placesSquare' : 'hints.other');
}
