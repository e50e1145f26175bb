import { type PDFContext, PDFHexString, type PDFRef } from 'pdf-lib';
import type { Composed } from './letters.ts';
import { md5 } from './md5.ts';
import { thousandth } from './measures.ts';
import { subsetFont, table, viewOf } from './subset.ts';
import type { Face } from './face.ts';
import { tablesOf } from './woff.ts';
import { unicodeMap } from './pdfUnicode.ts';

/**
 * Zero-width space: what the further glyphs of a letter stand for, since they must stand for something. Readers do not
 * move on over it, so such a glyph has no width of its own.
 */
export const nothing = '\u200b';

/** A glyph as one font of the print has it: its own number for each text it stands for. */
type Code = { readonly glyph: number | Composed; readonly text: string };

export type PdfFonts = {
  /** The number, in the embedded font, of this glyph standing for this text. */
  readonly code: (face: Face, glyph: number | Composed, text: string) => number;
  /** The width of a glyph as the PDF tells it, in thousandths of the type size. */
  readonly width: (face: Face, glyph: number | Composed, text: string) => number;
  /** Writes the fonts that were used, as the font resources of the pages. */
  readonly write: (context: PDFContext) => Record<string, PDFRef>;
};

type Used = { readonly face: Face; readonly codes: Code[]; readonly byKey: Map<string, number> };

/** Collects the glyphs of a print. The same glyph gets one number per text, so that copied text is always right. */
export function pdfFonts(): PdfFonts {
  const used = new Map<Face, Used>();
  const usedOf = (face: Face): Used => {
    const known = used.get(face) ?? { face, codes: [], byKey: new Map() };
    used.set(face, known);
    return known;
  };
  return {
    code: (face, glyph, text) => {
      const { codes, byKey } = usedOf(face);
      const key = `${typeof glyph === 'number' ? glyph : JSON.stringify(glyph)} ${text}`;
      const known = byKey.get(key) ?? codes.push({ glyph, text });
      byKey.set(key, known);
      return known;
    },
    width: (face, glyph, text) => (text === nothing ? 0 : glyphWidth(face, glyph)),
    write: (context) => {
      const ordered = [...used.values()].sort((a, b) => a.face.index - b.face.index);
      return Object.fromEntries(ordered.map((each) => [fontName(each.face), writeFont(context, each)]));
    },
  };
}

export function fontName(face: Face): string {
  return `F${face.index}`;
}

function glyphWidth(face: Face, glyph: number | Composed): number {
  const advance = typeof glyph === 'number' ? face.font.glyphHAdvance(glyph) : glyph.advance;
  return thousandth((advance * 1000) / face.unitsPerEm);
}

/** A composite font whose codes are the glyph numbers of the subset (ISO 32000-1, 9.7). */
function writeFont(context: PDFContext, { face, codes }: Used): PDFRef {
  const glyphs = codes.map((code) => code.glyph);
  const still = new Set(codes.flatMap(({ text }, at) => (text === nothing ? [at + 1] : [])));
  const file = subsetFont(face, glyphs, still);
  const name = `${subsetTag(file)}+${face.postScriptName}`;
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: name,
      CIDSystemInfo: {
        Registry: PDFHexString.of('41646F6265'),
        Ordering: PDFHexString.of('4964656E74697479'),
        Supplement: 0,
      },
      FontDescriptor: writeDescriptor(context, { face, name, file }),
      DW: glyphWidth(face, 0),
      W: [1, glyphs.map((glyph, at) => (still.has(at + 1) ? 0 : glyphWidth(face, glyph)))],
      CIDToGIDMap: 'Identity',
    }),
  );
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: context.register(
        context.flateStream(
          unicodeMap(
            codes.map(({ text }, at) => ({ code: at + 1, text })),
            2,
          ),
        ),
      ),
    }),
  );
}

/** Six letters that are the same for the same subset, and different for different ones. */
export function subsetTag(file: Uint8Array): string {
  return [...md5(file).subarray(0, 6)].map((byte) => String.fromCharCode(65 + (byte % 26))).join('');
}

/** Flag 6 of a font descriptor: the font's characters are ordinary letters. */
const nonsymbolic = 32;

export function writeDescriptor(
  context: PDFContext,
  { face, name, file }: { face: Face; name: string; file: Uint8Array },
): PDFRef {
  const tables = tablesOf(face.sfnt);
  const [head, hhea, os2] = ['head', 'hhea', 'OS/2'].map((tag) => viewOf(table(tables, tag)));
  const em = (view: DataView | undefined, offset: number) => {
    return thousandth(((view?.getInt16(offset) ?? 0) * 1000) / face.unitsPerEm);
  };
  const capHeightSince2 = (os2?.getUint16(0) ?? 0) >= 2;
  return context.register(
    context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      Flags: nonsymbolic,
      FontBBox: [em(head, 36), em(head, 38), em(head, 40), em(head, 42)],
      ItalicAngle: 0,
      Ascent: em(hhea, 4),
      Descent: em(hhea, 6),
      CapHeight: capHeightSince2 ? em(os2, 88) : em(hhea, 4),
      // No font tells this width of its stems; readers use it only where they replace the font, which is embedded.
      StemV: face.weight === 'heavy' ? 140 : 80,
      FontFile2: context.register(context.flateStream(file, { Length1: file.length })),
    }),
  );
}
