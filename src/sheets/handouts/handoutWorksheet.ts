/** Somebody's worksheet, or its answers: on one page, or on as many as its containers take. */
import type { Page } from '../../paper/page.ts';
import { flowed } from '../flowed.ts';
import type { LayOut } from '../sheetKind.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutTasks } from './handoutTasks.ts';
import { worksheetPage } from './WorksheetPage.tsx';

export function handoutWorksheet(
  input: HandoutInput,
  view: HandoutView,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const numbered = handoutTasks(input).map((task, index) => ({ number: index + 1, task }));
  return flowed(numbered, (tasks, rest, at) => worksheetPage(input, { view, tasks, rest, at }), layOut);
}
