/** Composed fonts (ISO 32000-1, 9.7), as we write them: TrueType, called by glyph. */
import { decodePDFRawStream, PDFArray, PDFDict, PDFNumber, type PDFObject, PDFRawStream } from 'pdf-lib';
import { name, nameIn } from './document.ts';
import type { TellHere } from './fontRules.ts';
import { fontFileOf, measuresOf, widthsDiffer } from './fontFile.ts';

export function checkComposedFont(font: PDFDict, codes: ReadonlySet<number>, tell: TellHere): void {
  if (!/^Identity-[HV]$/.test(nameIn(font, 'Encoding') ?? '')) tell('31-006');
  if (codes.has(0)) tell('31-030');
  const list = font.lookup(name('DescendantFonts'));
  const inner = list instanceof PDFArray ? list.lookup(0) : undefined;
  const file = inner instanceof PDFDict ? fontFileOf(inner) : null;
  if (!(inner instanceof PDFDict) || file === null) {
    tell('31-009');
    return;
  }
  const tied = inner.lookup(name('CIDToGIDMap'));
  if (tied === undefined) tell('31-005');
  else if (nameIn(inner, 'CIDToGIDMap') !== 'Identity') tell('31-004');
  checkGlyphs(inner, file, codes, tell);
  checkList(inner, measuresOf(file).glyphs, tell);
}

function checkGlyphs(inner: PDFDict, file: Uint8Array, codes: ReadonlySet<number>, tell: TellHere): void {
  const { glyphs, width } = measuresOf(file);
  const widths = widthsOf(inner.lookup(name('W')));
  const usual = inner.lookup(name('DW'));
  for (const code of codes) {
    const told = widths.get(code) ?? (usual instanceof PDFNumber ? usual.asNumber() : 1000);
    if (code >= glyphs) tell('31-011', `glyph ${code}`);
    else if (widthsDiffer(told, width(code)))
      tell('31-016', `glyph ${code}: ${told}, in the font ${Math.round(width(code))}`);
  }
}

/** A list of the glyphs, one bit for each from the highest bit of the first byte on; without one all is well. */
function checkList(inner: PDFDict, glyphs: number, tell: TellHere): void {
  const descriptor = inner.lookup(name('FontDescriptor'));
  const list = descriptor instanceof PDFDict ? descriptor.lookup(name('CIDSet')) : undefined;
  if (!(list instanceof PDFRawStream)) return;
  const bits = decodePDFRawStream(list).decode();
  const isListed = (glyph: number) => ((bits[glyph >> 3] ?? 0) & (0x80 >> (glyph & 7))) !== 0;
  const all = Array.from({ length: Math.max(glyphs, bits.length * 8) }, (_, glyph) => glyph);
  if (all.some((glyph) => glyph < glyphs && !isListed(glyph))) tell('31-014');
  if (all.some((glyph) => glyph >= glyphs && isListed(glyph))) tell('31-015');
}

/** `first [w w w]` and `first last w` (ISO 32000-1, 9.7.4.3). */
function widthsOf(list: PDFObject | undefined): ReadonlyMap<number, number> {
  const widths = new Map<number, number>();
  const items = list instanceof PDFArray ? list.asArray() : [];
  for (let at = 0; at < items.length; ) {
    const [first, next, third] = [items[at], items[at + 1], items[at + 2]];
    const from = first instanceof PDFNumber ? first.asNumber() : 0;
    if (next instanceof PDFArray) {
      for (const [i, one] of next.asArray().entries())
        if (one instanceof PDFNumber) widths.set(from + i, one.asNumber());
      at += 2;
    } else {
      const last = next instanceof PDFNumber ? next.asNumber() : from;
      if (third instanceof PDFNumber)
        for (let code = from; code <= last; code += 1) widths.set(code, third.asNumber());
      at += 3;
    }
  }
  return widths;
}
