/** A dip strip cut into pieces that fit the paper, every mark at its true height. Lengths in tenths of a millimetre. */
import { path, type Shape } from './shape.ts';

export type DipMark = {
  readonly kind: 'round' | 'fullLine' | 'lowLine' | 'quarterLine';
  readonly text: string;
  readonly height_mm: number;
};

export type DipLabel = {
  readonly text: string;
  readonly y: number;
  readonly kind: DipMark['kind'];
  /** A name stands over its line, but under it where another line is close above. */
  readonly side: 'over' | 'under';
};

export type DipPiece = {
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly labels: readonly DipLabel[];
  /** Whether the piece stands on the floor of the tank, and whether another comes on top. */
  readonly foot: 'floor' | 'joint';
  readonly top: 'end' | 'joint';
};

/** A piece is so high; the next one laps over by so much. */
const piece_mm = 160;
const lap_mm = 10;
/** Numbers closer than this would lie on each other; the line stays, its number goes. */
const apart = 42;
export const stripWidth = 580;
/** A short line before the numbers; the lines that matter go on behind them. */
const tick = 80;
const behindNumbers = 210;
/** A number so close to the end of a piece would stick out; it stands whole on the piece that laps over. */
const edge = 22;
const paints = {
  round: { stroke: 'black', width: 3 },
  fullLine: { stroke: 'black', width: 9 },
  lowLine: { stroke: 'black', width: 5, dash: [24, 12] },
  quarterLine: { stroke: 'black', width: 4, dash: [5, 9] },
} as const;

/** Pieces from the floor to the rim. */
export function dipPieces(marks: readonly DipMark[], rim_mm: number): readonly DipPiece[] {
  const count = Math.max(1, Math.ceil(rim_mm / piece_mm));
  return Array.from({ length: count }, (_, index) => {
    const from_mm = index === 0 ? 0 : index * piece_mm - lap_mm;
    const to_mm = Math.min(rim_mm, (index + 1) * piece_mm);
    return piece(marks, { from_mm, to_mm, index, isLast: index === count - 1 });
  });
}

type Cut = {
  readonly from_mm: number;
  readonly to_mm: number;
  readonly index: number;
  readonly isLast: boolean;
};

function piece(marks: readonly DipMark[], cut: Cut): DipPiece {
  const height = (cut.to_mm - cut.from_mm) * 10;
  const y = (height_mm: number): number => (cut.to_mm - height_mm) * 10;
  const inside = marks.filter(({ height_mm }) => cut.from_mm <= height_mm && height_mm <= cut.to_mm);
  const frame = path(
    [
      [1, 1],
      [stripWidth - 1, 1],
      [stripWidth - 1, height - 1],
      [1, height - 1],
    ],
    'closed',
  );
  const joint = cut.index === 0 ? [] : [across(y(cut.index * piece_mm), 'joint')];
  return {
    height,
    shapes: [
      { d: frame, paint: { stroke: 'black', width: 2 } },
      ...joint,
      ...inside.map((mark) => across(y(mark.height_mm), mark.kind)),
    ],
    labels: spaced(
      inside.map(({ text, kind, height_mm }) => ({ text, kind, y: y(height_mm), side: 'over' as const })),
      height,
    ),
    foot: cut.index === 0 ? 'floor' : 'joint',
    top: cut.isLast ? 'end' : 'joint',
  };
}

function across(y: number, kind: DipMark['kind'] | 'joint'): Shape {
  const rule = (from: number, to: number): string =>
    path(
      [
        [from, y],
        [to, y],
      ],
      'open',
    );
  const d = kind === 'round' ? rule(0, tick) : rule(0, tick) + rule(behindNumbers, stripWidth);
  return { d, paint: kind === 'joint' ? { stroke: 'black', width: 2, dash: [40, 20] } : paints[kind] };
}

/** Round numbers in one column and named lines in another, none closer to its neighbour than letters are high. */
function spaced(labels: readonly DipLabel[], height: number): readonly DipLabel[] {
  const rounds = labels.filter(({ kind, y }) => kind === 'round' && edge <= y && y <= height - edge);
  const named = labels.filter(({ kind }) => kind !== 'round').sort((a, b) => a.y - b.y);
  return [
    ...thinned(rounds),
    ...named.map((label, index) => ({ ...label, side: sideOf(label, named[index - 1]) })),
  ];
}

/** Two lines of letters need as much room over a line. */
function sideOf(label: DipLabel, above: DipLabel | undefined): DipLabel['side'] {
  return above !== undefined && label.y - above.y < 2 * apart ? 'under' : 'over';
}

function thinned(labels: readonly DipLabel[]): readonly DipLabel[] {
  const kept: DipLabel[] = [];
  for (const label of [...labels].sort((a, b) => a.y - b.y)) {
    const last = kept.at(-1);
    if (last === undefined || label.y - last.y >= apart) kept.push(label);
  }
  return kept;
}
