/** Somebody's worksheet, or its answers: on one page, or on as many as its containers take. */
import { overflows } from '../../paper/overflows.ts';
import type { Page } from '../../paper/page.ts';
import { flowed } from '../flowed.ts';
import type { LayOut } from '../sheetKind.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutTasks } from './handoutTasks.ts';
import { worksheetPage, type WorksheetPart } from './WorksheetPage.tsx';

/** With blanks for a container of the class where there is room for them. */
export async function* handoutWorksheet(
  input: HandoutInput,
  view: HandoutView,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const fuller = view === 'key' ? null : await pagesOf(input, view, 'with', layOut);
  // On one page there is room, so the other layout need not be tried.
  if (fuller?.length === 1 && cut(fuller) === 0) return yield* fuller;
  const plain = await pagesOf(input, view, 'without', layOut);
  yield* fuller !== null && fuller.length === plain.length && cut(fuller) <= cut(plain) ? fuller : plain;
}

async function pagesOf(
  input: HandoutInput,
  view: HandoutView,
  measuring: WorksheetPart['measuring'],
  layOut: LayOut,
): Promise<readonly Page[]> {
  const numbered = handoutTasks(input).map((task, index) => ({ number: index + 1, task }));
  const pages: Page[] = [];
  const draw = (tasks: typeof numbered, rest: WorksheetPart['rest'], at: WorksheetPart['at']) =>
    worksheetPage(input, { view, tasks, rest, at, measuring });
  for await (const page of flowed(numbered, (some, rest, at) => draw([...some], rest, at), layOut))
    pages.push(page);
  return pages;
}

function cut(pages: readonly Page[]): number {
  return pages.reduce((sum, page) => sum + overflows(page).length, 0);
}
