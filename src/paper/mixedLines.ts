import type { Bidi } from './bidi.ts';
import { type Direction, directionOf, inVisualOrder, mixesDirections } from './direction.ts';
import type { Shape } from './page.ts';
import type { Piece } from './readSvg.ts';
import type { Type } from './type.ts';

/** The text of paragraphs as it is read, and the paragraph that each node's words are part of. */
export type ReadText = {
  readonly nodes: readonly { readonly paragraph: number }[];
  readonly paragraphs: ReadonlyMap<number, string>;
};

/** A piece that was given its direction. */
export type DirectedPiece = Piece & { readonly direction?: Direction };

/** A piece, the space that stands before it, and its place in the text of its paragraph, if it is found there. */
type Part = { readonly piece: Piece; readonly space: string; readonly at: number | null };

type Order = ReturnType<Bidi['levelsOf']>;

/** A line of a paragraph that mixes directions. Its parts come in the order they are read. */
export type MixedLine = {
  readonly order: Order;
  /** How many parts it has when it is whole. */
  pieces: number;
  readonly parts: Part[];
};

/**
 * The lines whose letters must be put in order, by their pieces. The layout engine breaks such lines where they should
 * be broken, but orders them by a shorter rule than the Unicode one: so a line is taken apart and set anew.
 */
export function mixedLines(
  found: readonly (Piece | Shape)[],
  settled: ReadText,
  type: Type,
): ReadonlyMap<Piece | Shape, MixedLine> {
  const lines = new Map<string, MixedLine>();
  const ofPiece = new Map<Piece | Shape, MixedLine>();
  if (!type.bidi) return ofPiece;
  const orders = new Map<number, Order | null>();
  for (const piece of found) {
    if (piece.kind === 'shape') continue;
    const paragraph = settled.nodes[piece.node]?.paragraph ?? 0;
    const text = settled.paragraphs.get(paragraph) ?? '';
    if (!orders.has(paragraph))
      orders.set(paragraph, mixesDirections(text) ? type.bidi.levelsOf(text) : null);
    const order = orders.get(paragraph);
    if (!order) continue;
    const key = `${paragraph} ${piece.baseline_pt.toFixed(2)}`;
    const line = lines.get(key) ?? { order, pieces: 0, parts: [] };
    line.pieces += 1;
    lines.set(key, line);
    ofPiece.set(piece, line);
  }
  return ofPiece;
}

/** Letters of one node and one level. */
type Stretch = { text: string; readonly level: number; readonly piece: Piece };

/**
 * Places the words of a whole line: each stretch of one direction by itself, in the order they are read, with the space
 * that follows it.
 */
export function setMixedLine(line: MixedLine, type: Type): readonly DirectedPiece[] {
  const stretches = stretchesOf(line);
  const widths = new Map(stretches.map((stretch, at) => [stretch, widthsOf(stretches, at, type)]));
  let x_pt = leftEnd_pt(line, widths);
  const starts = new Map<Stretch, number>();
  for (const stretch of inVisualOrder(stretches)) {
    const { before = 0, words = 0, after = 0 } = widths.get(stretch) ?? {};
    starts.set(stretch, x_pt + (directionOf(stretch.level) === 'ltr' ? before : after));
    x_pt += before + words + after;
  }
  return stretches.flatMap((stretch, at) => {
    const words = stretch.text.trim();
    if (words === '') return [];
    const space = spaceAfter(stretches, at);
    const direction = directionOf(stretch.level);
    return [{ ...stretch.piece, text: words + space, x_pt: starts.get(stretch) ?? x_pt, direction }];
  });
}

type Widths = { readonly before: number; readonly words: number; readonly after: number };

/** How wide the words of a stretch are, and the blanks around them, which are set in the font of what stands before. */
function widthsOf(stretches: readonly Stretch[], at: number, type: Type): Widths {
  const stretch = stretches[at];
  if (!stretch) return { before: 0, words: 0, after: 0 };
  const { text, piece } = stretch;
  const { weight, size_pt } = piece;
  const width = (some: string) => type.width(some, weight, size_pt, directionOf(stretch.level));
  const blank = (some: string, last: string) =>
    some === '' ? 0 : width(last + some + last) - 2 * width(last);
  const earlier = stretches.slice(0, at).map((one) => one.text);
  const lastOf = (some: string) => some.trimEnd().at(-1) ?? '';
  const own = lastOf(text);
  const last = lastOf(earlier.join(''));
  return {
    before: blank(blankBefore(text), last),
    words: width(text.trim()),
    after: blank(blankAfter(text), own === '' ? last : own),
  };
}

/**
 * Where the line begins at its left. The engine measures blanks once in the font before them, when it breaks the lines,
 * and once by themselves, when it places the pieces; so only the end it started from is where it should be.
 */
function leftEnd_pt({ parts }: MixedLine, widths: ReadonlyMap<Stretch, Widths>): number {
  const pieces = parts.map(({ piece }) => piece).filter((piece) => piece.text.trim() !== '');
  const left_pt = Math.min(...pieces.map((piece) => piece.x_pt));
  if (pieces[0]?.x_pt === left_pt) return left_pt;
  const right_pt = Math.max(...pieces.map((piece) => piece.x_pt + piece.width_pt));
  const whole_pt = [...widths.values()].reduce(
    (sum, { before, words, after }) => sum + before + words + after,
    0,
  );
  return Math.max(left_pt, right_pt - whole_pt);
}

/** The blanks at the end of a stretch, in those after it that hold nothing else, and at the start of the next. */
function spaceAfter(stretches: readonly Stretch[], at: number): string {
  const after = stretches
    .slice(at + 1)
    .map((stretch) => stretch.text)
    .join('');
  return blankAfter(stretches[at]?.text ?? '') + blankBefore(after);
}

function blankBefore(text: string): string {
  return text.trim() === '' ? '' : text.slice(0, text.length - text.trimStart().length);
}

function blankAfter(text: string): string {
  return text.slice(text.trimEnd().length);
}

/** One UTF-16 unit of a line. */
type Unit = { readonly text: string; readonly level: number; readonly piece: Piece };

/** Takes a line apart. Blanks at its ends have no place on it. */
function stretchesOf(line: MixedLine): readonly Stretch[] {
  const units = unitsOf(line);
  const blank = (unit: Unit) => unit.text.trim() === '';
  const stretches: Stretch[] = [];
  const [first, last] = [
    units.findIndex((unit) => !blank(unit)),
    units.findLastIndex((unit) => !blank(unit)),
  ];
  for (const { text, level, piece } of units.slice(first, last + 1)) {
    const before = stretches.at(-1);
    if (before?.level === level && before.piece.node === piece.node) before.text += text;
    else stretches.push({ text, level, piece });
  }
  return stretches;
}

/** What the engine added, such as the mark where a text was cut short, has the level of the paragraph. */
function unitsOf({ parts, order }: MixedLine): readonly Unit[] {
  const units: Unit[] = [];
  let reached = 0;
  for (const { piece, space, at } of parts) {
    const [before, base] = [units.at(-1), order.base[at ?? reached] ?? order.base[0] ?? 0];
    if (before && space !== '' && before.text.trim() !== '')
      units.push({ text: space, level: order.levels[reached] ?? base, piece: before.piece });
    const found = at !== null || piece.text.trim() === '';
    const from = at ?? reached;
    for (const [offset, text] of piece.text.split('').entries()) {
      units.push({ text, level: found ? (order.levels[from + offset] ?? base) : base, piece });
    }
    if (found) reached = from + piece.text.length;
  }
  return units;
}
