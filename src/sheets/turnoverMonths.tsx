/** The season month by month: a page a month, with a map of the beds and what is sown, planted, picked and rested. */
import { mapParts } from '../drawing/bedMap.ts';
import { turnoverRows } from '../drawing/turnoverRows.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText, monthText } from '../wording/date.ts';
import { cautionTexts } from '../wording/harvest.ts';
import { shorten } from '../wording/shorten.ts';
import { flowed } from './flowed.ts';
import { lightText, middleOf } from './lightWords.ts';
import { Heading, Para } from './parts/blocks.tsx';
import { BedMapPicture } from './parts/BedMapPicture.tsx';
import { Grid } from './parts/Grid.tsx';
import { size } from './parts/look.ts';
import { seasonSide } from './parts/SeasonSide.tsx';
import { type MonthGroup, type MonthLine, type SeasonMonth, seasonMonths } from './seasonMonths.ts';
import type { LayOut } from './sheetKind.ts';
import { saidIn, season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';
import { runsOf } from './runsOf.ts';

export const turnoverMonths: TurnoverKind = {
  id: 'turnover-months',
  name: (input) => season(input, 'months.kind'),
  title: (input) => season(input, 'months.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'months.pdfSubject'),
  pages,
  fits: ({ plan }) => (plan.sowings.length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

/** One thing of a month's page, small enough that a page can break after it. */
type Piece =
  | { readonly part: 'map'; readonly bed: number }
  | { readonly part: 'said'; readonly text: string }
  | { readonly part: MonthGroup; readonly line: MonthLine };

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  for (const month of seasonMonths(input)) {
    const head = {
      kind: season(input, 'months.kind'),
      subject: subjectOf(input, month),
    };
    yield* flowed(
      pieces(input, month),
      (some) =>
        seasonSide(
          input,
          turnoverMonths,
          head,
          <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
            {runsOf(some).map((run) => (
              <Run input={input} month={month} run={run} />
            ))}
          </div>,
        ),
      layOut,
    );
  }
}

function pieces(input: TurnoverInput, month: SeasonMonth): readonly Piece[] {
  const { catalogue } = input.words;
  const holidays = month.weeks.flatMap(({ holiday, monday }) =>
    holiday === null
      ? []
      : [season(input, 'months.holiday', { name: holiday, date: dayText(monday, catalogue) })],
  );
  const crops = new Set(month.lines.map(({ crop }) => crop));
  const none = month.lines.length === 0 ? [season(input, 'months.none')] : [];
  const said = [...holidays, ...none, ...cautionTexts(input.plan, crops, saidIn(input))];
  return [
    ...(middleOf(month.weeks) === null
      ? []
      : input.plan.task.beds.map((_, bed): Piece => ({ part: 'map', bed }))),
    // Before the work: whoever reads only the first page of a month has read them, and no page holds nothing else.
    ...said.map((text): Piece => ({ part: 'said', text })),
    ...month.lines.map((line): Piece => ({ part: line.group, line })),
  ];
}

/** The month, how long its days are and how warm it is. */
function subjectOf(input: TurnoverInput, { first, weeks }: SeasonMonth): string {
  const month = monthText(first, input.words.catalogue);
  const middle = middleOf(weeks);
  return middle === null ? month : lightText(input, month, middle);
}

type RunProps = {
  readonly input: TurnoverInput;
  readonly month: SeasonMonth;
  readonly run: readonly Piece[];
};

function Run({ input, month, run }: RunProps) {
  const part = run[0]?.part ?? 'said';
  if (part === 'map') return <Maps input={input} month={month} run={run} />;
  if (part === 'said')
    return (
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1) }}>
        {run.map((piece) =>
          'text' in piece ? (
            <Para text={piece.text} heavy="heavy" fontSize={size.note} entry="entry" />
          ) : null,
        )}
      </div>
    );
  return <Lines input={input} group={part} run={run} />;
}

function Maps({ input, month, run }: RunProps) {
  const middle = middleOf(month.weeks);
  if (middle === null) return null;
  const date = dayText(middle.monday, input.words.catalogue);
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1.6) }}>
      <Heading level="H2" text={season(input, 'months.map', { date })} />
      {run.map((piece) =>
        piece.part === 'map' ? (
          <div data-entry="" style={{ display: 'flex', flexDirection: 'column' }}>
            <OneMap input={input} month={month} week={middle.index} bed={piece.bed} />
          </div>
        ) : null,
      )}
      <Para text={season(input, 'months.mapKey')} fontSize={size.source} />
    </div>
  );
}

type OneMapProps = Omit<RunProps, 'run'> & { readonly week: number; readonly bed: number };

function OneMap({ input, month, week, bed }: OneMapProps) {
  const { name = '', places = 0 } = input.plan.task.beds[bed] ?? {};
  const rows = turnoverRows(input.plan).flatMap((row) =>
    row.kind === 'places' && row.bed === bed ? [row] : [],
  );
  return (
    <BedMapPicture
      input={input}
      bed={shorten(name, longBed)}
      places={places}
      parts={mapParts(rows, places, week, month.worked)}
    />
  );
}

/** Longer names are cut with a mark. */
const longBed = 40;

const small = {
  display: 'flex',
  flex: 1,
  paddingRight: mm(1.5),
  fontSize: size.note,
  lineHeight: 1.15,
} as const;
const widths = { crop: mm(38), what: mm(152) };

function Lines({ input, group, run }: { input: TurnoverInput; group: MonthGroup; run: readonly Piece[] }) {
  const columns = (['crop', 'what'] as const).map((key) => ({
    head: season(input, `months.columns.${key}`),
    width: widths[key],
  }));
  const rows = run.flatMap((piece) =>
    'line' in piece ? [[piece.line.name, <div style={small}>{piece.line.text}</div>]] : [],
  );
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={season(input, `months.heads.${group}`)} />
      <Grid columns={columns} rows={rows} rowHeight={mm(5.6)} headHeight={mm(5.2)} />
    </div>
  );
}
