/**
 * Words of a font that kerns by pairs, put together from what was learned of other words: most of what differs from sheet
 * to sheet are numbers and names, and asking the shaper for each takes longer than all else that is done with them.
 */
import type { Face, Glyph } from './face.ts';

/** What is known of a face, by the codes of its signs. */
type Known = {
  readonly ids: Map<number, number>;
  /** How far it is from a sign to the next one. */
  readonly advances: Map<number, number>;
  /** How far it is to whatever comes, where no sign follows. */
  readonly last: Map<number, number>;
};

const ofFaces = new WeakMap<Face, Known>();

function knownOf(face: Face): Known {
  const known = ofFaces.get(face) ?? { ids: new Map(), advances: new Map(), last: new Map() };
  ofFaces.set(face, known);
  return known;
}

function pairOf(code: number, next: number): number {
  return code * 0x10000 + next;
}

/** The glyphs of a text whose signs are graphemes by themselves; null where one of its pairs has not been seen yet. */
export function fromPairs(face: Face, text: string): readonly Glyph[] | null {
  const { ids, advances, last } = knownOf(face);
  const glyphs: Glyph[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    const isLast = at + 1 === text.length;
    const advance = isLast ? last.get(code) : advances.get(pairOf(code, text.charCodeAt(at + 1)));
    const id = ids.get(code);
    if (advance === undefined || id === undefined) return null;
    glyphs.push({ id, text: text[at] ?? '', cluster: at, advance, right: 0, up: 0 });
  }
  return glyphs;
}

/** Remembers the pairs of a text as the shaper set it. */
export function learnPairs(face: Face, text: string, glyphs: readonly Glyph[]): void {
  const { ids, advances, last } = knownOf(face);
  for (const [at, { id, advance }] of glyphs.entries()) {
    const code = text.charCodeAt(at);
    ids.set(code, id);
    if (at + 1 === text.length) last.set(code, advance);
    else advances.set(pairOf(code, text.charCodeAt(at + 1)), advance);
  }
}
