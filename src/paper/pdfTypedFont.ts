/**
 * The font of what people type into fields. What they will type is not known, and viewers set it without shaping: so
 * it is a simple font with all of Windows-1252 (ISO 32000-1, 9.6.3 and annex D) that the typeface has.
 */
import type { PDFContext, PDFRef } from 'pdf-lib';
import { cmapOf } from './cmap.ts';
import type { Face } from './face.ts';
import { thousandth } from './measures.ts';
import { subsetTag, writeDescriptor } from './pdfFonts.ts';
import { type Coded, unicodeMap } from './pdfUnicode.ts';
import { subsetFont } from './subset.ts';

const firstCode = 0x20;
const lastCode = 0xff;
/** The characters of the codes 0x80 to 0x9f; a blank where there is none. Elsewhere the code is the character. */
const special = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

type Letter = { readonly code: number; readonly character: number };

function letterAt(code: number): Letter | null {
  if (code < 0x80 || code > 0x9f) return code === 0x7f ? null : { code, character: code };
  const sign = special[code - 0x80] ?? ' ';
  return sign === ' ' ? null : { code, character: sign.charCodeAt(0) };
}

function lettersOf(face: Face): readonly Letter[] {
  const codes = Array.from({ length: lastCode - firstCode + 1 }, (_, at) => firstCode + at);
  return codes
    .map(letterAt)
    .filter((letter) => letter !== null)
    .filter(({ character }) => face.has(character))
    .sort((a, b) => a.character - b.character);
}

function codedOf({ code, character }: Letter): Coded {
  return { code, text: String.fromCharCode(character) };
}

export type TypedFont = {
  readonly ref: PDFRef;
  /** The widest digit, in parts of the type size. */
  readonly digit_frac: number;
};

/** @param glyphOf the glyph of a character in this face */
export function writeTypedFont(
  context: PDFContext,
  face: Face,
  glyphOf: (character: number) => number,
): TypedFont {
  const letters = lettersOf(face);
  const glyphs = letters.map(({ character }) => glyphOf(character));
  const map = new Map(letters.map(({ character }, at) => [character, at + 1]));
  const file = subsetFont(face, glyphs, new Set(), cmapOf(map));
  const name = `${subsetTag(file)}+${face.postScriptName}`;
  const widths = Array.from({ length: lastCode - firstCode + 1 }, () => 0);
  for (const [at, { code }] of letters.entries())
    widths[code - firstCode] = thousandth(
      (face.font.glyphHAdvance(glyphs[at] ?? 0) * 1000) / face.unitsPerEm,
    );
  const ref = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'TrueType',
      BaseFont: name,
      Encoding: 'WinAnsiEncoding',
      FirstChar: firstCode,
      LastChar: lastCode,
      Widths: widths,
      FontDescriptor: writeDescriptor(context, { face, name, file }),
      ToUnicode: context.register(context.flateStream(unicodeMap(letters.map(codedOf), 1))),
    }),
  );
  const digits = widths.slice(0x30 - firstCode, 0x3a - firstCode);
  return { ref, digit_frac: Math.max(...digits) / 1000 };
}
