/** A place for every plant of each bed, at true scale, over as many sheets as it takes. */
import type { BedTemplate } from '../core/plan/figure.ts';
import { type BedLines, bedLines } from '../drawing/bedLines.ts';
import { joinMarks, type Line, linesOn, type Tile, type Tiling, tilingOf } from '../drawing/tiles.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { amount } from '../wording/quantity.ts';
import { Leaf, Para, TickList } from './parts/blocks.tsx';
import { safe, size } from './parts/look.ts';
import { Shapes } from './parts/Shapes.tsx';
import { sideOf } from './parts/Side.tsx';
import { TestBars } from './parts/TestBars.tsx';
import { TileMap } from './parts/TileMap.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

export const plantingTemplate: SheetKind = {
  id: 'planting-template',
  name: (input) => told(input, 'template', 'kind'),
  title: (input) => told(input, 'template', 'title', { name: input.system.name }),
  subject: (input) => told(input, 'template', 'pdfSubject'),
  pages,
  fits: ({ templates }) => (templates.length > 0 ? 'yes' : 'no'),
  scale: 'true',
};

const overlap = mm(10);
/** Nobody glues more: above that, strings are quicker, and the first page says so. */
const mostSheets = 40;

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  for (const template of kinds(input.templates)) {
    const bed = placed(template);
    yield layOut(howTo(input, template, bed));
    if (bed.tiling.tiles.length > mostSheets) continue;
    const lines = [...bed.drawn.lines, ...joinMarks(bed.tiling)];
    for (const tile of bed.tiling.tiles) yield layOut(sheetOf(input, template, bed, tile, lines));
  }
}

/** Of beds that are alike one template is enough. */
function kinds(all: readonly BedTemplate[]): readonly BedTemplate[] {
  const form = ({ outline }: BedTemplate): string => JSON.stringify(outline);
  return all.filter((one, index) => all.findIndex((other) => form(other) === form(one)) === index);
}

type Placed = { readonly drawn: BedLines; readonly tiling: Tiling };

/** Along the sheets or across them, whichever takes fewer. */
function placed(template: BedTemplate): Placed {
  const ways = (['down', 'across'] as const).map((lies) => {
    const drawn = bedLines(template, lies);
    return { drawn, tiling: tilingOf(drawn, safe, overlap) };
  });
  return ways.reduce((best, one) => (one.tiling.tiles.length < best.tiling.tiles.length ? one : best));
}

function sheetOf(
  input: SheetInput,
  { number }: BedTemplate,
  { tiling }: Placed,
  tile: Tile,
  lines: readonly Line[],
): Sheet {
  const { width, height } = safe;
  const alt = told(input, 'template', 'tileAlt', { sheet: tile.name });
  const words = { sheet: tile.name, bed: bedName(input, number), name: input.system.name };
  return {
    ...paperSizes[input.paper],
    title: plantingTemplate.title(input),
    lang: 'en',
    root: (
      <Leaf height={height}>
        <div style={{ display: 'flex', position: 'relative', width, height }}>
          <div
            data-role="Figure"
            data-alt={alt}
            style={{ display: 'flex', position: 'absolute', left: 0, top: 0, width, height }}
          >
            <Shapes shapes={linesOn(tile, tiling, lines)} width={width} height={height} />
          </div>
          <div data-role="P" style={{ ...foot, top: height - mm(5) }}>
            {told(input, 'template', 'tile', words)}
          </div>
        </div>
      </Leaf>
    ),
  };
}

/** In the overlap, between the two slanted crosses; one line, cut wherever it ends. */
const foot = {
  display: 'block',
  position: 'absolute',
  left: mm(56),
  width: mm(92),
  height: mm(5),
  fontSize: size.note,
  lineHeight: 1.2,
  lineClamp: 1,
  // Letters that stand wider apart together than alone reach a little on.
  paddingRight: mm(2),
  boxSizing: 'border-box',
  wordBreak: 'break-all',
} as const;

function bedName(input: SheetInput, number: number): string {
  return told(input, 'template', 'bed', { number: String(number) });
}

function howTo(input: SheetInput, template: BedTemplate, { drawn, tiling }: Placed): Sheet {
  const length = (value_mm: number): string => amount(value_mm, 'mm', 'nearest', input.units);
  const values = {
    bed: bedName(input, template.number),
    count: String(template.count),
    spacing: length(template.spacing_mm),
    edge: length(template.edge_mm),
    sheets: String(tiling.tiles.length),
  };
  const isTooLarge = tiling.tiles.length > mostSheets;
  const head = {
    title: plantingTemplate.title(input),
    kind: told(input, 'template', 'kind'),
    subject: told(input, 'template', `subject.${template.rows}`, values),
  };
  const steps = (isTooLarge ? ['strings', 'pipes'] : ['print', 'join', 'lay', 'pipes']).map((key) =>
    told(input, 'template', `how.${key}`, values),
  );
  return sideOf(
    input,
    head,
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(5) }}>
      {isTooLarge ? null : <TestBars input={input} />}
      <TickList items={steps} />
      <TileMap
        drawn={drawn}
        tiling={isTooLarge ? null : tiling}
        alt={told(input, 'template', 'mapAlt', values)}
      />
      <Para text={told(input, 'template', 'spacing', values)} />
    </div>,
  );
}
