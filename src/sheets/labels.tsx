/** Labels at true scale on a grid that the keeper measured, or on plain paper to be cut. */
import type { LabelGrid } from '../core/labelGrid.ts';
import { type LabelPlace, labelPlaces_mm } from '../drawing/labelPlaces.ts';
import { path, type Shape } from '../drawing/shape.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes, pt } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import { fixedLabels, type LabelText, plantTag } from './labelTexts.ts';
import { LabelBox } from './parts/LabelBox.tsx';
import { TickList } from './parts/blocks.tsx';
import { Shapes } from './parts/Shapes.tsx';
import { sideOf } from './parts/Side.tsx';
import { TestBars } from './parts/TestBars.tsx';
import type { PaperName, SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

export const labels: SheetKind = {
  id: 'labels',
  name: (input) => told(input, 'labels', 'kind'),
  title: (input) => told(input, 'labels', 'title', { name: input.system.name }),
  subject: (input) => told(input, 'labels', 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'true',
};

/** So many tags at least; what is left of the last sheet is filled with more. */
const leastTags = 8;

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  yield layOut(howTo(input));
  const grid = gridOf(input);
  let rest = [...fixedLabels(input), ...Array.from({ length: leastTags }, () => plantTag(input))];
  let sheet: 'first' | 'later' = 'first';
  while (rest.length > 0) {
    const places = labelPlaces_mm(grid, sheet);
    const tags = places.slice(rest.length).map(() => plantTag(input));
    yield* fitting([...rest.slice(0, places.length), ...tags], places, input, layOut);
    rest = rest.slice(places.length);
    sheet = 'later';
  }
}

/** Plain paper: three across and six down, in the middle of the sheet, where every printer reaches. */
const plain = { columns: 3, rows: 6, width_mm: 63, height_mm: 42 } as const;

function gridOf({ system, paper }: SheetInput): LabelGrid {
  const own = system.labels ?? null;
  if (own !== null) return own;
  const { columns, rows, width_mm, height_mm } = plain;
  const { width_mm: sheetWidth_mm, height_mm: sheetHeight_mm } = paperSizes[paper];
  return {
    ...{
      columns,
      rows,
      labelWidth_mm: width_mm,
      labelHeight_mm: height_mm,
      across_mm: width_mm,
      down_mm: height_mm,
    },
    left_mm: (sheetWidth_mm - columns * width_mm) / 2,
    top_mm: (sheetHeight_mm - rows * height_mm) / 2,
    used: 0,
  };
}

/** Type sizes from large to small, then with fewer lines: the press says what fits. */
const sizes = [13, 11, 9.5, 8.5, 7.5].map(pt);
const details = [4, 2, 1, 0] as const;

async function* fitting(
  texts: readonly LabelText[],
  places: readonly LabelPlace[],
  input: SheetInput,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  let page: Page | null = null;
  for (const lines of details) {
    for (const fontSize of sizes) {
      page = await layOut(sheetOf(texts, places, input, { lines, fontSize }));
      if (overflows(page).length === 0) return yield page;
    }
  }
  if (page !== null) yield page;
}

type Look = { readonly lines: number; readonly fontSize: number };

function sheetOf(
  texts: readonly LabelText[],
  places: readonly LabelPlace[],
  input: SheetInput,
  look: Look,
): Sheet {
  const { width_mm, height_mm } = paperSizes[input.paper];
  const grid = gridOf(input);
  const isOwn = (input.system.labels ?? null) !== null;
  const cuts = isOwn ? [] : places.map((place) => cutLine(place, grid));
  return {
    ...{ width_mm, height_mm },
    title: labels.title(input),
    lang: 'en',
    root: (
      <div
        style={{
          display: 'flex',
          position: 'relative',
          width: mm(width_mm),
          height: mm(height_mm),
          backgroundColor: 'white',
          color: 'black',
        }}
      >
        <Shapes shapes={cuts} width={mm(width_mm)} height={mm(height_mm)} />
        {texts.map((label, index) => {
          const place = places[index];
          if (place === undefined) return null;
          return (
            <LabelBox
              label={label}
              lines={label.lines.filter(({ rank }) => rank <= look.lines)}
              fontSize={look.fontSize}
              place={roomOf(place, grid, input.paper)}
            />
          );
        })}
      </div>
    ),
  };
}

/** Clear of the label's own edge, and of the strip along the paper that printers do not reach. */
const inLabel = mm(3);
const inPaper = mm(6);

function roomOf({ left_mm, top_mm }: LabelPlace, grid: LabelGrid, paper: PaperName) {
  const { width_mm, height_mm } = paperSizes[paper];
  const left = Math.max(mm(left_mm) + inLabel, inPaper);
  const top = Math.max(mm(top_mm) + inLabel, inPaper);
  const right = Math.min(mm(left_mm + grid.labelWidth_mm) - inLabel, mm(width_mm) - inPaper);
  const bottom = Math.min(mm(top_mm + grid.labelHeight_mm) - inLabel, mm(height_mm) - inPaper);
  return { left, top, width: right - left, height: bottom - top };
}

function cutLine({ left_mm, top_mm }: LabelPlace, { labelWidth_mm, labelHeight_mm }: LabelGrid): Shape {
  const [left, top] = [mm(left_mm), mm(top_mm)];
  const [right, bottom] = [mm(left_mm + labelWidth_mm), mm(top_mm + labelHeight_mm)];
  const corners = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ] as const;
  return { d: path(corners, 'closed'), paint: { stroke: 'black', width: 1.5 } };
}

function howTo(input: SheetInput): Sheet {
  const grid = gridOf(input);
  const own = (input.system.labels ?? null) === null ? 'plain' : 'own';
  const head = {
    title: labels.title(input),
    kind: told(input, 'labels', 'kind'),
    subject: told(input, 'labels', own, { columns: String(grid.columns), rows: String(grid.rows) }),
  };
  const ofGrid = own === 'own' ? ['how.ownPrint', 'how.ownHold'] : ['how.plainPrint', 'how.plainHold'];
  const steps = [...ofGrid, 'how.cover', 'how.where'].map((key) => told(input, 'labels', key));
  return sideOf(
    input,
    head,
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(6) }}>
      <TestBars input={input} />
      <TickList items={steps} />
    </div>,
  );
}
