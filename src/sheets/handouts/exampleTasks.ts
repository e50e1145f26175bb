/** The worked example in words: what the tape said, every step with its numbers, and what this example cannot show. */
import { figureName } from '../../wording/figure.ts';
import type { StepPart, StepParts } from '../../wording/step.ts';
import type { WorkTask } from '../worksheetTree.ts';
import type { ClassInput } from './classSheet.tsx';
import { type HandoutInput, handoutWords } from './handout.ts';
import { givenContainers, handoutTasks } from './handoutTasks.ts';

export type ExampleTask = { readonly title: string; readonly lines: readonly string[] };

export function exampleTasks({ example }: ClassInput): readonly ExampleTask[] {
  const { input, lacks } = example();
  const tasks = handoutTasks(input).map((task, at): ExampleTask => {
    return { title: `${at + 1}. ${task.title}`, lines: linesOf(task) };
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

/** Of a step that is too long for a pencil the result alone. */
function linesOf({ steps, result }: WorkTask): readonly string[] {
  return result === null ? steps.map(lineOf) : [result.kind === 'number' ? result.text : ''];
}

function lineOf({ parts, result }: StepParts): string {
  return `${parts.map(said).join('')} = ${said(result)}`;
}

function said(part: StepPart): string {
  return part.kind === 'number' && part.name !== '' ? `${part.name} ${part.text}` : part.text;
}

function lacking(input: HandoutInput, keys: readonly string[]): readonly ExampleTask[] {
  if (keys.length === 0) return [];
  const { catalogue } = input.words;
  const figures = keys.map((key) => figureName(key, input.system.beds.length, catalogue)).join(', ');
  return [{ title: handoutWords(input, 'facilitator.lacks', { figures }), lines: [] }];
}
