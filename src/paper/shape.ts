import * as harfbuzz from 'harfbuzzjs';
import type { Bidi } from './bidi.ts';
import { type Direction, mixesDirections, paragraphDirection } from './direction.ts';
import type { Face, Glyph, Run } from './face.ts';
import { fromPairs, learnPairs } from './knownPairs.ts';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Latin letters, digits and signs, of which no two make one grapheme; most texts have nothing else. */
const apart = /^[ -~\u00a0-\u024f]*$/;
export const lastPlain = 0x24f;

/** Whether each sign of a text is a grapheme by itself. */
export function isPlain(text: string): boolean {
  return apart.test(text);
}

export function graphemesOf(text: string): Iterable<string> {
  return isPlain(text) ? text : Array.from(graphemes.segment(text), ({ segment }) => segment);
}

/**
 * The space at the end has no place of its own, so that words stand where they stand whatever follows them: the last
 * letter has it in its text.
 */
export function shapeInOrder(
  text: string,
  faces: readonly Face[],
  bidi: Bidi,
  base?: Direction,
): readonly Run[] {
  if (base === undefined && !mixesDirections(text)) return shapePart(text, faces, 'ltr');
  const words = text.trimEnd();
  const space = text.slice(words.length);
  const parts = bidi.visualParts(words, base ?? paragraphDirection(words));
  const [only, ...more] = parts;
  const runs = parts.flatMap((part) => shapePart(part.text, faces, part.direction));
  if (only && more.length === 0 && space !== '') return withSpace(runs, only.direction, space);
  return [...runs, ...shapePart(space, faces, 'ltr')];
}

function withSpace(runs: readonly Run[], direction: Direction, space: string): readonly Run[] {
  const last = direction === 'rtl' ? runs[0] : runs.at(-1);
  if (!last) return runs;
  const end = Math.max(...last.glyphs.map((glyph) => glyph.cluster));
  const glyphs = last.glyphs.map((glyph) => {
    return glyph.cluster === end && glyph.text !== '' ? { ...glyph, text: glyph.text + space } : glyph;
  });
  return runs.map((run) => (run === last ? { ...run, glyphs } : run));
}

export function shapePart(text: string, faces: readonly Face[], direction: Direction): readonly Run[] {
  const runs = splitByFace(text, faces).map(([face, part]) => ({
    face,
    direction,
    glyphs: shapeRun(face, part, direction),
  }));
  return direction === 'rtl' ? runs.reverse() : runs;
}

/**
 * One font for each grapheme: the first that has its first character, else the last. A space stays with the font
 * before it. This repeats the layout engine's own choice; chosen otherwise, words would not have the width they were
 * given.
 */
function splitByFace(text: string, faces: readonly Face[]): [Face, string][] {
  const [usual] = faces;
  if (usual && text !== '' && isPlain(text) && hasAll(usual, text)) return [[usual, text]];
  const parts: [Face, string][] = [];
  for (const segment of graphemesOf(text)) {
    const last = parts.at(-1);
    const face = chooseFace(segment, faces, last?.[0]);
    if (last && last[0] === face) last[1] += segment;
    else parts.push([face, segment]);
  }
  return parts;
}

function hasAll(face: Face, text: string): boolean {
  for (let at = 0; at < text.length; at += 1) if (!face.has(text.charCodeAt(at))) return false;
  return true;
}

export function chooseFace(grapheme: string, faces: readonly Face[], before: Face | undefined): Face {
  const first = grapheme.codePointAt(0) ?? 0;
  if (before && /^\s$/.test(grapheme) && before.has(first)) return before;
  const face = faces.find((candidate) => candidate.has(first)) ?? faces.at(-1);
  if (!face) throw new Error('There is no font of this weight.');
  return face;
}

/** One for all text: the shaper's memory is freed only when a collector comes by. */
const buffer = new harfbuzz.Buffer();

export function shapeRun(face: Face, text: string, direction: Direction): readonly Glyph[] {
  if (face.kerning !== 'pairs' || direction === 'rtl' || !isPlain(text)) return shaped(face, text, direction);
  const known = fromPairs(face, text);
  if (known !== null) return known;
  const glyphs = shaped(face, text, direction);
  learnPairs(face, text, glyphs);
  return glyphs;
}

/** A font has the letters of one script, so the first letter of a run tells the script of all of it. */
function shaped(face: Face, text: string, direction: Direction): readonly Glyph[] {
  buffer.reset();
  buffer.addText(text);
  buffer.setDirection(direction === 'rtl' ? harfbuzz.Direction.RTL : harfbuzz.Direction.LTR);
  buffer.guessSegmentProperties();
  harfbuzz.shape(face.font, buffer);
  const places = buffer.getGlyphPositions();
  const infos = buffer.getGlyphInfos();
  return infos.map((info, index) => {
    const place = places[index];
    const opens = infos[index - 1]?.cluster !== info.cluster;
    return {
      id: info.codepoint,
      text: opens ? text.slice(info.cluster, clusterEnd(infos, index, direction) ?? text.length) : '',
      cluster: info.cluster,
      advance: place?.xAdvance ?? 0,
      right: place?.xOffset ?? 0,
      up: place?.yOffset ?? 0,
    };
  });
}

/** Where the text of a cluster ends: at the start of the next in the text, which stands before it where text runs to the left. */
function clusterEnd(
  infos: readonly { readonly cluster: number }[],
  first: number,
  direction: Direction,
): number | undefined {
  if (direction === 'rtl') return infos[first - 1]?.cluster;
  let next = first + 1;
  while (infos[next]?.cluster === infos[first]?.cluster) next += 1;
  return infos[next]?.cluster;
}
