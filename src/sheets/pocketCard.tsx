/** The front of the care card on one sheet of paper, to be folded for a pocket, and a page that tells how to fold it. */
import { path, type Shape } from '../drawing/shape.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { card } from './cardWords.ts';
import { Para, TickList } from './parts/blocks.tsx';
import { safe, size } from './parts/look.ts';
import { Shapes } from './parts/Shapes.tsx';
import { sideOf } from './parts/Side.tsx';
import { type Fold, type Panel, pocketFold } from './pocketFold.ts';
import { panelContent } from './pocketPanels.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

export const pocketCard: SheetKind = {
  id: 'pocket-card',
  name: (input) => told(input, 'pocket', 'kind'),
  title: (input) => told(input, 'pocket', 'title', { name: input.system.name }),
  subject: (input) => card(input, 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'true',
};

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const fold = pocketFold(paperSizes[input.paper]);
  yield layOut(panels(input, fold));
  yield layOut(howTo(input, fold));
}

function panels(input: SheetInput, fold: Fold): Sheet {
  const { width_mm: height_mm, height_mm: width_mm } = paperSizes[input.paper];
  const { width, height } = fold;
  return {
    ...{ width_mm, height_mm },
    title: pocketCard.title(input),
    lang: 'en',
    root: (
      <div
        style={{
          display: 'flex',
          position: 'relative',
          width,
          height,
          backgroundColor: 'white',
          color: 'black',
        }}
      >
        <Shapes shapes={foldMarks(fold)} width={width} height={height} />
        {fold.panels.map((panel) => (
          <PanelBox panel={panel} input={input} />
        ))}
      </div>
    ),
  };
}

function PanelBox({ panel, input }: { panel: Panel; input: SheetInput }) {
  const { left, top, width, height, turn } = panel;
  const place = {
    left,
    top,
    width,
    height,
    ...(turn === 'upsideDown' ? { transform: 'rotate(180deg)' } : {}),
  };
  return (
    <div
      data-role="Sect"
      style={{ display: 'flex', position: 'absolute', flexDirection: 'column', ...place }}
    >
      {panelContent(panel.name, input)}
    </div>
  );
}

/** Short lines where a fold leaves the safe box, and where folds cross. */
function foldMarks({ width, height, across, down }: Fold): readonly Shape[] {
  const [left, right] = [(width - safe.height) / 2, (width + safe.height) / 2];
  const [top, bottom] = [(height - safe.width) / 2, (height + safe.width) / 2];
  const lines = [
    ...[left, right - tick].map(
      (x) =>
        [
          [x, across],
          [x + tick, across],
        ] as const,
    ),
    ...down.flatMap((x) => [
      [
        [x, top],
        [x, top + tick],
      ] as const,
      [
        [x, bottom - tick],
        [x, bottom],
      ] as const,
      [
        [x, across - tick / 2],
        [x, across + tick / 2],
      ] as const,
    ]),
  ];
  return lines.map((line) => ({ d: path(line, 'open'), paint: { stroke: 'black', width: 2 } }));
}

const tick = mm(4);

/** The picture of the sheet is drawn so many times smaller. */
const smaller = 2.4;

function howTo(input: SheetInput, fold: Fold): Sheet {
  const head = {
    title: pocketCard.title(input),
    kind: told(input, 'pocket', 'howKind'),
    subject: told(input, 'pocket', 'howSubject'),
  };
  const steps = ['one', 'two', 'three', 'check'].map((key) => told(input, 'pocket', `how.${key}`));
  const width = fold.width / smaller;
  const height = fold.height / smaller;
  return sideOf(
    input,
    head,
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(5) }}>
      <TickList items={steps} />
      <div
        data-role="Figure"
        data-alt={told(input, 'pocket', 'howAlt')}
        style={{ display: 'flex', position: 'relative', width, height }}
      >
        <Shapes shapes={foldPicture(fold)} width={width} height={height} />
        {fold.panels.map((panel) => (
          <div
            style={{
              display: 'flex',
              position: 'absolute',
              left: panel.left / smaller,
              top: (panel.top + panel.height / 3) / smaller,
              width: panel.width / smaller,
              fontSize: size.note,
              lineHeight: 1.15,
            }}
          >
            {told(input, 'pocket', `panels.${panel.name}`)}
          </div>
        ))}
      </div>
      <Para text={told(input, 'pocket', 'howWet')} />
    </div>,
  );
}

function foldPicture({ width, height, across, down }: Fold): readonly Shape[] {
  const small = (points: readonly (readonly [number, number])[]) =>
    points.map(([x, y]) => [x / smaller, y / smaller] as const);
  const edge = path(
    small([
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ]),
    'closed',
  );
  const folds = [
    path(
      small([
        [0, across],
        [width, across],
      ]),
      'open',
    ),
    ...down.map((x) =>
      path(
        small([
          [x, 0],
          [x, height],
        ]),
        'open',
      ),
    ),
  ];
  return [
    { d: edge, paint: { stroke: 'black', width: 5 } },
    ...folds.map((d) => ({ d, paint: { stroke: 'black' as const, width: 2, dash: [14, 10] } })),
  ];
}
