/** The stage sheet: today's system beside the stages that it can grow into. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { figureName } from '../wording/figure.ts';
import { noteSentence } from '../wording/note.ts';
import { tableWords } from '../wording/table.ts';
import { Heading, Para } from './parts/blocks.tsx';
import { Grid, type GridColumn } from './parts/Grid.tsx';
import { sideOf } from './parts/Side.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { rowsOf, told } from './sheetWords.ts';

export const stageSheet: SheetKind = {
  id: 'stage-sheet',
  name: (input) => told(input, 'stage', 'kind'),
  title,
  subject: (input) => told(input, 'stage', 'pdfSubject'),
  pages,
  fits: (input) => (rowsOf(input, 'nextStages').length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

const firstWidth = mm(66);
const allWidths = mm(190);
const stages = ['anotherFloodBed', 'anotherStillBed', 'biggerTank'] as const;

function title(input: SheetInput): string {
  return told(input, 'stage', 'title', { name: input.system.name });
}

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = {
    title: title(input),
    kind: told(input, 'stage', 'kind'),
    subject: told(input, 'stage', 'subject'),
  };
  yield layOut(
    sideOf(
      input,
      head,
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(4) }}>
        <SideBySide input={input} />
        {stages.map((stage) => (
          <Stage input={input} stage={stage} />
        ))}
      </div>,
    ),
  );
}

function SideBySide({ input }: { input: SheetInput }) {
  const table = input.plan.tables.find((one) => one.key === 'nextStages');
  if (table === undefined) return null;
  const words = tableWords(table, input.words.catalogue, input.units);
  const others = (allWidths - firstWidth) / (words.head.length - 1);
  const columns: readonly GridColumn[] = words.head.map((head, index) => ({
    head,
    width: index === 0 ? firstWidth : others,
  }));
  return <Grid columns={columns} rows={words.rows} rowHeight={mm(7.4)} headHeight={mm(15)} />;
}

/** What binds there, what to mind, what to get. */
function Stage({ input, stage }: { input: SheetInput; stage: (typeof stages)[number] }) {
  const figure = input.plan.figures[`${stage}Fish`];
  if (figure === undefined) return null;
  const { catalogue } = input.words;
  const sentences = figure.notes.map((note) => noteSentence(note, catalogue, input.units));
  const count = figure.value === null ? told(input, 'stage', 'supplier') : String(figure.value);
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={`${figureName(figure.key, input.system.beds.length, catalogue)}: ${count}`} />
      <Para text={sentences.join(' ')} />
    </div>
  );
}
