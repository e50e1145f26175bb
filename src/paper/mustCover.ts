import { CoverError, codePointName, type Uncovered } from './cover.ts';
import { paragraphDirection } from './direction.ts';
import type { Face } from './face.ts';
import type { Weight } from './page.ts';
import { chooseFace, graphemesOf, isPlain, shapeRun } from './shape.ts';

/**
 * Throws a CoverError for everything in these texts that the faces of either weight cannot draw.
 * @param fine graphemes that they can draw; whatever is found fine is added
 */
export function mustCover(
  texts: Iterable<string>,
  byWeight: Readonly<Record<Weight, readonly Face[]>>,
  fine: Set<string>,
): void {
  const uncovered = new Map<string, Uncovered>();
  for (const text of texts) {
    if (isKnown(text, fine)) continue;
    for (const segment of graphemesOf(text)) {
      if (fine.has(segment)) continue;
      const signs = /^\s$/.test(segment) ? [] : [...segment];
      const missing = signs.filter((sign) => !canPrint(segment, sign, byWeight));
      if (missing.length === 0) fine.add(segment);
      for (const character of missing) {
        if (uncovered.has(character)) continue;
        uncovered.set(character, { character, codePoint: codePointName(character), standsIn: text });
      }
    }
  }
  if (uncovered.size > 0) throw new CoverError([...uncovered.values()]);
}

/** Most texts are plain, and have nothing that others did not have. */
function isKnown(text: string, fine: ReadonlySet<string>): boolean {
  if (!isPlain(text)) return false;
  for (let at = 0; at < text.length; at += 1) if (!fine.has(text[at] ?? '')) return false;
  return true;
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
    return shapeRun(face, grapheme, paragraphDirection(grapheme)).every((glyph) => glyph.id !== 0);
  });
}
