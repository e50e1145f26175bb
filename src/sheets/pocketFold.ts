/**
 * How a sheet of paper is folded for a pocket: in half three times, the printed side out. Eight panels, four in the
 * lower row, four upside down in the upper one. Sizes in sheet units, from the top left corner of the sheet on its side.
 */
import { mm, type PaperSize } from '../paper/measures.ts';
import { safe } from './parts/look.ts';

export type PanelName =
  | 'back'
  | 'cover'
  | 'insideLeft'
  | 'insideRight'
  | 'behind1'
  | 'behind2'
  | 'behind3'
  | 'behind4';

/** The room for words of a panel, clear of the folds and of what printers do not reach. */
export type Panel = {
  readonly name: PanelName;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly turn: 'upright' | 'upsideDown';
};

export type Fold = {
  readonly width: number;
  readonly height: number;
  readonly panels: readonly Panel[];
  /** Where the sheet is folded: one line across, three down. */
  readonly across: number;
  readonly down: readonly number[];
};

/** From a fold to the words beside it. */
const fromFold = mm(3);

/** The lower row from left to right. */
const lower = ['back', 'cover', 'insideLeft', 'insideRight'] as const;
/** The upper row from left to right; folded behind, it reads the other way round. */
const upper = ['behind4', 'behind3', 'behind2', 'behind1'] as const;

export function pocketFold(paper: PaperSize): Fold {
  const width = mm(Math.max(paper.width_mm, paper.height_mm));
  const height = mm(Math.min(paper.width_mm, paper.height_mm));
  const column = (index: number): number => (index * width) / lower.length;
  const edge = { x: (width - safe.height) / 2, y: (height - safe.width) / 2 };
  const panel = (name: PanelName, index: number, row: 'upper' | 'lower'): Panel => {
    const left = index === 0 ? edge.x : column(index) + fromFold;
    const right = index === lower.length - 1 ? width - edge.x : column(index + 1) - fromFold;
    const top = row === 'upper' ? edge.y : height / 2 + fromFold;
    const bottom = row === 'upper' ? height / 2 - fromFold : height - edge.y;
    const turn = row === 'upper' ? 'upsideDown' : 'upright';
    return { name, left, top, width: right - left, height: bottom - top, turn };
  };
  return {
    width,
    height,
    panels: [
      ...lower.map((name, index) => panel(name, index, 'lower')),
      ...upper.map((name, index) => panel(name, index, 'upper')),
    ],
    across: height / 2,
    down: [column(1), column(2), column(3)],
  };
}
