/** The tasks of a worksheet for one level, and the same with nobody's numbers in them. */
import type { Asked } from '../../core/workshop/askedSteps.ts';
import { figureName } from '../../wording/figure.ts';
import { digitsOf, quantityText } from '../../wording/step.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { handoutLine, type LineIn, type PartIn } from './handoutLine.ts';

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
  const digits = sheetDigits(input);
  const tasks = input.asked.map(({ key, steps }): HandoutTask => {
    const lines = steps.map((step, i) =>
      handoutLine(input, { key, step, at: i + 1 === steps.length ? 'last' : 'inside', digits }),
    );
    return { key, title: figureName(key, input.system.beds.length, input.words.catalogue), lines };
  });
  return { tasks, containers: containersOf(input, digits) };
}

/** Of all numbers on the sheet, so that a number is the same wherever it stands. */
export function sheetDigits({ asked }: HandoutInput): number {
  const all = asked.flatMap(({ steps }) => steps);
  return Math.max(...all.map((step) => digitsOf(step, fewestDigits)));
}

/** Tank and beds, each with all measures that any of its tasks wants. */
function containersOf(input: HandoutInput, digits: number): readonly GivenContainer[] {
  const found = new Map<string, Given[]>();
  for (const asked of input.asked) {
    const of = containerName(input, asked);
    const measures = asked.measures.map((one, i): Given => {
      const name = input.words.terms[one.term]?.name ?? one.term;
      return { slot: givenSlot(asked.key, i), name, text: quantityText(one, digits) };
    });
    if (measures.length > 0) found.set(of, [...(found.get(of) ?? []), ...measures]);
  }
  return [...found].map(([of, measures]) => ({ of, measures }));
}

export function givenSlot(key: string, at: number): string {
  return `given-${key}-${at}`;
}

function containerName(input: HandoutInput, { key }: Asked): string {
  const [, bed = ''] = /^bed(\d+)\./.exec(key) ?? [];
  if (bed === '') return handoutWords(input, 'tank');
  return handoutWords(input, input.system.beds.length > 1 ? 'bedNumber' : 'bed', { bed });
}

/** Stands in the slots while a sheet is laid out for everybody; nobody's sheet shows it. */
export const sample = 'A';

/**
 * The same worksheet with nothing of anybody's in it, for a layout that all with its shape can share.
 * @param lines how many of them the name takes
 */
export function sampleOf(input: HandoutInput, lines: number): HandoutInput {
  const { tasks, containers } = workOf(input);
  const asked = [...input.asked];
  known.set(asked, {
    tasks: tasks.map((task) => ({ ...task, lines: task.lines.map(lineWithSample) })),
    containers: containers.map(({ of, measures }) => {
      return { of, measures: measures.map((one) => ({ ...one, text: sample })) };
    }),
  });
  return { ...whoseSample(input, lines), asked };
}

/** Nobody's name, on so many lines, and nobody's team and number. */
export function whoseSample(input: HandoutInput, lines: number): HandoutInput {
  const name = Array.from({ length: lines }, () => sample).join('\n');
  return { ...input, name, team: sample, number: sample, typed: input.typed && sample };
}

function lineWithSample({ groups, result }: LineIn): LineIn {
  return { groups: groups.map((group) => group.map(withSample)), result: { ...result, text: sample } };
}

function withSample(part: PartIn): PartIn {
  return part.kind === 'number' && part.is !== 'fixed' ? { ...part, text: sample } : part;
}

export function numberText(input: HandoutInput): string {
  return input.number ?? handoutWords(input, 'ownContainers');
}

/**
 * What a laid-out worksheet depends on beside the texts of its slots: two with the same shape can share one layout.
 */
export function handoutShape(input: HandoutInput): string {
  const { session, paper, units, shared } = input;
  const empty = sampleOf(input, 1);
  return JSON.stringify([
    session,
    paper,
    units,
    shared,
    empty.typed,
    handoutTasks(empty),
    givenContainers(empty),
  ]);
}
