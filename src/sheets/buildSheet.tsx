/** The build sheet: parts, holes, and the checks before the first water. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../paper/layOut.ts';
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { tableWords, type TableWords } from '../wording/table.ts';
import { flowed } from './flowed.ts';
import { Heading, Para, TickList } from './parts/blocks.tsx';
import { Grid, type GridColumn } from './parts/Grid.tsx';
import { sideOf } from './parts/Side.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

const rowHeight = mm(6.4);

export const buildSheet: SheetKind = {
  id: 'build-sheet',
  name: (input) => told(input, 'build', 'kind'),
  title,
  subject: (input) => told(input, 'build', 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'fit',
};

function title(input: SheetInput): string {
  return told(input, 'build', 'title', { name: input.system.name });
}

/** A row of the parts or of the holes. */
type Listed = { readonly list: 'parts' | 'holes'; readonly row: readonly string[] };

/** Parts and holes first, then everything to be checked, tick by tick, on as many pages as it takes. */
async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  yield* flowed(
    listed(input),
    (items, rest) => side(input, <Lists input={input} items={items} rest={rest} />),
    layOut,
  );
  yield* flowed(checks(input), (items) => side(input, <Checks input={input} items={items} />), layOut);
}

function side(input: SheetInput, content: JSXNode): Sheet {
  const head = {
    title: title(input),
    kind: told(input, 'build', 'kind'),
    subject: told(input, 'build', 'subject'),
  };
  return sideOf(input, head, content);
}

function listed(input: SheetInput): readonly Listed[] {
  return (['parts', 'holes'] as const).flatMap((list) =>
    (wordsOf(input, list)?.rows ?? []).map((row) => ({ list, row })),
  );
}

function wordsOf(input: SheetInput, key: Listed['list']): TableWords | null {
  const table = input.plan.tables.find((one) => one.key === key);
  return table === undefined ? null : tableWords(table, input.words.catalogue, input.units);
}

type ListsProps = {
  readonly input: SheetInput;
  readonly items: readonly Listed[];
  readonly rest: 'none' | 'more';
};

function Lists({ input, items, rest }: ListsProps) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(4) }}>
      {(['parts', 'holes'] as const).map((key) => {
        const words = wordsOf(input, key);
        const rows = items.filter(({ list }) => list === key).map(({ row }) => row);
        return words === null || rows.length === 0 ? null : (
          <List input={input} words={{ ...words, rows }} listed={key} />
        );
      })}
      {rest === 'more' || wordsOf(input, 'holes')?.rows.length === 0 ? null : (
        <Para text={told(input, 'build', 'holesNote')} />
      )}
      {rest === 'more' ? null : <Para text={told(input, 'build', 'stand')} heavy="heavy" />}
    </div>
  );
}

type ListProps = {
  readonly input: SheetInput;
  readonly words: TableWords;
  readonly listed: 'parts' | 'holes';
};

const widths = {
  parts: [42, 41, 17, 22, 22, 21, 25],
  holes: [62, 60, 18, 22, 28],
};

function List({ input, words, listed }: ListProps) {
  const columns: readonly GridColumn[] = words.head.map((head, index) => ({
    head,
    width: mm(widths[listed][index] ?? 20),
  }));
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={told(input, 'build', listed)} />
      <Grid columns={columns} rows={words.rows} rowHeight={rowHeight} />
    </div>
  );
}

/** What the care routine says of materials, then of the start, then of safety; children's part is elsewhere. */
function checks(input: SheetInput): readonly string[] {
  const topics = ['materials', 'safety', 'startUp'];
  return topics.flatMap((topic) => input.care.filter((task) => task.topic === topic).map((task) => task.do));
}

function Checks({ input, items }: { input: SheetInput; items: readonly string[] }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={told(input, 'build', 'checks')} aside={told(input, 'build', 'checksBy')} />
      <TickList items={items} />
    </div>
  );
}
