import { CoverError, codePointName, type Uncovered } from './cover.ts';
import { paragraphDirection } from './direction.ts';
import type { Face } from './face.ts';
import type { Weight } from './page.ts';
import { type Lately, lately } from './lately.ts';
import { chooseFace, graphemesOf, isPlain, lastPlain, shapeRun } from './shape.ts';

/** Graphemes that both weights can draw; of single signs that are graphemes by themselves a list, as most texts have no other. */
export type FineSigns = {
  readonly signs: Uint8Array;
  readonly graphemes: Set<string>;
  /** A name comes again at once: on the next page, and where more lines are tried for it. */
  readonly texts: Lately<string, true>;
};

const keptTexts = 50;

export function fineSigns(): FineSigns {
  return { signs: new Uint8Array(lastPlain + 1), graphemes: new Set(), texts: lately(keptTexts) };
}

/**
 * Throws a CoverError for everything in these texts that the faces of either weight cannot draw.
 * @param fine what they can draw; whatever is found fine is added
 */
export function mustCover(
  texts: Iterable<string>,
  byWeight: Readonly<Record<Weight, readonly Face[]>>,
  fine: FineSigns,
): void {
  const uncovered = new Map<string, Uncovered>();
  for (const text of texts) {
    if (isKnown(text, fine)) continue;
    const missing = missingIn(text, byWeight, fine);
    if (missing.length === 0) fine.texts.set(text, true);
    for (const character of missing) {
      if (uncovered.has(character)) continue;
      uncovered.set(character, { character, codePoint: codePointName(character), standsIn: text });
    }
  }
  if (uncovered.size > 0) throw new CoverError([...uncovered.values()]);
}

function missingIn(
  text: string,
  byWeight: Readonly<Record<Weight, readonly Face[]>>,
  fine: FineSigns,
): readonly string[] {
  const found: string[] = [];
  for (const segment of graphemesOf(text)) {
    if (fine.graphemes.has(segment)) continue;
    const signs = /^\s$/.test(segment) ? [] : [...segment];
    const missing = signs.filter((sign) => !canPrint(segment, sign, byWeight));
    if (missing.length === 0) note(segment, fine);
    found.push(...missing);
  }
  return found;
}

function note(grapheme: string, { signs, graphemes }: FineSigns): void {
  graphemes.add(grapheme);
  if (grapheme.length === 1 && isPlain(grapheme)) signs[grapheme.charCodeAt(0)] = 1;
}

/** Most texts have no sign that others did not have. */
function isKnown(text: string, { signs, texts }: FineSigns): boolean {
  for (let at = 0; at < text.length; at += 1)
    if (signs[text.charCodeAt(at)] !== 1) return texts.get(text) === true;
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
