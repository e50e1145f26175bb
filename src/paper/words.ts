import { thousandth } from './measures.ts';
import type { Ink, Item, Shape, Words } from './page.ts';
import { readInk } from './paint.ts';
import type { Piece } from './readSvg.ts';
import { type DirectedPiece, mixedLines, type ReadText, setMixedLine } from './mixedLines.ts';
import type { Type } from './type.ts';

/** How far apart, in points, two places may be and still be the same. */
const same_pt = 0.01;
/** How much kerning may move a word, in parts of the type size; what stands farther off was placed there. */
const kerned_frac = 0.2;

/**
 * Joins the pieces that belong to one word, so that they are shaped together: the layout engine lists "water" and the
 * comma after it apart, but kerns across them. Where the sheet has a space that the engine left out, the words before
 * get it, so that the text can be read.
 */
export function joinWords(found: readonly (Piece | Shape)[], settled: ReadText, type: Type): Item[] {
  const items: Item[] = [];
  const reading = readingPlace(settled);
  const mixed = mixedLines(found, settled, type);
  let words: Piece | null = null;
  for (const each of found) {
    if (each.kind === 'shape') {
      if (words) items.push(finished(words, type));
      items.push(each);
      words = null;
      continue;
    }
    const { space, at } = reading(each);
    const line = mixed.get(each);
    if (line) {
      if (words) items.push(finished(words, type));
      words = null;
      if (line.parts.length === 0) addSpaceToLast(items, space, { next: each, nodes: settled.nodes });
      line.parts.push({ piece: each, space, at });
      if (line.parts.length === line.pieces)
        items.push(...setMixedLine(line, type).map((part) => finished(part, type)));
    } else if (!words) {
      addSpaceToLast(items, space, { next: each, nodes: settled.nodes });
      words = each;
    } else if (space === '' && belongs(words, each)) words = withText(words, words.text + each.text);
    else {
      const before = withText(words, spaced(words.text, space));
      items.push(finished(before, type));
      words =
        space !== '' && belongs(before, each) ? { ...each, x_pt: afterSpace_pt(before, each, type) } : each;
    }
  }
  if (words) items.push(finished(words, type));
  return items;
}

function withText(words: Piece, text: string): Piece {
  return { ...words, text };
}

function isBlank(text: string): boolean {
  return text.trim() === '';
}

/** Words with the space that follows them, if they do not end in one. */
function spaced(text: string, space: string): string {
  return /\s$/.test(text) ? text : text + space;
}

/** Shapes, such as a line under the words, may stand between two words of one paragraph. */
function addSpaceToLast(
  items: Item[],
  space: string,
  { next, nodes }: { next: Piece; nodes: ReadText['nodes'] },
): void {
  const at = items.findLastIndex((item) => item.kind === 'words');
  const last = items[at];
  if (last?.kind !== 'words' || nodes[last.node]?.paragraph !== nodes[next.node]?.paragraph) return;
  items[at] = { ...last, text: spaced(last.text, space) };
}

/** Whether a piece is set like these words, on the same line. */
function belongs(words: Piece, piece: Piece): boolean {
  return (
    words.node === piece.node &&
    words.size_pt === piece.size_pt &&
    words.weight === piece.weight &&
    words.ink === piece.ink &&
    words.clip === piece.clip &&
    Math.abs(words.baseline_pt - piece.baseline_pt) < same_pt
  );
}

/**
 * In mixed text the engine lists no blanks, and places each piece as if nothing before it were kerned, though it broke
 * the lines by kerned widths. So a word starts where the word before it, with its space, really ends.
 */
function afterSpace_pt(words: Piece, piece: Piece, type: Type): number {
  const after_pt = words.x_pt + type.width(words.text, words.weight, words.size_pt);
  return Math.abs(piece.x_pt - after_pt) < words.size_pt * kerned_frac ? after_pt : piece.x_pt;
}

/** Pieces are laid out side by side; joined, they are a little narrower or wider, as they then are kerned. */
function finished({ kind: _, ...words }: DirectedPiece, type: Type): Words {
  const width_pt = type.width(words.text.trimEnd(), words.weight, words.size_pt, words.direction);
  return {
    ...words,
    kind: 'words',
    x_pt: thousandth(words.x_pt),
    baseline_pt: thousandth(words.baseline_pt),
    width_pt: thousandth(width_pt),
    size_pt: thousandth(words.size_pt),
    ink: readInk(words.ink) ?? noInk,
  };
}

const noInk: Ink = { red: 0, green: 0, blue: 0, alpha_frac: 0 };

/** The space that stands before a piece, if any, and the place of the piece in the text of its paragraph. */
type Reading = { readonly space: string; readonly at: number | null };

/** Follows each paragraph's text while its pieces come. */
function readingPlace(settled: ReadText): (piece: Piece) => Reading {
  const places = new Map<number, number>();
  return (piece) => {
    const paragraph = settled.nodes[piece.node]?.paragraph ?? 0;
    const text = settled.paragraphs.get(paragraph) ?? '';
    const from = places.get(paragraph) ?? 0;
    if (isBlank(piece.text)) return { space: '', at: null };
    const at = text.indexOf(piece.text, from);
    if (at < 0) return { space: '', at: null };
    places.set(paragraph, at + piece.text.length);
    const [blank = ''] = from > 0 ? (/\s+/.exec(text.slice(from, at)) ?? []) : [];
    // Ordinary blanks and line ends are one space; a thin or a binding one is kept as it is.
    return { space: blank.replace(/[ \t\n]+/g, ' ').slice(0, 1), at };
  };
}
