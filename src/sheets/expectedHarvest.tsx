/** What the season is expected to give: a graph for each crop, what falls short, feed and plants, and first pickings. */
import type { CropWeeks } from '../core/turnover/cropWeeks.ts';
import type { Sowing } from '../core/turnover/turnover.ts';
import { feedBars, harvestBars } from '../drawing/harvestBars.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { cautionTexts, firstPicking } from '../wording/harvest.ts';
import { amount } from '../wording/quantity.ts';
import { shorten } from '../wording/shorten.ts';
import { feedLines } from './feedWords.ts';
import { flowed } from './flowed.ts';
import { shortLines, totalWords } from './harvestWords.ts';
import { Heading, Para } from './parts/blocks.tsx';
import { Grid } from './parts/Grid.tsx';
import { size } from './parts/look.ts';
import { seasonSide } from './parts/SeasonSide.tsx';
import { WeekGraph } from './parts/WeekGraph.tsx';
import type { LayOut } from './sheetKind.ts';
import { cropName, saidIn, season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';
import { runsOf } from './runsOf.ts';

export const expectedHarvest: TurnoverKind = {
  id: 'expected-harvest',
  name: (input) => season(input, 'harvest.kind'),
  title: (input) => season(input, 'harvest.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'harvest.pdfSubject'),
  pages,
  fits: ({ plan }) => (plan.crops.length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

/** More rows than a page holds. */
const mostOnPage = 60;

/** One thing of the sheet, small enough that a page can break after it. */
type Piece =
  | { readonly part: 'crops'; readonly crop: CropWeeks }
  | { readonly part: 'feed'; readonly feed_g_d: number }
  | { readonly part: 'how' | 'short' | 'feedWeeks' | 'mind'; readonly text: string }
  | { readonly part: 'when'; readonly sowing: Sowing };

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const draw = (some: readonly Piece[]) =>
    seasonSide(
      input,
      expectedHarvest,
      'harvest',
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(4) }}>
        {runsOf(some).map((run) => (
          <Run input={input} run={run} />
        ))}
      </div>,
    );
  yield* flowed(pieces(input), draw, layOut, mostOnPage);
}

function pieces(input: TurnoverInput): readonly Piece[] {
  const { crops, sowings, task } = input.plan;
  const said = (part: 'how' | 'short' | 'feedWeeks' | 'mind', texts: readonly string[]) =>
    texts.map((text): Piece => ({ part, text }));
  const named = new Set(crops.map(({ crop }) => crop));
  const { feed_g_d } = task;
  return [
    ...said('how', [season(input, 'harvest.how')]),
    ...crops.map((crop): Piece => ({ part: 'crops', crop })),
    ...said('short', shortLines(input)),
    ...(feed_g_d === null ? [] : [{ part: 'feed', feed_g_d } as const]),
    ...said('feedWeeks', feedLines(input)),
    ...said('mind', cautionTexts(input.plan, named, saidIn(input))),
    ...sowings.map((sowing): Piece => ({ part: 'when', sowing })),
  ];
}

type RunProps = { readonly input: TurnoverInput; readonly run: readonly Piece[] };

const heads: Partial<Readonly<Record<Piece['part'], string>>> = {
  short: 'short',
  feed: 'feed',
  when: 'when',
};

function Run({ input, run }: RunProps) {
  const part = run[0]?.part ?? 'how';
  const head = heads[part];
  const sowings = run.flatMap((piece) => (piece.part === 'when' ? [piece.sowing] : []));
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: part === 'crops' ? mm(3.4) : mm(1.6) }}>
      {head === undefined ? null : <Heading level="H2" text={season(input, `harvest.${head}`)} />}
      {sowings.length > 0 ? <Sowings input={input} rows={sowings} /> : null}
      {run.map((piece) => (
        <One input={input} piece={piece} />
      ))}
    </div>
  );
}

function One({ input, piece }: { readonly input: TurnoverInput; readonly piece: Piece }) {
  if (piece.part === 'when') return null;
  if (piece.part === 'crops') return <CropGraph input={input} of={piece.crop} />;
  if (piece.part === 'feed') return <FeedGraph input={input} feed_g_d={piece.feed_g_d} />;
  const { part, text } = piece;
  return part === 'mind' ? (
    <Para text={text} heavy="heavy" fontSize={size.note} entry="entry" />
  ) : (
    <Para text={text} entry="entry" />
  );
}

function CropGraph({ input, of }: { readonly input: TurnoverInput; readonly of: CropWeeks }) {
  const words = totalWords(input, of);
  return (
    <WeekGraph
      input={input}
      title={words.crop}
      lines={[
        season(input, 'harvest.total', words),
        ...(words.met === words.total ? [] : [season(input, 'harvest.inAll', words)]),
        season(input, 'harvest.most', words),
      ]}
      alt={season(input, 'harvest.alt', words)}
      bars={(within, marks) => harvestBars(of, within, marks)}
    />
  );
}

function FeedGraph({ input, feed_g_d }: { readonly input: TurnoverInput; readonly feed_g_d: number }) {
  const { units, plan } = input;
  const weeks = plan.planted.map((week) => ({ low: week.feedLow_g_d, high: week.feedHigh_g_d }));
  const most = Math.max(...weeks.map(({ high }) => high));
  const words = { feed: amount(feed_g_d, 'g_d', 'nearest', units), most: amount(most, 'g_d', 'down', units) };
  return (
    <WeekGraph
      input={input}
      title={season(input, 'harvest.feedTitle')}
      lines={['feedToday', 'feedBars', 'feedMost'].map((key) => season(input, `harvest.${key}`, words))}
      alt={season(input, 'harvest.feedAlt', words)}
      bars={(within, marks) => feedBars(weeks, feed_g_d, within, marks)}
    />
  );
}

const whole = mm(190);

function Sowings({ input, rows }: { readonly input: TurnoverInput; readonly rows: readonly Sowing[] }) {
  const columnHeads = ['crop', 'bed', 'sown', 'first', 'plants'] as const;
  const widths = [mm(36), mm(32), mm(25), mm(84), whole - mm(177)];
  const columns = columnHeads.map((head, at) => ({
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
