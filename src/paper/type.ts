import type { Bidi } from './bidi.ts';
import type { Direction } from './direction.ts';
import type { Face, Run } from './face.ts';
import { mustCover } from './mustCover.ts';
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
  /** The outline of a glyph as SVG path data, in font units, y up. */
  readonly outline: (face: Face, glyph: number) => string;
};

/** Enough for many sheets; forgotten all at once when full. */
const keptRuns = 20_000;

/** What a type has beyond the fonts of every sheet. */
export type Extras = Pick<Type, 'packs' | 'bidi'>;

/** Makes the type from faces. Their order is the order of fallback. */
export function typeFrom(faces: readonly Face[], { packs, bidi }: Extras): Type {
  const byWeight = {
    text: faces.filter((face) => face.weight === 'text'),
    heavy: faces.filter((face) => face.weight === 'heavy'),
  };
  const shaped = {
    text: new Map<string, readonly Run[]>(),
    heavy: new Map<string, readonly Run[]>(),
  };
  const fine = new Set<string>();
  const shape = (text: string, weight: Weight, base?: Direction): readonly Run[] => {
    const kept = shaped[weight];
    const key = base === undefined ? text : `${base}\n${text}`;
    const known = kept.get(key);
    if (known) return known;
    const runs = bidi
      ? shapeInOrder(text, byWeight[weight], bidi, base)
      : shapePart(text, byWeight[weight], 'ltr');
    if (kept.size >= keptRuns) kept.clear();
    kept.set(key, runs);
    return runs;
  };
  return {
    faces,
    packs,
    bidi,
    shape,
    width: (text, weight, size, base) =>
      shape(text, weight, base).reduce((sum, run) => sum + runWidth(run, size), 0),
    mustCover: (texts) => mustCover(texts, byWeight, fine),
    outline: (face, glyph) => face.font.glyphToPath(glyph),
  };
}

function runWidth(run: Run, size: number): number {
  const units = run.glyphs.reduce((sum, glyph) => sum + glyph.advance, 0);
  return (units / run.face.unitsPerEm) * size;
}
