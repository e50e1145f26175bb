import type { Composed } from './letters.ts';

type OutlineOf = (glyph: number) => Uint8Array;
type Bounds = readonly [left: number, bottom: number, right: number, top: number];

/** OpenType, glyf table, composite description: arguments are words, and places instead of points; more follow. */
const [wordArguments, places, more] = [0x0001, 0x0002, 0x0020];

/** A letter of several glyphs as one composed glyph of a font (OpenType, glyf table). Parts without ink are left out. */
export function composedOutline(letter: Composed, outlineOf: OutlineOf): Uint8Array {
  const inked = letter.parts.filter((part) => outlineOf(part.glyph).length > 0);
  if (inked.length === 0) return new Uint8Array();
  const view = new DataView(new ArrayBuffer(10 + inked.length * 8));
  view.setInt16(0, -1);
  for (const [at, bound] of boundsOf(letter, outlineOf).entries()) view.setInt16(2 + at * 2, bound);
  for (const [at, { glyph, right, up }] of inked.entries()) {
    const from = 10 + at * 8;
    view.setUint16(from, wordArguments | places | (at < inked.length - 1 ? more : 0));
    view.setUint16(from + 2, glyph);
    view.setInt16(from + 4, right);
    view.setInt16(from + 6, up);
  }
  return new Uint8Array(view.buffer);
}

/** The box around all parts, from the boxes that their outlines tell. */
export function boundsOf(letter: Composed, outlineOf: OutlineOf): Bounds {
  const boxes = letter.parts.flatMap(({ glyph, right, up }): Bounds[] => {
    const outline = outlineOf(glyph);
    if (outline.length === 0) return [];
    const view = new DataView(outline.buffer, outline.byteOffset, outline.byteLength);
    const [left, bottom] = [view.getInt16(2) + right, view.getInt16(4) + up];
    return [[left, bottom, view.getInt16(6) + right, view.getInt16(8) + up]];
  });
  if (boxes.length === 0) return [0, 0, 0, 0];
  const all = (side: 0 | 1 | 2 | 3) => boxes.map((box) => box[side]);
  return [Math.min(...all(0)), Math.min(...all(1)), Math.max(...all(2)), Math.max(...all(3))];
}
