/** The tasks of a worksheet for one level, and every text in it that is not the same for everybody. */
import type { StepPart } from '../../wording/step.ts';
import { taskOf, type WorkTask } from '../worksheetTree.ts';
import { type HandoutInput, type HandoutView, handoutWords } from './handout.ts';

/** Numbers of the trade are printed; everything else is the person's own to fill in. */
const ofTheTrade: ReadonlySet<string> = new Set([
  ...['mediaPerFish', 'mediaPerFishRule', 'waterPerFish', 'waterPerFishRule', 'densityCap', 'ration'],
  ...[
    'voidFraction',
    'mostVoids',
    'spacing',
    'tankPerBed',
    'massAdult',
    'pumpFlow',
    'timeOn',
    'equalContainers',
  ],
  'belowDrain',
]);

/** A worksheet asks for its tasks several times over. */
const known = new WeakMap<HandoutInput['asked'], readonly WorkTask[]>();

export function handoutTasks(input: HandoutInput): readonly WorkTask[] {
  const tasks = known.get(input.asked) ?? input.asked.map((asked) => taskOf(input, asked));
  known.set(input.asked, tasks);
  return tasks;
}

/** Stands in the slots while a sheet is laid out for everybody; nobody's sheet shows it. */
const sample = 'A';

/**
 * The same worksheet with nothing of anybody's in it, for a layout that all with its shape can share.
 * @param lines how many of them the name takes
 */
export function sampleOf(input: HandoutInput, lines: number): HandoutInput {
  const name = Array.from({ length: lines }, () => sample).join('\n');
  const tasks = handoutTasks(input).map((task): WorkTask => {
    const steps = task.steps.map(({ parts, result }) => {
      return { parts: parts.map(withSample), result: withSample(result) };
    });
    return { ...task, steps, result: task.result && withSample(task.result) };
  });
  const asked = [...input.asked];
  known.set(asked, tasks);
  return { ...input, asked, name, team: sample, number: sample };
}

function withSample(part: StepPart): StepPart {
  return part.kind === 'number' && isOpen(part) ? { ...part, text: sample } : part;
}

/** A measure of somebody's own container: what it is, and what the tape said. */
export type Given = { readonly slot: string; readonly name: string; readonly text: string };
export type GivenContainer = { readonly of: string; readonly measures: readonly Given[] };

/** What the tasks about litres start from, container by container. */
export function givenContainers(input: HandoutInput): readonly GivenContainer[] {
  const tasks = handoutTasks(input);
  const several = input.system.beds.length > 1;
  return tasks.flatMap(({ key, steps }) => {
    const bed = /^bed(\d+)\.wetMedia_L$/.exec(key)?.[1];
    if (bed === undefined && key !== 'tankFull_L') return [];
    const of =
      bed === undefined
        ? handoutWords(input, 'tank')
        : handoutWords(input, several ? 'bedNumber' : 'bed', { bed });
    const measures = (steps[0]?.parts ?? []).flatMap((part, at): readonly Given[] =>
      part.kind === 'number' && part.name !== '' && !ofTheTrade.has(part.term)
        ? [{ slot: `given-${key}-${at}`, name: part.name, text: part.text }]
        : [],
    );
    return measures.length === 0 ? [] : [{ of, measures }];
  });
}

/** Whether a number stands on the worksheet as a blank, and on the key as an answer. */
export function isOpen({ term }: NumberPart): boolean {
  return !ofTheTrade.has(term);
}

export type NumberPart = Extract<StepPart, { kind: 'number' }>;

/** The name of a slot for one number of a task. */
export function answerSlot(task: WorkTask, step: number, part: number | 'result'): string {
  return `${task.key}-${step}-${part}`;
}

/** All texts that differ from person to person, by their slots. */
export function handoutValues(input: HandoutInput, view: HandoutView): Readonly<Record<string, string>> {
  const values: Record<string, string> = { name: input.name, team: input.team, number: numberText(input) };
  for (const { measures } of givenContainers(input))
    for (const { slot, text } of measures) values[slot] = text;
  if (view === 'blank') return values;
  for (const task of handoutTasks(input)) {
    for (const [at, { parts, result }] of linesOf(task).entries()) {
      for (const [i, part] of parts.entries())
        if (part.kind === 'number' && isOpen(part)) values[answerSlot(task, at + 1, i + 1)] = part.text;
      if (result.kind === 'number') values[answerSlot(task, at + 1, 'result')] = result.text;
    }
  }
  return values;
}

/** The lines of a task: its steps, or the one line that only asks for the result. */
export function linesOf({ steps, result, hint }: WorkTask): readonly {
  readonly parts: readonly StepPart[];
  readonly result: StepPart;
}[] {
  if (result === null) return steps;
  return [{ parts: hint === null ? [] : [{ kind: 'word', text: hint }], result }];
}

export function numberText(input: HandoutInput): string {
  return input.number ?? handoutWords(input, 'ownContainers');
}

/**
 * What a laid-out worksheet depends on beside the texts of its slots: two with the same shape can share one layout.
 */
export function handoutShape(input: HandoutInput, view: HandoutView): string {
  const { session, paper, units } = input;
  const shape = shapes.get(input.asked) ?? shapeOf(input);
  shapes.set(input.asked, shape);
  return `${view} ${paper} ${units} ${JSON.stringify(session)} ${shape}`;
}

/** Both views of a worksheet ask for it, and each once for every further line of the name. */
const shapes = new WeakMap<HandoutInput['asked'], string>();

function shapeOf(input: HandoutInput): string {
  const tasks = handoutTasks(input).map((task) => [
    task.title,
    ...linesOf(task).map(({ parts, result }) => [
      ...parts.map((part) =>
        part.kind === 'word' ? part.text : isOpen(part) ? [part.name, part.unit] : [part.name, part.text],
      ),
      result.kind === 'number' ? result.unit : '',
    ]),
  ]);
  const given = givenContainers(input).map(({ of, measures }) => [of, ...measures.map(({ name }) => name)]);
  return JSON.stringify([tasks, given]);
}
