/** What the season is expected to give: a graph for each crop, what falls short, and from when to when. */
import type { CropWeeks, Sowing } from '../core/turnover/turnover.ts';
import { harvestBars } from '../drawing/harvestBars.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText, monthShort } from '../wording/date.ts';
import { cautionTexts, firstPicking } from '../wording/harvest.ts';
import { shorten } from '../wording/shorten.ts';
import { shortLines, totalWords } from './harvestWords.ts';
import { type Packable, packed } from './packed.ts';
import { Heading, Para } from './parts/blocks.tsx';
import { Grid } from './parts/Grid.tsx';
import { sideHeight, size, weight } from './parts/look.ts';
import { SeasonBlock, seasonSide } from './parts/SeasonSide.tsx';
import { Shapes } from './parts/Shapes.tsx';
import type { LayOut } from './sheetKind.ts';
import { cropName, saidIn, season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';

export const expectedHarvest: TurnoverKind = {
  id: 'expected-harvest',
  name: (input) => season(input, 'harvest.kind'),
  title: (input) => season(input, 'harvest.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'harvest.pdfSubject'),
  pages,
  fits: ({ plan }) => (plan.crops.length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

const headRoom = mm(30);
const gap = mm(3.4);
const graph = { width: mm(150), height: mm(12) };
const whole = mm(190);

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const draw = (some: readonly Packable[]) =>
    seasonSide(
      input,
      expectedHarvest,
      'harvest',
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: gap }}>
        {some.map(({ content }) => (
          <SeasonBlock content={content} />
        ))}
      </div>,
    );
  yield* packed({ all: blocks(input), room: sideHeight - headRoom, gap, draw }, layOut);
}

function blocks(input: TurnoverInput): readonly Packable[] {
  const alone = (content: Packable['content']): Packable => ({ content, keep: 'alone' });
  return [
    alone(<Para text={season(input, 'harvest.how')} />),
    ...input.plan.crops.map((crop) => alone(<CropGraph input={input} of={crop} />)),
    { content: <Heading level="H2" text={season(input, 'harvest.short')} />, keep: 'withNext' },
    ...shortLines(input).map((text) => alone(<Para text={text} />)),
    { content: <Heading level="H2" text={season(input, 'harvest.when')} />, keep: 'withNext' },
    ...tables(input).map((rows) => alone(<Sowings input={input} rows={rows} />)),
    ...cautions(input).map((text) => alone(<Para text={text} heavy="heavy" fontSize={size.note} />)),
  ];
}

function cautions(input: TurnoverInput): readonly string[] {
  const named = new Set(input.plan.crops.map(({ crop }) => crop));
  return cautionTexts(input.plan, named, saidIn(input));
}

function CropGraph({ input, of }: { input: TurnoverInput; of: CropWeeks }) {
  const words = totalWords(input, of);
  const months = monthStarts(input);
  const bars = harvestBars(
    of,
    graph,
    months.map(({ week }) => week),
  );
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end' }}>
      <div data-role="P" style={{ display: 'flex', flexDirection: 'column', width: mm(38), flexShrink: 0 }}>
        <div style={{ display: 'block', lineClamp: 1, fontWeight: weight.heavy }}>{words.crop}</div>
        <div style={{ display: 'flex', fontSize: size.source }}>{season(input, 'harvest.total', words)}</div>
        <div style={{ display: 'flex', fontSize: size.source }}>{season(input, 'harvest.most', words)}</div>
      </div>
      <div
        data-role="Figure"
        data-alt={season(input, 'harvest.alt', words)}
        style={{ display: 'flex', position: 'relative', width: graph.width, height: graph.height + monthRow }}
      >
        <Shapes shapes={bars.shapes} width={graph.width} height={graph.height} />
        {months.map(({ name }, at) => (
          <div style={{ ...monthName, left: bars.marks[at] ?? 0 }}>{name}</div>
        ))}
      </div>
    </div>
  );
}

/** Under each graph: what a month is called, at the week in which it begins; every other one where they are many. */
const monthRow = mm(3.6);
const mostNames = 13;
const monthName = {
  display: 'flex',
  position: 'absolute',
  top: graph.height + mm(0.3),
  fontSize: size.source,
  lineHeight: 1.1,
} as const;

function monthStarts(input: TurnoverInput): readonly { readonly week: number; readonly name: string }[] {
  const { calendar } = input.plan;
  const starts = calendar.filter(
    ({ monday }, at) => at > 0 && calendar[at - 1]?.monday.slice(0, 7) !== monday.slice(0, 7),
  );
  const every = Math.ceil(starts.length / mostNames);
  return starts.map(({ index, monday }, at) => ({
    week: index,
    name: at % every === 0 ? monthShort(monday, input.words.catalogue) : '',
  }));
}

/** Tables of so many rows, so that a page can break between two. */
const rowsInTable = 14;

function tables({ plan }: TurnoverInput): readonly (readonly Sowing[])[] {
  const count = Math.ceil(plan.sowings.length / rowsInTable);
  return Array.from({ length: count }, (_, at) =>
    plan.sowings.slice(at * rowsInTable, (at + 1) * rowsInTable),
  );
}

function Sowings({ input, rows }: { input: TurnoverInput; rows: readonly Sowing[] }) {
  const heads = ['crop', 'bed', 'sown', 'first', 'plants'] as const;
  const widths = [mm(36), mm(32), mm(25), mm(84), whole - mm(177)];
  const columns = heads.map((head, at) => ({
    head: season(input, `harvest.heads.${head}`),
    width: widths[at] ?? 0,
  }));
  return (
    <Grid
      columns={columns}
      rows={rows.map((one) => rowOf(input, one))}
      rowHeight={mm(6)}
      headHeight={mm(7)}
    />
  );
}

/** Longer names are cut with a mark, so that a row stays a row. */
const longBed = 24;

function rowOf(input: TurnoverInput, sowing: Sowing): readonly string[] {
  const date = (iso: string): string => dayText(iso, input.words.catalogue);
  const { sown } = sowing.dates;
  return [
    cropName(input, sowing.crop),
    shorten(input.plan.task.beds[sowing.bed]?.name ?? '', longBed),
    date(sown),
    firstPicking(sowing, saidIn(input)),
    String(sowing.plants),
  ];
}
