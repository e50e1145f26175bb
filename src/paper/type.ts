import * as harfbuzz from 'harfbuzzjs';
import { CoverError, codePointName, type Uncovered } from './cover.ts';
import type { Weight } from './page.ts';
import { sfntFromWoff } from './woff.ts';

/** A font file as it comes from its package. */
export type FontFile = {
  /** One name for each subset of a family; both weights of a subset share it. */
  readonly name: string;
  readonly weight: Weight;
  readonly postScriptName: string;
  readonly woff: Uint8Array;
};

export type Face = {
  /** Place in the list of faces: the short, stable name of the face in what we write. */
  readonly index: number;
  readonly name: string;
  readonly weight: Weight;
  readonly postScriptName: string;
  readonly sfnt: Uint8Array<ArrayBuffer>;
  readonly unitsPerEm: number;
  readonly has: (codePoint: number) => boolean;
  readonly font: harfbuzz.Font;
};

/** Lengths in font units. The first glyph of a cluster carries its text, the others of it an empty one. */
export type Glyph = {
  readonly id: number;
  readonly text: string;
  readonly advance: number;
  readonly right: number;
  readonly up: number;
};

export type Run = { readonly face: Face; readonly glyphs: readonly Glyph[] };

export type Type = {
  readonly faces: readonly Face[];
  /** Text to glyphs, with the same choice of fonts as the layout engine makes. */
  readonly shape: (text: string, weight: Weight) => readonly Run[];
  /** The width of shaped text at a size, in the unit of the size. */
  readonly width: (text: string, weight: Weight, size: number) => number;
  /** Throws a CoverError for everything in these texts that cannot be printed. */
  readonly mustCover: (texts: Iterable<string>) => void;
  /** The outline of a glyph as SVG path data, in font units, y up. */
  readonly outline: (face: Face, glyph: number) => string;
};

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Enough for many sheets; forgotten all at once when full. */
const keptRuns = 20_000;

/** Makes the type case from font files. Their order is the order of fallback. */
export function typeFrom(files: readonly FontFile[]): Type {
  const faces = files.map(faceFrom);
  const byWeight = {
    text: faces.filter((face) => face.weight === 'text'),
    heavy: faces.filter((face) => face.weight === 'heavy'),
  };
  const shaped = new Map<string, readonly Run[]>();
  const shape = (text: string, weight: Weight): readonly Run[] => {
    const key = weight + text;
    const known = shaped.get(key);
    if (known) return known;
    const runs = splitByFace(text, byWeight[weight]).map(([face, part]) => ({
      face,
      glyphs: shapeRun(face, part),
    }));
    if (shaped.size >= keptRuns) shaped.clear();
    shaped.set(key, runs);
    return runs;
  };
  return {
    faces,
    shape,
    width: (text, weight, size) => shape(text, weight).reduce((sum, run) => sum + runWidth(run, size), 0),
    mustCover: (texts) => mustCover(texts, byWeight),
    outline: (face, glyph) => face.font.glyphToPath(glyph),
  };
}

function faceFrom(file: FontFile, index: number): Face {
  const sfnt = new Uint8Array(sfntFromWoff(file.woff));
  const face = new harfbuzz.Face(new harfbuzz.Blob(sfnt));
  const codePoints = new Set(face.collectUnicodes());
  return {
    index,
    name: file.name,
    weight: file.weight,
    postScriptName: file.postScriptName,
    sfnt,
    unitsPerEm: face.upem,
    has: (codePoint) => codePoints.has(codePoint),
    font: new harfbuzz.Font(face),
  };
}

/**
 * One font for each grapheme: the first that has its first character, else the last. A space stays with the font
 * before it. This repeats the layout engine's own choice; chosen otherwise, words would not have the width they were
 * given.
 */
function splitByFace(text: string, faces: readonly Face[]): [Face, string][] {
  const parts: [Face, string][] = [];
  for (const { segment } of graphemes.segment(text)) {
    const last = parts.at(-1);
    const face = chooseFace(segment, faces, last?.[0]);
    if (last && last[0] === face) last[1] += segment;
    else parts.push([face, segment]);
  }
  return parts;
}

function chooseFace(grapheme: string, faces: readonly Face[], before: Face | undefined): Face {
  const first = grapheme.codePointAt(0) ?? 0;
  if (before && /^\s$/.test(grapheme) && before.has(first)) return before;
  const face = faces.find((candidate) => candidate.has(first)) ?? faces.at(-1);
  if (!face) throw new Error('There is no font of this weight.');
  return face;
}

/** One for all text: the shaper's memory is freed only when a collector comes by. */
const buffer = new harfbuzz.Buffer();

function shapeRun(face: Face, text: string): readonly Glyph[] {
  buffer.reset();
  buffer.addText(text);
  buffer.guessSegmentProperties();
  harfbuzz.shape(face.font, buffer);
  const places = buffer.getGlyphPositions();
  const infos = buffer.getGlyphInfos();
  return infos.map((info, index) => {
    const place = places[index];
    const opens = infos[index - 1]?.cluster !== info.cluster;
    const next =
      infos.slice(index + 1).find((later) => later.cluster !== info.cluster)?.cluster ?? text.length;
    return {
      id: info.codepoint,
      text: opens ? text.slice(info.cluster, next) : '',
      advance: place?.xAdvance ?? 0,
      right: place?.xOffset ?? 0,
      up: place?.yOffset ?? 0,
    };
  });
}

function runWidth(run: Run, size: number): number {
  const units = run.glyphs.reduce((sum, glyph) => sum + glyph.advance, 0);
  return (units / run.face.unitsPerEm) * size;
}

function mustCover(texts: Iterable<string>, byWeight: Readonly<Record<Weight, readonly Face[]>>): void {
  const uncovered = new Map<string, Uncovered>();
  const fine = new Set<string>();
  for (const text of texts) {
    for (const { segment } of graphemes.segment(text)) {
      if (fine.has(segment) || /^[\s]$/.test(segment)) continue;
      const missing = [...segment].filter((_, at, all) => !canPrint(segment, all[at] ?? '', byWeight));
      if (missing.length === 0) fine.add(segment);
      for (const character of missing) {
        if (uncovered.has(character)) continue;
        uncovered.set(character, { character, codePoint: codePointName(character), standsIn: text });
      }
    }
  }
  if (uncovered.size > 0) throw new CoverError([...uncovered.values()]);
}

/** Stands for what could not be read, and has a shape in our fonts; but a sheet with damaged text is not to be printed. */
const damaged = '\ufffd';

/**
 * Whether both weights draw this character where it stands. A mark may be missing from the font and yet be printed,
 * when the font has the letter and the mark as one. Beyond the Basic Multilingual Plane the layout engine may choose
 * another font than we do, so nothing is printed from there.
 */
function canPrint(
  grapheme: string,
  character: string,
  byWeight: Readonly<Record<Weight, readonly Face[]>>,
): boolean {
  if ((character.codePointAt(0) ?? 0) > 0xffff || character === damaged) return false;
  return [byWeight.text, byWeight.heavy].every((faces) => {
    const face = chooseFace(grapheme, faces, undefined);
    if (face.has(character.codePointAt(0) ?? 0)) return true;
    return shapeRun(face, grapheme).every((glyph) => glyph.id !== 0);
  });
}
