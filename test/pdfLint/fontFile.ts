/** What a TrueType font in a PDF says of itself: its glyphs, their widths, and the glyph of each character. */
import { decodePDFRawStream, PDFDict, PDFRawStream } from 'pdf-lib';
import { tablesOf } from '../../src/paper/woff.ts';
import { name } from './document.ts';

export function fontFileOf(font: PDFDict): Uint8Array | null {
  const descriptor = font.lookup(name('FontDescriptor'));
  const file = descriptor instanceof PDFDict ? descriptor.lookup(name('FontFile2')) : undefined;
  return file instanceof PDFRawStream ? decodePDFRawStream(file).decode() : null;
}

export type Measures = {
  readonly glyphs: number;
  /** In thousandths of the type size. */
  readonly width: (glyph: number) => number;
};

export function measuresOf(file: Uint8Array): Measures {
  const [head, hhea, maxp, hmtx] = ['head', 'hhea', 'maxp', 'hmtx'].map((tag) => tableOf(file, tag));
  if (!head || !hhea || !maxp || !hmtx) return { glyphs: 0, width: () => 0 };
  const perEm = head.getUint16(18);
  const measured = hhea.getUint16(34);
  return {
    glyphs: maxp.getUint16(4),
    width: (glyph) => (hmtx.getUint16(4 * Math.min(glyph, measured - 1)) * 1000) / perEm,
  };
}

/** A width may be rounded to a unit (ISO 14289-1, 7.21.5). */
export function widthsDiffer(told: number, own: number): boolean {
  return Math.abs(told - own) > 1;
}

function tableOf(file: Uint8Array, tag: string): DataView | null {
  const bytes = tablesOf(file).get(tag);
  return bytes ? new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength) : null;
}

/** One of the tables that lead from characters to glyphs. */
export type CharacterTable = {
  readonly platform: number;
  readonly encoding: number;
  /** null where the table does not know the character. */
  readonly glyphOf: (character: number) => number | null;
};

export function charactersOf(file: Uint8Array): readonly CharacterTable[] {
  const cmap = tableOf(file, 'cmap');
  if (cmap === null) return [];
  return Array.from({ length: cmap.getUint16(2) }, (_, at) => {
    const record = 4 + 8 * at;
    const start = cmap.getUint32(record + 4);
    const table = new DataView(cmap.buffer, cmap.byteOffset + start, cmap.byteLength - start);
    return {
      platform: cmap.getUint16(record),
      encoding: cmap.getUint16(record + 2),
      glyphOf: (character: number) => (table.getUint16(0) === 4 ? inSegments(table, character) : null),
    };
  });
}

/** Format 4 (OpenType, cmap): segments of characters, each with a distance to its glyphs or a list of them. */
function inSegments(table: DataView, character: number): number | null {
  const size = table.getUint16(6);
  const [ends, starts, deltas, lists] = [14, 16 + size, 16 + 2 * size, 16 + 3 * size];
  for (let at = 0; at < size; at += 2) {
    if (table.getUint16(ends + at) < character) continue;
    const first = table.getUint16(starts + at);
    if (first > character) return null;
    const delta = table.getUint16(deltas + at);
    const list = table.getUint16(lists + at);
    if (list === 0) return (character + delta) & 0xffff;
    const glyph = table.getUint16(lists + at + list + 2 * (character - first));
    return glyph === 0 ? null : (glyph + delta) & 0xffff;
  }
  return null;
}
