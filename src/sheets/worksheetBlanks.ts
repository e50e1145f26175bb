/** What the blanks of the worksheet are called and ask for, where they are fields of a form. */
import type { Field } from '../paper/page.ts';
import type { StepPart } from '../wording/step.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';
import type { WorkTask } from './worksheetTree.ts';

/** A task with its number on the sheet. */
export type Numbered = { readonly number: number; readonly task: WorkTask };

/** Where a blank stands in its task: in which step, and at which of its parts. */
export type BlankPlace = { readonly step: number; readonly part: number | 'result' };

/** A field has the same name on every sheet of the system, whatever page it comes to stand on. */
export function stepField(
  input: SheetInput,
  { number, task }: Numbered,
  place: BlankPlace,
  part: Extract<StepPart, { kind: 'number' }>,
): Field {
  const what = input.words.terms[part.term]?.name ?? part.term;
  const values = { number: String(number), title: task.title, what, unit: part.unit };
  const isAnswer = place.part === 'result' && place.step >= task.steps.length;
  const sentence = `tips.${isAnswer ? 'answer' : 'part'}${part.unit === '' ? '' : 'In'}`;
  const name = `${task.key.replaceAll('.', '-')}-${place.step}-${place.part}`;
  return { name, tip: told(input, 'worksheet', sentence, values) };
}

/** The blanks of the last box: the supplier's word, and what it comes to. */
export function lastField(input: SheetInput, which: 'supplier' | 'lower'): Field {
  return { name: `last-${which}`, tip: told(input, 'worksheet', `tips.${which}`) };
}
