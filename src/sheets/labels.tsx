/** Labels at true scale on a grid that the keeper measured, or on plain paper to be cut. */
import type { Sheet } from '../paper/layOut.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { gridOf, labelPages, type LabelPaper } from './labelPages.tsx';
import { fixedLabels, plantTag } from './labelTexts.ts';
import { TickList } from './parts/blocks.tsx';
import { sideOf } from './parts/Side.tsx';
import { TestBars } from './parts/TestBars.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

export const labels: SheetKind = {
  id: 'labels',
  name: (input) => told(input, 'labels', 'kind'),
  title: (input) => told(input, 'labels', 'title', { name: input.system.name }),
  subject: (input) => told(input, 'labels', 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'true',
};

/** So many tags at least; what is left of the last sheet is filled with more. */
const leastTags = 8;

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  yield layOut(howTo(input));
  const tags = Array.from({ length: leastTags }, () => plantTag(input));
  yield* labelPages(
    { texts: [...fixedLabels(input), ...tags], spare: plantTag(input), title: labels.title(input) },
    sheetOf(input),
    layOut,
  );
}

function sheetOf({ system, paper }: SheetInput): LabelPaper {
  return { own: system.labels ?? null, paper };
}

function howTo(input: SheetInput): Sheet {
  const grid = gridOf(sheetOf(input));
  const own = (input.system.labels ?? null) === null ? 'plain' : 'own';
  const head = {
    title: labels.title(input),
    kind: told(input, 'labels', 'kind'),
    subject: told(input, 'labels', own, { columns: String(grid.columns), rows: String(grid.rows) }),
  };
  const ofGrid = own === 'own' ? ['how.ownPrint', 'how.ownHold'] : ['how.plainPrint', 'how.plainHold'];
  const steps = [...ofGrid, 'how.cover', 'how.where'].map((key) => told(input, 'labels', key));
  return sideOf(
    input,
    head,
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(6) }}>
      <TestBars input={input} />
      <TickList items={steps} />
    </div>,
  );
}
