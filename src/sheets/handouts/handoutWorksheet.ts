/** Somebody's worksheet, or its answers: on one page, or on as many as its containers take. */
import { overflows } from '../../paper/overflows.ts';
import type { Page } from '../../paper/page.ts';
import { flowed } from '../flowed.ts';
import type { LayOut } from '../sheetKind.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutTasks } from './handoutTasks.ts';
import { worksheetPage, type WorksheetPart } from './WorksheetPage.tsx';

type Way = Pick<WorksheetPart, 'spacing' | 'measuring'>;

/** On one page, from the most to the least that it asks room for. */
const onOnePage: Readonly<Record<HandoutView, readonly Way[]>> = {
  blank: [
    { spacing: 'usual', measuring: 'with' },
    { spacing: 'tight', measuring: 'with' },
    { spacing: 'tight', measuring: 'without' },
  ],
  key: [
    { spacing: 'usual', measuring: 'without' },
    { spacing: 'tight', measuring: 'without' },
  ],
};

const roomiest: Way = { spacing: 'roomy', measuring: 'with' };

/** Children have few tasks and large letters; for others it is not worth the try. */
function hasRoom({ session }: HandoutInput, view: HandoutView): boolean {
  return view === 'blank' && session.level === 'primary';
}

/** With blanks for a container of the class where there is room for them; where one page is too little, with room to reckon. */
export async function* handoutWorksheet(
  input: HandoutInput,
  view: HandoutView,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const tasks = numbered(input);
  for (const way of [...(hasRoom(input, view) ? [roomiest] : []), ...onOnePage[view]]) {
    const page = await layOut(worksheetPage(input, { view, tasks, rest: 'none', at: 'first', ...way }));
    if (overflows(page).length === 0) return yield page;
  }
  const fuller = view === 'key' ? [] : (['roomy', 'usual'] as const);
  for (const spacing of fuller) {
    const pages = await pagesOf(input, view, { spacing, measuring: 'with' }, layOut);
    // Fewer than two there cannot be.
    if (pages.length === 2 && cut(pages) === 0) return yield* pages;
  }
  yield* await pagesOf(input, view, { spacing: 'usual', measuring: 'without' }, layOut);
}

function numbered(input: HandoutInput): WorksheetPart['tasks'] {
  return handoutTasks(input).map((task, index) => ({ number: index + 1, task }));
}

async function pagesOf(
  input: HandoutInput,
  view: HandoutView,
  way: Way,
  layOut: LayOut,
): Promise<readonly Page[]> {
  const pages: Page[] = [];
  const draw = (tasks: WorksheetPart['tasks'], rest: WorksheetPart['rest'], at: WorksheetPart['at']) =>
    worksheetPage(input, { view, tasks, rest, at, ...way });
  for await (const page of flowed(numbered(input), draw, layOut)) pages.push(page);
  return pages;
}

function cut(pages: readonly Page[]): number {
  return pages.reduce((sum, page) => sum + overflows(page).length, 0);
}
