/** The tasks of a worksheet for one level, and every text in it that is not the same for everybody. */
import type { Asked } from '../../core/workshop/askedSteps.ts';
import { figureName } from '../../wording/figure.ts';
import { digitsOf, numberPart } from '../../wording/step.ts';
import { type HandoutInput, type HandoutView, handoutWords } from './handout.ts';
import { handoutLine, type LineIn, type NumberIn, type PartIn } from './handoutLine.ts';

export type HandoutTask = { readonly key: string; readonly title: string; readonly lines: readonly LineIn[] };

/** A measure of somebody's own container: what it is, and what the tape said. */
export type Given = { readonly slot: string; readonly name: string; readonly text: string };
export type GivenContainer = { readonly of: string; readonly measures: readonly Given[] };

type Work = { readonly tasks: readonly HandoutTask[]; readonly containers: readonly GivenContainer[] };

/** No tape tells more. A step that counts may want some more of them, and then all have them. */
const fewestDigits = 4;

/** A worksheet asks for its tasks several times over. */
const known = new WeakMap<HandoutInput['asked'], Work>();

function workOf(input: HandoutInput): Work {
  const work = known.get(input.asked) ?? madeOf(input);
  known.set(input.asked, work);
  return work;
}

export function handoutTasks(input: HandoutInput): readonly HandoutTask[] {
  return workOf(input).tasks;
}

/** What the tasks start from, container by container. */
export function givenContainers(input: HandoutInput): readonly GivenContainer[] {
  return workOf(input).containers;
}

function madeOf(input: HandoutInput): Work {
  const steps = input.asked.flatMap((one) => one.steps);
  const digits = Math.max(...steps.map((step) => digitsOf(step, fewestDigits)));
  const tasks = input.asked.map(({ key, steps: own }): HandoutTask => {
    const lines = own.map((step, i) =>
      handoutLine(input, { key, step, at: i + 1 === own.length ? 'last' : 'inside', digits }),
    );
    return { key, title: figureName(key, input.system.beds.length, input.words.catalogue), lines };
  });
  return { tasks, containers: containersOf(input, digits) };
}

/** Tank and beds, each with all measures that any of its tasks wants. */
function containersOf(input: HandoutInput, digits: number): readonly GivenContainer[] {
  const found = new Map<string, Given[]>();
  for (const asked of input.asked) {
    const of = containerName(input, asked);
    const measures = asked.measures.map((one, i): Given => {
      const name = input.words.terms[one.term]?.name ?? one.term;
      return { slot: `given-${asked.key}-${i}`, name, text: numberPart(one, name, digits).text };
    });
    if (measures.length > 0) found.set(of, [...(found.get(of) ?? []), ...measures]);
  }
  return [...found].map(([of, measures]) => ({ of, measures }));
}

function containerName(input: HandoutInput, { key }: Asked): string {
  const [, bed = ''] = /^bed(\d+)\./.exec(key) ?? [];
  if (bed === '') return handoutWords(input, 'tank');
  return handoutWords(input, input.system.beds.length > 1 ? 'bedNumber' : 'bed', { bed });
}

/** Stands in the slots while a sheet is laid out for everybody; nobody's sheet shows it. */
const sample = 'A';

/**
 * The same worksheet with nothing of anybody's in it, for a layout that all with its shape can share.
 * @param lines how many of them the name takes
 */
export function sampleOf(input: HandoutInput, lines: number): HandoutInput {
  const name = Array.from({ length: lines }, () => sample).join('\n');
  const { tasks, containers } = workOf(input);
  const asked = [...input.asked];
  known.set(asked, {
    tasks: tasks.map((task) => ({ ...task, lines: task.lines.map(lineWithSample) })),
    containers: containers.map(({ of, measures }) => {
      return { of, measures: measures.map((one) => ({ ...one, text: sample })) };
    }),
  });
  return { ...input, asked, name, team: sample, number: sample, typed: input.typed && sample };
}

function lineWithSample({ groups, result }: LineIn): LineIn {
  return { groups: groups.map((group) => group.map(withSample)), result: { ...result, text: sample } };
}

function withSample(part: PartIn): PartIn {
  return part.kind === 'number' && part.is !== 'fixed' ? { ...part, text: sample } : part;
}

/** All texts that differ from person to person, by their slots. */
export function handoutValues(input: HandoutInput, view: HandoutView): Readonly<Record<string, string>> {
  const values: Record<string, string> = { name: input.name, team: input.team, number: numberText(input) };
  if (input.typed !== null) values['typed'] = input.typed;
  for (const { measures } of givenContainers(input))
    for (const { slot, text } of measures) values[slot] = text;
  for (const { slot, is, text } of numbersOf(input))
    if (is === 'told' || (is === 'open' && view === 'key')) values[slot] = text;
  return values;
}

function numbersOf(input: HandoutInput): readonly NumberIn[] {
  const all = handoutTasks(input).flatMap(({ lines }) => lines);
  return all.flatMap(({ groups, result }) => [
    ...groups.flat().filter((part) => part.kind === 'number'),
    result,
  ]);
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
  const empty = sampleOf(input, 1);
  return JSON.stringify([input.shared, empty.typed, handoutTasks(empty), givenContainers(empty)]);
}
