/** A dip strip cut into pieces that fit the paper, every mark at its true height. Lengths in tenths of a millimetre. */
import { pushApart } from './labels.ts';
import { path, type Shape } from './shape.ts';

export type DipMark = {
  readonly kind: 'round' | 'fullLine' | 'lowLine' | 'quarterLine';
  readonly text: string;
  readonly height_mm: number;
};

/** A number beside its line or a name over it, with the room it takes. */
export type DipLabel = {
  readonly text: string;
  readonly kind: DipMark['kind'];
  readonly top: number;
  readonly height: number;
};

type Line = { readonly text: string; readonly kind: DipMark['kind']; readonly y: number };

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
/** A line of letters, and a gap that keeps them off the lines. Where numbers would lie on each other, only lines stay. */
const letters = 40;
const clear = 6;
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
    labels: placed(
      inside.map(({ text, kind, height_mm }) => ({ text, kind, y: y(height_mm) })),
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

/** Round numbers in one column and names in another, none closer to its neighbour than letters are high. */
function placed(lines: readonly Line[], height: number): readonly DipLabel[] {
  const rounds = lines.filter(({ kind, y }) => kind === 'round' && edge <= y && y <= height - edge);
  return [...thinned(rounds).map(numberOf), ...names(lines, height)];
}

function numberOf({ text, kind, y }: Line): DipLabel {
  return { text, kind, top: y - letters / 2, height: letters };
}

/** Over its line where there is room, else pushed away from its neighbours; as many as the piece has room for. */
function names(lines: readonly Line[], height: number): readonly DipLabel[] {
  const tall = 2 * letters;
  const room = Math.max(1, Math.floor(height / tall));
  const named = [...lines]
    .filter(({ kind }) => kind !== 'round')
    .sort((a, b) => a.y - b.y)
    .slice(0, room);
  const wishes = named.map(({ y }) => ({ middle: y - tall / 2 - clear, height: tall }));
  const tops = pushApart(wishes, clear / 2, height - clear / 2);
  return named.map(({ text, kind }, index) => ({ text, kind, top: tops[index] ?? 0, height: tall }));
}

function thinned(lines: readonly Line[]): readonly Line[] {
  const kept: Line[] = [];
  for (const one of [...lines].sort((a, b) => a.y - b.y)) {
    const last = kept.at(-1);
    if (last === undefined || one.y - last.y >= letters + 2) kept.push(one);
  }
  return kept;
}
