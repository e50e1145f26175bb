import bidiFactory from 'bidi-js';
import { type Direction, directionOf, inVisualOrder } from './direction.ts';

/**
 * The order of letters in text that mixes directions (Unicode Standard Annex #9). A part of the press of its own, so
 * that only those who print such text load it.
 */
export type Bidi = {
  /** The level of each UTF-16 unit, and the level of the paragraph that it stands in. Odd levels run to the left. */
  readonly levelsOf: (text: string) => { readonly levels: Uint8Array; readonly base: Uint8Array };
  /** Parts of one direction each, as they stand from left to right. */
  readonly visualParts: (text: string, base: Direction) => readonly DirectedPart[];
};

export type DirectedPart = { readonly text: string; readonly direction: Direction };

const { getEmbeddingLevels } = bidiFactory();

export const bidi: Bidi = { levelsOf, visualParts };

function levelsOf(text: string): { levels: Uint8Array; base: Uint8Array } {
  const { levels, paragraphs } = getEmbeddingLevels(text);
  const base = new Uint8Array(text.length);
  for (const { start, end, level } of paragraphs) base.fill(level, start, end + 1);
  return { levels, base };
}

function visualParts(text: string, base: Direction): readonly DirectedPart[] {
  const { levels } = getEmbeddingLevels(text, base);
  const parts: { text: string; level: number }[] = [];
  for (let at = 0; at < text.length; at++) {
    const [last, level] = [parts.at(-1), levels[at] ?? 0];
    if (last?.level === level) last.text += text[at];
    else parts.push({ text: text[at] ?? '', level });
  }
  return inVisualOrder(parts).map((part) => ({ text: part.text, direction: directionOf(part.level) }));
}
