/** The sitter's sheet: one packet a day, what to look at, a line for every visit, whom to call. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { dayText } from '../wording/date.ts';
import { figureOf, lookFor, shown, shownRange } from './cardWords.ts';
import { paged, type Part } from './paged.ts';
import { Column, Heading, Para, TickList } from './parts/blocks.tsx';
import { cautions, Emergencies } from './parts/Emergencies.tsx';
import { Grid, type GridColumn } from './parts/Grid.tsx';
import { rule, safe, size, weight } from './parts/look.ts';
import { sideOf } from './parts/Side.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { rowsOf, told } from './sheetWords.ts';

/** Where no dates are known, lines for a week, for the pen. */
const blankDays = 7;

const rowHeight = mm(6.2);

export const sittersSheet: SheetKind = {
  id: 'sitters-sheet',
  name: (input) => told(input, 'sitter', 'kind'),
  title,
  subject: (input) => told(input, 'sitter', 'pdfSubject'),
  pages,
  fits: (input) => ((input.system.fish?.present ?? 0) > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

function title(input: SheetInput): string {
  return told(input, 'sitter', 'title', { name: input.system.name });
}

function pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = { title: title(input), kind: told(input, 'sitter', 'kind'), subject: dates(input) };
  const draw = ({ some, at, rest }: Part<string>) =>
    sideOf(
      input,
      head,
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(4) }}>
        {at === 'first' ? <First input={input} /> : null}
        <Grid columns={columns(input)} rows={some.map((day) => [day])} rowHeight={rowHeight} />
        {rest === 'none' ? <Cautions input={input} /> : null}
      </div>,
    );
  return paged({ all: days(input), rowHeight, draw }, layOut);
}

function dates(input: SheetInput): string {
  const absence = input.system.absence ?? null;
  if (absence === null) return told(input, 'sitter', 'datesBlank');
  const { catalogue } = input.words;
  return told(input, 'sitter', 'dates', {
    from: dayText(absence.from, catalogue),
    to: dayText(absence.to, catalogue),
  });
}

function days(input: SheetInput): readonly string[] {
  const told = rowsOf(input, 'absenceDays').map(([day]) => dayText(String(day), input.words.catalogue));
  return told.length > 0 ? told : Array.from({ length: blankDays }, () => '');
}

function columns(input: SheetInput): readonly GridColumn[] {
  const widths = { day: 30, time: 18, packet: 20, fish: 24, water: 24, level: 24, note: 50 };
  return Object.entries(widths).map(([key, width]) => ({
    head: told(input, 'sitter', `columns.${key}`),
    width: mm(width),
  }));
}

function First({ input }: { input: SheetInput }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(4) }}>
      <div style={{ display: 'flex', justifyContent: 'space-between' }}>
        <Packet input={input} />
        <Column width={mm(112)}>
          <Heading level="H2" text={told(input, 'sitter', 'visit')} />
          <TickList items={visitTasks(input)} />
        </Column>
      </div>
      <Emergencies input={input} />
    </div>
  );
}

/** What the routine gives to whoever sits, then what to look for. */
function visitTasks(input: SheetInput): readonly string[] {
  const own = input.care.filter((task) => task.topic === 'absence' && task.who === 'anyone');
  return [
    ...own.map((task) => task.do),
    told(input, 'sitter', 'lookFor', { what: lookFor(input).join('; ') }),
  ];
}

/** Read from two metres: how much, how often, when not. */
function Packet({ input }: { input: SheetInput }) {
  const known = figureOf(input, 'feed_g_d') !== null;
  const lines = [
    known
      ? told(input, 'sitter', 'packetHolds', { feed: shown(input, 'feed_g_d') })
      : told(input, 'sitter', 'packetByKeeper'),
    told(input, 'sitter', 'packetWhen', { range: shownRange(input, 'goodFrom_degC', 'goodTo_degC') }),
  ];
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: mm(72),
        boxSizing: 'border-box',
        border: `${rule.thinBox}px solid black`,
        padding: mm(4),
        rowGap: mm(2),
      }}
    >
      <div
        data-role="H2"
        style={{ display: 'flex', fontSize: size.second, fontWeight: weight.heavy, lineHeight: 1.1 }}
      >
        {told(input, 'sitter', 'packet')}
      </div>
      {lines.map((line) => (
        <Para text={line} />
      ))}
    </div>
  );
}

function Cautions({ input }: { input: SheetInput }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      {cautions(input).map((line) => (
        <Para text={line} heavy="heavy" />
      ))}
    </div>
  );
}
