/** The worked example in words: what the tape said, every step with its numbers, and what this example cannot show. */
import { figureName } from '../../wording/figure.ts';
import type { ClassInput } from './classSheet.tsx';
import { type HandoutInput, handoutWords } from './handout.ts';
import type { LineIn, PartIn } from './handoutLine.ts';
import { givenContainers, handoutTasks } from './handoutTasks.ts';

export type ExampleTask = { readonly title: string; readonly lines: readonly string[] };

export function exampleTasks({ example }: ClassInput): readonly ExampleTask[] {
  const { input, lacks } = example();
  const tasks = handoutTasks(input).map((task, at): ExampleTask => {
    return { title: `${at + 1}. ${task.title}`, lines: task.lines.map(lineOf) };
  });
  return [...lacking(input, lacks), ...measures(input), ...tasks];
}

function measures(input: HandoutInput): readonly ExampleTask[] {
  const lines = givenContainers(input).map(({ of, measures: given }) => {
    const said = given.map(({ name, text }) => `${name} ${text}`).join(', ');
    return `${of}: ${said}`;
  });
  return lines.length === 0 ? [] : [{ title: handoutWords(input, 'facilitator.measures'), lines }];
}

/** Every number stands there, as on a key. */
function lineOf({ groups, result }: LineIn): string {
  return `${groups.map((parts) => parts.map(said).join('')).join(' ')} = ${said(result)}`;
}

function said(part: PartIn): string {
  if (part.kind === 'word') return part.text;
  return [part.name, part.text, part.behind].filter((text) => text !== '').join(' ');
}

function lacking(input: HandoutInput, keys: readonly string[]): readonly ExampleTask[] {
  if (keys.length === 0) return [];
  const { catalogue } = input.words;
  const figures = keys.map((key) => figureName(key, input.system.beds.length, catalogue)).join(', ');
  return [{ title: handoutWords(input, 'facilitator.lacks', { figures }), lines: [] }];
}
