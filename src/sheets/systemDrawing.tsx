/** The system drawing: cut open and from above, to scale, with the way of the water, its lines, holes and pipes. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { figureName, figureValue } from '../wording/figure.ts';
import { amount, lengthUnit_mm } from '../wording/quantity.ts';
import { tableWords } from '../wording/table.ts';
import { figureOf } from './cardWords.ts';
import { flowed } from './flowed.ts';
import { FromAbove } from './parts/FromAbove.tsx';
import { Heading, Para } from './parts/blocks.tsx';
import { Grid } from './parts/Grid.tsx';
import { size } from './parts/look.ts';
import { PatternSample } from './parts/PatternSample.tsx';
import { sideOf } from './parts/Side.tsx';
import { SystemPicture, systemPicture } from './parts/SystemPicture.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { rowsOf, told } from './sheetWords.ts';
import {
  columnLabels,
  failures,
  holeLetters,
  type LineRow,
  lineRows,
  markWords,
  stationNames,
  system,
  waySteps,
} from './systemWords.ts';
import { runsOf } from './runsOf.ts';

export const systemDrawing: SheetKind = {
  id: 'system-drawing',
  name: (input) => system(input, 'kind'),
  title,
  subject: (input) => system(input, 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'true',
};

/** What the sheet has for its drawing, and what the words under it take of that; the press looks after the rest. */
const pictureRoom = { all: mm(190), least: mm(84), most: mm(160), heading: mm(9), line: mm(5) };
const rowHeight = mm(5.2);

function title(input: SheetInput): string {
  return system(input, 'title', { name: input.system.name });
}

/** One thing of the sheet, small enough that a page can break after it. */
type Piece =
  | { readonly part: 'way' | 'fails' | 'pipeWords' | 'cautions'; readonly text: string }
  | { readonly part: 'above' }
  | { readonly part: 'lines'; readonly row: LineRow }
  | { readonly part: 'holes' | 'pipes'; readonly row: readonly string[] };

type Part = Piece['part'];

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = { title: title(input), kind: system(input, 'kind'), subject: system(input, 'subject') };
  yield* flowed(
    pieces(input),
    (some, _, at) =>
      sideOf(
        input,
        head,
        <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(2.6) }}>
          {at === 'first' ? <CutOpen input={input} /> : null}
          {runsOf(some).map((run) => (
            <Run input={input} run={run} />
          ))}
        </div>,
      ),
    layOut,
  );
}

function pieces(input: SheetInput): readonly Piece[] {
  return [
    ...waySteps(input).map((text): Piece => ({ part: 'way', text })),
    ...failures(input).map((text): Piece => ({ part: 'fails', text })),
    { part: 'above' },
    ...lineRows(input).map((row): Piece => ({ part: 'lines', row })),
    ...holeRows(input).map((row): Piece => ({ part: 'holes', row })),
    ...pipeRows(input).map((row): Piece => ({ part: 'pipes', row })),
    ...pipeWords(input).map((text): Piece => ({ part: 'pipeWords', text })),
    ...cautions(input).map((text): Piece => ({ part: 'cautions', text })),
  ];
}

function cautions(input: SheetInput): readonly string[] {
  return [
    ...(holeLetters(input).length === 0 ? [] : [told(input, 'build', 'holesNote')]),
    told(input, 'build', 'stand'),
  ];
}

/** As high as leaves room for the way of the water and what happens when something fails. */
function pictureHeight(input: SheetInput): number {
  const { all, least, most, heading, line } = pictureRoom;
  const lines = [...waySteps(input), ...failures(input)].map((text) => Math.ceil(text.length / 95));
  const under = 2 * heading + lines.reduce((sum, one) => sum + one * line, 0);
  return Math.min(most, Math.max(least, all - under));
}

function CutOpen({ input }: { input: SheetInput }) {
  const unit_mm = lengthUnit_mm(input.units);
  const labels = columnLabels(input);
  const props = {
    section: input.plan.section,
    height: pictureHeight(input),
    labels,
    marks: markWords(input),
    unit_mm,
  };
  const drawing = systemPicture(props);
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading
        level="H2"
        text={system(input, 'section')}
        aside={system(input, 'scale', { oneTo: String(drawing.oneTo) })}
      />
      <SystemPicture
        {...props}
        drawing={drawing}
        alt={system(input, 'alt', {
          stations: stationNames(input).join('; '),
          labels: Object.values(labels).join('; '),
        })}
        barText={(real_mm) => system(input, 'bar', { length: amount(real_mm, 'mm', 'nearest', input.units) })}
      />
      <Para text={system(input, 'caption')} fontSize={size.note} />
    </div>
  );
}

