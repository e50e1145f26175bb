/** Sheets full of labels: on a grid that the keeper measured, or on plain paper to be cut. */
import type { LabelGrid } from '../core/labelGrid.ts';
import { type LabelPlace, labelPlaces_mm } from '../drawing/labelPlaces.ts';
import { path, type Shape } from '../drawing/shape.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes, pt } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import type { LabelText } from './labelTexts.ts';
import { LabelBox } from './parts/LabelBox.tsx';
import { Shapes } from './parts/Shapes.tsx';
import type { PaperName } from './sheet.ts';
import type { LayOut } from './sheetKind.ts';

export type LabelPaper = {
  /** The grid of the keeper's own labels; null for plain paper. */
  readonly own: LabelGrid | null;
  readonly paper: PaperName;
};

type Labels = {
  readonly texts: readonly LabelText[];
  /** What is left of the last sheet is filled with these; null leaves it empty. */
  readonly spare: LabelText | null;
  readonly title: string;
};

/** Sheet after sheet until all labels are on one; the first sheet begins after the labels that are gone already. */
export async function* labelPages(
  { texts, spare, title }: Labels,
  paper: LabelPaper,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  let rest = texts;
  let sheet: 'first' | 'later' = 'first';
  while (rest.length > 0) {
    const places = labelPlaces_mm(gridOf(paper), sheet);
    const fill = spare === null ? [] : places.slice(rest.length).map(() => spare);
    yield await fitting({ texts: [...rest.slice(0, places.length), ...fill], title }, places, paper, layOut);
    rest = rest.slice(places.length);
    sheet = 'later';
  }
}

/** Plain paper: three across and six down, in the middle of the sheet, where every printer reaches. */
const plain = { columns: 3, rows: 6, width_mm: 63, height_mm: 42 } as const;

/** The measured grid, else one for plain paper. */
export function gridOf({ own, paper }: LabelPaper): LabelGrid {
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

type Filled = Pick<Labels, 'texts' | 'title'>;

async function fitting(
  filled: Filled,
  places: readonly LabelPlace[],
  paper: LabelPaper,
  layOut: LayOut,
): Promise<Page> {
  let page: Page | null = null;
  for (const lines of details) {
    for (const fontSize of sizes) {
      page = await layOut(sheetOf(filled, places, paper, { lines, fontSize }));
      if (overflows(page).length === 0) return page;
    }
  }
  if (page === null) throw new Error('labels in no size at all');
  return page;
}

type Look = { readonly lines: number; readonly fontSize: number };

function sheetOf(
  { texts, title }: Filled,
  places: readonly LabelPlace[],
  paper: LabelPaper,
  look: Look,
): Sheet {
  const { width_mm, height_mm } = paperSizes[paper.paper];
  const grid = gridOf(paper);
  const cuts = paper.own === null ? places.map((place) => cutLine(place, grid)) : [];
  return {
    ...{ width_mm, height_mm },
    title,
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
              place={roomOf(place, grid, paper.paper)}
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
