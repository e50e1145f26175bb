import { thousandth } from './measures.ts';
import type { Ink, Item, Shape, Words } from './page.ts';
import { readInk } from './paint.ts';
import type { Piece } from './readSvg.ts';
import type { NodeDraft, Settled } from './settle.ts';
import type { Type } from './type.ts';

/** How far apart, in points, two places may be and still be the same. */
const same_pt = 0.01;
/** How much kerning may move a word, in parts of the type size; what stands farther off was placed there. */
const kerned_frac = 0.2;

type Growing = { -readonly [key in keyof Piece]: Piece[key] } & { spaced: boolean };

/**
 * Joins the pieces that belong to one word, so that they are shaped together: the layout engine lists "water" and the
 * comma after it apart, but kerns across them. Where the sheet has a space that the engine left out, the words before
 * get it, so that the text can be read.
 */
export function joinWords(found: readonly (Piece | Shape)[], settled: Settled, type: Type): Item[] {
  const items: Item[] = [];
  const reading = readingPlace(settled);
  let words: Growing | null = null;
  const finish = () => {
    if (words) items.push(finished(words, type));
    words = null;
  };
  for (const each of found) {
    if (each.kind === 'shape') {
      finish();
      items.push(each);
      continue;
    }
    const spaceBefore = reading(each);
    if (words && belongs(words, each) && !spaceBefore) words = join(words, each);
    else {
      const next: Growing = { ...each, spaced: isBlank(each.text) };
      if (words && spaceBefore && belongs(words, each)) next.x_pt = afterSpace_pt(words, each, type);
      if (words && spaceBefore) addSpace(words);
      else if (!words && spaceBefore) addSpaceToLast(items, each, settled.nodes);
      finish();
      words = next;
    }
  }
  finish();
  return items;
}

function isBlank(text: string): boolean {
  return text.trim() === '';
}

function addSpace(words: Growing): void {
  if (!/\s$/.test(words.text)) words.text += ' ';
}

/** Shapes, such as a line under the words, may stand between two words of one paragraph. */
function addSpaceToLast(items: Item[], next: Piece, nodes: readonly NodeDraft[]): void {
  const at = items.findLastIndex((item) => item.kind === 'words');
  const last = items[at];
  if (last?.kind !== 'words' || /\s$/.test(last.text)) return;
  if (nodes[last.node]?.paragraph === nodes[next.node]?.paragraph)
    items[at] = { ...last, text: `${last.text} ` };
}

/** Whether a piece is set like these words, on the same line, and they are not yet ended by a blank. */
function belongs(words: Growing, piece: Piece): boolean {
  return (
    !words.spaced &&
    words.node === piece.node &&
    words.size_pt === piece.size_pt &&
    words.weight === piece.weight &&
    words.ink === piece.ink &&
    words.clip === piece.clip &&
    Math.abs(words.baseline_pt - piece.baseline_pt) < same_pt
  );
}

function join(words: Growing, piece: Piece): Growing {
  return { ...words, text: words.text + piece.text, spaced: isBlank(piece.text) };
}

/**
 * In mixed text the engine lists no blanks, and places each piece as if nothing before it were kerned, though it broke
 * the lines by kerned widths. So a word starts where the word before it, with its space, really ends.
 */
function afterSpace_pt(words: Growing, piece: Piece, type: Type): number {
  const after_pt = words.x_pt + type.width(`${words.text} `, words.weight, words.size_pt);
  return Math.abs(piece.x_pt - after_pt) < words.size_pt * kerned_frac ? after_pt : piece.x_pt;
}

/** Pieces are laid out side by side; joined, they are a little narrower or wider, as they then are kerned. */
function finished({ kind: _, spaced: __, ...words }: Growing, type: Type): Words {
  const width_pt = type.width(words.text.trimEnd(), words.weight, words.size_pt);
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

/** Follows each paragraph's text while its pieces come, and says whether a space stands before a piece. */
function readingPlace(settled: Settled): (piece: Piece) => boolean {
  const places = new Map<number, number>();
  return (piece) => {
    const paragraph = settled.nodes[piece.node]?.paragraph ?? 0;
    const text = settled.paragraphs.get(paragraph) ?? '';
    const from = places.get(paragraph) ?? 0;
    if (isBlank(piece.text)) return false;
    const at = text.indexOf(piece.text, from);
    if (at < 0) return false;
    places.set(paragraph, at + piece.text.length);
    return /\s/.test(text.slice(from, at)) && from > 0;
  };
}