function Run({ input, run }: { input: SheetInput; run: readonly Piece[] }) {
  const part = run[0]?.part ?? 'above';
  if (part === 'above') return <FromAbove input={input} />;
  const heading = headings[part];
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(0.6) }}>
      {heading === undefined ? null : <Heading level="H2" text={system(input, heading)} />}
      {run.flatMap((piece) =>
        'text' in piece
          ? [<Para text={piece.text} fontSize={part === 'cautions' ? size.note : size.text} entry="entry" />]
          : [],
      )}
      <Rows input={input} run={run} part={part} />
    </div>
  );
}

const headings: Partial<Readonly<Record<Part, string>>> = {
  ...{ way: 'way', fails: 'fails', lines: 'lines', holes: 'holes', pipes: 'pipes' },
};

function Rows({ input, run, part }: { input: SheetInput; run: readonly Piece[]; part: Part }) {
  if (part === 'lines') return <Lines input={input} rows={run} />;
  const rows = run.flatMap((piece) => (piece.part === 'holes' || piece.part === 'pipes' ? [piece.row] : []));
  if (rows.length === 0 || (part !== 'holes' && part !== 'pipes')) return null;
  const columns = heads(input, part).map((head, i) => ({ head, width: mm(widths[part][i] ?? 20) }));
  return <Grid columns={columns} rows={rows} rowHeight={rowHeight} headHeight={mm(6)} />;
}

const widths = { holes: [13, 66, 55, 16, 18, 22], pipes: [58, 66, 18, 26, 22] };

function Lines({ input, rows }: { input: SheetInput; rows: readonly Piece[] }) {
  const columns = (['line', 'height', 'water', 'pattern'] as const).map((key, i) => ({
    head: system(input, `linesHead.${key}`),
    width: mm([66, 44, 46, 34][i] ?? 30),
  }));
  const cells = rows.flatMap((piece) =>
    piece.part === 'lines'
      ? [[piece.row.line, piece.row.height, piece.row.water, <PatternSample level={piece.row.level} />]]
      : [],
  );
  return <Grid columns={columns} rows={cells} rowHeight={rowHeight} headHeight={mm(6)} />;
}

function heads(input: SheetInput, part: 'holes' | 'pipes'): readonly string[] {
  const { head } = wordsOf(input, part === 'holes' ? 'holes' : 'parts');
  return part === 'holes' ? [system(input, 'holesHead'), ...head] : head.slice(0, 5);
}

function wordsOf(input: SheetInput, key: string) {
  const table = input.plan.tables.find((one) => one.key === key) ?? { key, columns: [], rows: [] };
  return tableWords(table, input.words.catalogue, input.units);
}

function holeRows(input: SheetInput): readonly (readonly string[])[] {
  const letters = holeLetters(input);
  return wordsOf(input, 'holes').rows.map((row, i) => [letters[i] ?? '', ...row]);
}

const ofPipe = new Set<unknown>(['supplyPipe', 'bends', 'standpipe', 'bell', 'screen']);

/** What of the parts is pipe: name, for which bed, count, length, bore. */
function pipeRows(input: SheetInput): readonly (readonly string[])[] {
  const raw = rowsOf(input, 'parts');
  return wordsOf(input, 'parts')
    .rows.filter((_, i) => ofPipe.has(raw[i]?.[0]))
    .map((row) => row.slice(0, 5));
}

function pipeWords(input: SheetInput): readonly string[] {
  const { pump } = input.system;
  if (pump === null) return [];
  const known = ['lift_m', 'pipeLoss_m', 'pumpFlow_L_h'].flatMap((key) => {
    const figure = figureOf(input, key);
    if (figure === null) return [];
    const { catalogue } = input.words;
    const name = figureName(key, input.system.beds.length, catalogue);
    return [system(input, 'pipeFigure', { name, value: figureValue(figure, catalogue, input.units) })];
  });
  return [...(pump.pipe ? [] : [system(input, 'pipeNotMeasured')]), ...known];
}
