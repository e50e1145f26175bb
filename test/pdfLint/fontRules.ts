/** Whether the fonts are in the file, have every glyph that is drawn in its true width, and say what each letter means. */
import { decodePDFRawStream, PDFArray, PDFDict, PDFNumber, type PDFObject, PDFRawStream } from 'pdf-lib';
import { tablesOf } from '../../src/paper/woff.ts';
import { type Looked, name, nameIn } from './document.ts';
import type { Tell } from './lint.ts';
import type { Command, Operand } from './readContent.ts';

export function checkFonts({ pages }: Looked, tell: Tell): void {
  const used = new Map<PDFDict, Set<number>>();
  for (const { page, commands } of pages) {
    const fonts = page.node.Resources()?.lookup(name('Font'));
    if (fonts instanceof PDFDict) collect(commands, fonts, used);
  }
  for (const [font, codes] of used) checkFont(font, codes, tell);
}

/** Which codes of which font are drawn: two bytes each in the fonts that we write. */
function collect(commands: readonly Command[], fonts: PDFDict, used: Map<PDFDict, Set<number>>): void {
  let codes = new Set<number>();
  for (const { operator, operands } of commands) {
    if (operator === 'Tf') {
      const font = fonts.lookup(name(String(operands[0]).slice(1)));
      if (!(font instanceof PDFDict)) continue;
      codes = used.get(font) ?? new Set();
      used.set(font, codes);
    } else if (operator === 'Tj' || operator === 'TJ')
      for (const code of operands.flatMap(codesIn)) codes.add(code);
  }
}

function codesIn(operand: Operand): readonly number[] {
  if (Array.isArray(operand)) return operand.flatMap(codesIn);
  return typeof operand === 'string'
    ? (operand.match(/.{4}/g) ?? []).map((hex) => Number.parseInt(hex, 16))
    : [];
}

function checkFont(font: PDFDict, codes: ReadonlySet<number>, tell: Tell): void {
  const at = nameIn(font, 'BaseFont') ?? 'a font';
  if (nameIn(font, 'Encoding') !== 'Identity-H') tell('31-006', at);
  const list = font.lookup(name('DescendantFonts'));
  const inner = list instanceof PDFArray ? list.lookup(0) : undefined;
  if (!(inner instanceof PDFDict)) {
    tell('31-009', at);
    return;
  }
  if (nameIn(inner, 'CIDToGIDMap') !== 'Identity') tell('31-004', at);
  const descriptor = inner.lookup(name('FontDescriptor'));
  const file = descriptor instanceof PDFDict ? descriptor.lookup(name('FontFile2')) : undefined;
  if (file instanceof PDFRawStream)
    checkGlyphs(inner, decodePDFRawStream(file).decode(), codes, (rule, what) => tell(rule, at, what));
  else tell('31-009', at);
  if (codes.has(0)) tell('31-030', at);
  const map = font.lookup(name('ToUnicode'));
  if (map instanceof PDFRawStream)
    checkMeaning(decodePDFRawStream(map).decode(), codes, (rule, what) => tell(rule, at, what));
  else tell('31-027', at);
}

type TellHere = (rule: Parameters<Tell>[0], what: string) => void;

function checkMeaning(bytes: Uint8Array, codes: ReadonlySet<number>, tell: TellHere): void {
  const meaning = new Map<number, string>();
  for (const [, code = '', text = ''] of new TextDecoder('latin1')
    .decode(bytes)
    .matchAll(/^<(\w+)> <(\w*)>$/gm)) {
    if (code.length === 4) meaning.set(Number.parseInt(code, 16), text.toLowerCase());
  }
  for (const code of codes) {
    const text = meaning.get(code);
    if (text === undefined || text === '') tell('10-001', `code ${code}`);
    else if (/^(.{4})*?(0000|feff|fffe)/.test(text)) tell('31-028', `code ${code}`);
  }
}

/** Widths as the PDF tells them against those of the font in it, which may be rounded to a unit (ISO 14289-1, 7.21.5). */
function checkGlyphs(inner: PDFDict, sfnt: Uint8Array, codes: ReadonlySet<number>, tell: TellHere): void {
  const tables = tablesOf(sfnt);
  const view = (tag: string) => {
    const bytes = tables.get(tag) ?? new Uint8Array(64);
    return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  };
  const [head, hhea, maxp, hmtx] = ['head', 'hhea', 'maxp', 'hmtx'].map(view);
  if (!head || !hhea || !maxp || !hmtx) return;
  const perEm = head.getUint16(18);
  const measured = hhea.getUint16(34);
  const widths = widthsOf(inner.lookup(name('W')));
  const usual = inner.lookup(name('DW'));
  for (const code of codes) {
    if (code >= maxp.getUint16(4)) {
      tell('31-011', `glyph ${code}`);
      continue;
    }
    const own = (hmtx.getUint16(4 * Math.min(code, measured - 1)) * 1000) / perEm;
    const told = widths.get(code) ?? (usual instanceof PDFNumber ? usual.asNumber() : 1000);
    if (Math.abs(own - told) > 1) tell('31-016', `glyph ${code}: ${told}, in the font ${Math.round(own)}`);
  }
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
