/** The start-up log: dose, readings and signs of the first weeks without fish, day by day. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { say } from '../wording/catalogue.ts';
import { noteSentence } from '../wording/note.ts';
import { amount } from '../wording/quantity.ts';
import { figureOf, shown } from './cardWords.ts';
import { paged, type Part } from './paged.ts';
import { Column, Heading, Para, TickList } from './parts/blocks.tsx';
import { Grid, type GridColumn } from './parts/Grid.tsx';
import { sideOf } from './parts/Side.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { rowsOf, told } from './sheetWords.ts';

/** Where no weeks can be promised, a sheet of six. */
const unsureDays = 42;

const rowHeight = mm(6);

export const startUpLog: SheetKind = {
  id: 'start-up-log',
  name: (input) => told(input, 'startUpLog', 'kind'),
  title,
  subject: (input) => told(input, 'startUpLog', 'pdfSubject'),
  pages,
  fits: (input) => (rowsOf(input, 'startUpDays').length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

function title(input: SheetInput): string {
  return told(input, 'startUpLog', 'title', { name: input.system.name });
}

function pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = {
    title: title(input),
    kind: told(input, 'startUpLog', 'kind'),
    subject: told(input, 'startUpLog', 'subject', { water: shown(input, 'systemWater_L') }),
  };
  const days = Array.from({ length: dayCount(input) }, (_, index) => String(index + 1));
  const draw = ({ some, at, rest }: Part<string>) =>
    sideOf(
      input,
      head,
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
        {at === 'first' ? <First input={input} /> : null}
        <Grid columns={columns(input)} rows={some.map((day) => [day])} rowHeight={rowHeight} />
        {rest === 'none' ? <Para text={told(input, 'startUpLog', 'ready')} heavy="heavy" /> : null}
      </div>,
    );
  return paged({ all: days, rowHeight, draw }, layOut);
}

/** To the latest day on which it can be ready. */
function dayCount(input: SheetInput): number {
  const last = rowsOf(input, 'startUpDays').at(-1)?.[2];
  return typeof last === 'number' ? last : unsureDays;
}

function columns(input: SheetInput): readonly GridColumn[] {
  const widths = {
    day: 11,
    date: 22,
    warm: 16,
    ammonia: 19,
    nitrite: 17,
    nitrate: 17,
    pH: 13,
    added: 20,
    note: 55,
  };
  return Object.entries(widths).map(([key, width]) => ({
    head: told(input, 'startUpLog', key),
    width: mm(width),
  }));
}

function First({ input }: { input: SheetInput }) {
  const rules = figureOf(input, 'cyclingDose_g')?.notes ?? [];
  const sentences = rules.map((note) => noteSentence(note, input.words.catalogue, input.units));
  return (
    <div style={{ display: 'flex', justifyContent: 'space-between' }}>
      <Column width={mm(112)}>
        <Heading level="H2" text={told(input, 'startUpLog', 'rules')} />
        <TickList items={[...sentences, doses(input)]} />
      </Column>
      <Column width={mm(70)}>
        <Heading level="H2" text={told(input, 'startUpLog', 'signs')} />
        {rowsOf(input, 'startUpDays').map((row) => (
          <Para text={sign(input, row)} />
        ))}
      </Column>
    </div>
  );
}

/** The first dose by each product, for whichever is in the cupboard. */
function doses(input: SheetInput): string {
  const each = rowsOf(input, 'cyclingDoseByProduct').map(([product, dose_g]) =>
    told(input, 'startUpLog', 'doseOf', {
      amount: amount(Number(dose_g), 'g', 'down', input.units),
      product: say(input.words.catalogue, `products.${product}`),
    }),
  );
  return told(input, 'startUpLog', 'dose', { doses: each.join('; ') });
}

function sign(input: SheetInput, [key, from, to]: readonly (string | number | null)[]): string {
  const words = { sign: say(input.words.catalogue, `tables.cells.${key}`) };
  if (typeof from !== 'number' || typeof to !== 'number') return told(input, 'startUpLog', 'signOpen', words);
  const days = { ...words, from: String(from), to: String(to) };
  return told(input, 'startUpLog', from === to ? 'signAt' : 'signFromTo', days);
}
