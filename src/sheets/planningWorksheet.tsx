/** The planning worksheet: blank to fill in, the same as a worked example, and its answers. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { amount, lengthUnit_mm } from '../wording/quantity.ts';
import { card } from './cardWords.ts';
import { flowed } from './flowed.ts';
import { Blank } from './parts/Blank.tsx';
import { Heading } from './parts/blocks.tsx';
import { rule, safe, size, weight } from './parts/look.ts';
import { SectionPicture } from './parts/SectionPicture.tsx';
import { sideOf } from './parts/Side.tsx';
import { type View, WorkTaskBox } from './parts/WorkTaskBox.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';
import { lastField, type Numbered } from './worksheetBlanks.ts';
import { worksheetTree } from './worksheetTree.ts';

const views: readonly View[] = ['blank', 'worked', 'key'];

export const planningWorksheet: SheetKind = {
  id: 'planning-worksheet',
  name: (input) => told(input, 'worksheet', 'kind'),
  title,
  subject: (input) => told(input, 'worksheet', 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'fit',
};

function title(input: SheetInput): string {
  return told(input, 'worksheet', 'title', { name: input.system.name });
}

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  for (const view of views) yield* pagesOf(input, view, layOut);
}

/** The tasks of one view, as many on a page as it has room for. */
function pagesOf(input: SheetInput, view: View, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = {
    title: title(input),
    kind: told(input, 'worksheet', 'kind'),
    subject: told(input, 'worksheet', `views.${view}`),
  };
  const tasks: readonly Numbered[] = worksheetTree(input).map((task, index) => ({ number: index + 1, task }));
  return flowed(
    tasks,
    (some, rest, at) =>
      sideOf(
        input,
        head,
        <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
          {at === 'first' && view === 'blank' ? <WetMedia input={input} /> : null}
          {some.map((numbered) => (
            <WorkTaskBox input={input} numbered={numbered} view={view} />
          ))}
          {rest === 'none' && view === 'blank' ? <LastBox input={input} /> : null}
        </div>,
      ),
    layOut,
  );
}

/** What "wet media" means, drawn on the system itself, without a number. */
function WetMedia({ input }: { input: SheetInput }) {
  const labels = {
    'tank.full': { text: told(input, 'worksheet', 'labels.full'), heavy: 'text' },
    'bed.0': { text: told(input, 'worksheet', 'labels.wetMedia'), heavy: 'heavy' },
  } as const;
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading
        level="H2"
        text={told(input, 'worksheet', 'wetMedia')}
        aside={told(input, 'worksheet', 'units')}
      />
      <SectionPicture
        section={input.plan.section}
        width={safe.width}
        height={mm(52)}
        labels={labels}
        alt={told(input, 'worksheet', 'drawing')}
        unit_mm={lengthUnit_mm(input.units)}
        barText={(real_mm) => card(input, 'bar', { length: amount(real_mm, 'mm', 'nearest', input.units) })}
      />
    </div>
  );
}

/** The supplier's word has the last box. */
function LastBox({ input }: { input: SheetInput }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        border: `${rule.box}px solid black`,
        padding: mm(3),
        rowGap: mm(3),
        fontWeight: weight.heavy,
        fontSize: size.text,
      }}
    >
      <LastLine input={input} which="supplier" />
      <LastLine input={input} which="lower" />
    </div>
  );
}

/** Stands in a sentence where its blank comes. */
const gap = '\n';

function LastLine({ input, which }: { input: SheetInput; which: 'supplier' | 'lower' }) {
  const [before = '', after = ''] = told(input, 'worksheet', which, { blank: gap }).split(gap);
  return (
    <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', lineHeight: 1.3 }}>
      <div style={{ display: 'flex', marginRight: mm(1.2) }}>{before.trim()}</div>
      <Blank unit={after.trim()} field={lastField(input, which)} />
    </div>
  );
}
