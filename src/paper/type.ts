import type { Bidi } from './bidi.ts';
import { type Direction, mixesDirections } from './direction.ts';
import type { Face, Run } from './face.ts';
import { lately } from './lately.ts';
import { fineSigns, mustCover } from './mustCover.ts';
import type { Weight } from './page.ts';
import { shapeInOrder, shapePart } from './shape.ts';

export type Type = {
  readonly faces: readonly Face[];
  /** The names of the packs of fonts that it has beyond those of every sheet, in the order of fallback. */
  readonly packs: readonly string[];
  /** How text that mixes directions is put in order; null where no font has letters that run to the left. */
  readonly bidi: Bidi | null;
  /**
   * Text to glyphs as they stand from left to right, with the same choice of fonts as the layout engine makes. Without
   * a direction it is set as a paragraph of its own.
   */
  readonly shape: (text: string, weight: Weight, base?: Direction) => readonly Run[];
  /** The width of shaped text at a size, in the unit of the size. */
  readonly width: (text: string, weight: Weight, size: number, base?: Direction) => number;
  /** Throws a CoverError for everything in these texts that cannot be printed. */
  readonly mustCover: (texts: Iterable<string>) => void;
  /** Text that needs no faces beside these, and no other order than from left to right; null for any other. */
  readonly alone: (text: string, weight: Weight) => Shaped | null;
  /** The outline of a glyph as SVG path data, in font units, y up. */
  readonly outline: (face: Face, glyph: number) => string;
};

/** Enough for many sheets, and for the names that are set in a type of their own. */
const keptRuns = { usual: 2_000, other: 125 };

/** What a type has beyond the fonts of every sheet. */
export type Extras = Pick<Type, 'packs' | 'bidi'> & {
  /** The type of every sheet, whose faces come first: what it can set is shaped once for all. */
  readonly usual: Type | null;
};

/** Shaped text, and its width at a size of one. */
type Shaped = { readonly runs: readonly Run[]; readonly perSize: number };

/** Makes the type from faces. Their order is the order of fallback. */
export function typeFrom(faces: readonly Face[], { packs, bidi, usual }: Extras): Type {
  const byWeight = {
    text: faces.filter((face) => face.weight === 'text'),
    heavy: faces.filter((face) => face.weight === 'heavy'),
  };
  const most = keptRuns[usual === null ? 'usual' : 'other'];
  const shaped = { text: lately<string, Shaped>(most), heavy: lately<string, Shaped>(most) };
  const alone = { text: lately<string, Shaped | null>(most), heavy: lately<string, Shaped | null>(most) };
  const fine = fineSigns();
  const runsOf = (text: string, weight: Weight, base?: Direction): readonly Run[] =>
    bidi ? shapeInOrder(text, byWeight[weight], bidi, base) : shapePart(text, byWeight[weight], 'ltr');
  const shapedOf = (text: string, weight: Weight, base?: Direction): Shaped => {
    const plain = base === undefined ? (usual?.alone(text, weight) ?? null) : null;
    if (plain !== null) return plain;
    const kept = shaped[weight];
    const key = base === undefined ? text : `${base}\n${text}`;
    const known = kept.get(key);
    if (known) return known;
    const runs = runsOf(text, weight, base);
    const made = { runs, perSize: runs.reduce((sum, run) => sum + runPerSize(run), 0) };
    kept.set(key, made);
    return made;
  };
  const aloneOf = (text: string, weight: Weight): Shaped | null => {
    const kept = alone[weight];
    const known = kept.get(text);
    if (known !== undefined) return known;
    const made = isSetBy(byWeight[weight], text) ? shapedOf(text, weight) : null;
    kept.set(text, made);
    return made;
  };
  return {
    faces,
    packs,
    bidi,
    shape: (text, weight, base) => shapedOf(text, weight, base).runs,
    width: (text, weight, size, base) => shapedOf(text, weight, base).perSize * size,
    mustCover: (texts) => mustCover(texts, byWeight, fine),
    alone: aloneOf,
    outline: (face, glyph) => face.font.glyphToPath(glyph),
  };
}

/** Whether faces have every sign of a text, and no other order than from left to right is needed. */
function isSetBy(faces: readonly Face[], text: string): boolean {
  return (
    !mixesDirections(text) &&
    [...text].every((sign) => faces.some((face) => face.has(sign.codePointAt(0) ?? 0)))
  );
}

function runPerSize({ glyphs, face }: Run): number {
  return glyphs.reduce((sum, glyph) => sum + glyph.advance, 0) / face.unitsPerEm;
}
