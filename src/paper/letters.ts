import { mixesDirections } from './direction.ts';
import type { Glyph, Run } from './face.ts';

/** A letter of several glyphs as one: where each of its parts stands, in font units, y up, and how wide the whole is. */
export type Composed = {
  readonly parts: readonly { readonly glyph: number; readonly right: number; readonly up: number }[];
  readonly advance: number;
};

/** A glyph, or a letter composed of several. */
export type Letter = Glyph & { readonly parts?: Composed };

/**
 * The letters of a run as a font of its own has them. What runs to the left is turned by whoever reads it, glyph by
 * glyph, and read wrong where several glyphs share a text, or one has a text of several units: so there each letter is
 * one glyph, and has its text in the order in which it will be turned.
 */
export function lettersOf(run: Run): readonly Letter[] {
  if (!hasLetters(run)) return run.glyphs;
  if (run.direction === 'ltr') return spaceFirst(run.glyphs);
  const clusters = new Map<number, Glyph[]>();
  for (const glyph of run.glyphs) {
    const cluster = clusters.get(glyph.cluster);
    if (cluster) cluster.push(glyph);
    else clusters.set(glyph.cluster, [glyph]);
  }
  return [...clusters.values()].map(letterOf);
}

/** A run, and how far from the start of its words it stands; null where it stands right after the run before it. */
type PlacedRun = { readonly run: Run; readonly after_pt: number | null };

/**
 * The runs of some words in the order in which they are read. Where a run to the left has signs only, nothing tells a
 * reader to turn them, so each is a run of its own.
 */
export function inReadingOrder(runs: readonly Run[], size_pt: number): readonly PlacedRun[] {
  const [first] = runs;
  if (!runs.every((run) => run.direction === 'rtl'))
    return runs.map((run) => ({ run, after_pt: run === first ? 0 : null }));
  let after_pt = 0;
  const width_pt = ({ face, glyphs }: Run) =>
    glyphs.reduce((sum, glyph) => sum + (glyph.advance / face.unitsPerEm) * size_pt, 0);
  const placed = runs.flatMap(signsApart).map((whole) => {
    const run = blanksInText(whole);
    const end_pt = after_pt + width_pt(whole);
    const start_pt = end_pt - width_pt(run);
    after_pt = end_pt;
    return { run, after_pt: start_pt };
  });
  return placed.reverse();
}

/**
 * Readers find spaces by the way from one glyph to the next, and miss one where the next run stands to the left. So the
 * letter before such a space has it in its text, and the space itself is not drawn.
 */
function blanksInText(run: Run): Run {
  const first = run.glyphs.findIndex((glyph) => !isBlank(glyph));
  if (first <= 0) return run;
  const blanks = run.glyphs.slice(0, first).map((glyph) => glyph.text);
  const glyphs = run.glyphs.slice(first);
  const last = glyphs.find((glyph) => glyph.text !== '');
  return {
    ...run,
    glyphs: glyphs.map((glyph) =>
      glyph === last ? { ...glyph, text: glyph.text + blanks.join('') } : glyph,
    ),
  };
}

function signsApart(run: Run): readonly Run[] {
  if (hasLetters(run)) return [run];
  const apart: Glyph[][] = [];
  for (const glyph of run.glyphs) {
    const last = apart.at(-1);
    if (last?.every(isBlank)) last.push(glyph);
    else apart.push([glyph]);
  }
  return apart.map((glyphs) => ({ ...run, glyphs }));
}

function isBlank(glyph: Glyph): boolean {
  return glyph.text.trim() === '';
}

function hasLetters(run: Run): boolean {
  return run.glyphs.some((glyph) => mixesDirections(glyph.text));
}

/** Digits of Arabic run to the right, yet a reader turns the space after them. */
function spaceFirst(glyphs: readonly Glyph[]): readonly Glyph[] {
  const text = glyphs.at(-1)?.text ?? '';
  const space = text.trim() === '' ? '' : text.slice(text.trimEnd().length);
  if (space === '') return glyphs;
  const moved = (glyph: Glyph, at: number): string => {
    const own = at === glyphs.length - 1 ? glyph.text.trimEnd() : glyph.text;
    return at === 0 ? space + own : own;
  };
  return glyphs.map((glyph, at) => ({ ...glyph, text: moved(glyph, at) }));
}

function letterOf(glyphs: readonly Glyph[]): Letter {
  const [first, ...further] = glyphs;
  if (!first) throw new Error('A letter has a glyph.');
  const text = glyphs
    .flatMap((glyph) => glyph.text.split(''))
    .reverse()
    .join('');
  if (further.length === 0) return { ...first, text };
  let advance = 0;
  const parts = glyphs.map((glyph) => {
    const part = { glyph: glyph.id, right: advance + glyph.right, up: glyph.up };
    advance += glyph.advance;
    return part;
  });
  return { ...first, text, advance, right: 0, up: 0, parts: { parts, advance } };
}
