/** Simple TrueType fonts (ISO 32000-1, 9.6.3 and 9.6.6.4): those whose letters are one byte each. */
import { PDFArray, PDFDict, PDFNumber, type PDFObject } from 'pdf-lib';
import { name, nameIn } from './document.ts';
import type { TellHere } from './fontRules.ts';
import { type CharacterTable, charactersOf, fontFileOf, measuresOf, widthsDiffer } from './fontFile.ts';

/** Flag 3 of a font descriptor: signs of its own instead of letters (table 123). */
const symbolic = 4;

export function checkSimpleFont(font: PDFDict, codes: ReadonlySet<number>, tell: TellHere): void {
  const file = fontFileOf(font);
  if (file === null) {
    tell('31-009');
    return;
  }
  const tables = charactersOf(file);
  if (isSymbolic(font)) {
    checkSigns(font, tables, tell);
    return;
  }
  checkEncoding(font.lookup(name('Encoding')), tables, tell);
  const unicode = tables.find(({ platform, encoding }) => platform === 3 && encoding === 1);
  if (!unicode && !tables.some(({ platform, encoding }) => platform === 1 && encoding === 0)) tell('31-017');
  if (unicode) checkLetters(font, { file, unicode }, codes, tell);
}

export function simpleWidths(font: PDFDict): ReadonlyMap<number, number> {
  const [first, list] = [font.lookup(name('FirstChar')), font.lookup(name('Widths'))];
  const from = first instanceof PDFNumber ? first.asNumber() : 0;
  const all = list instanceof PDFArray ? list.asArray() : [];
  return new Map(all.map((one, at) => [from + at, one instanceof PDFNumber ? one.asNumber() : 0]));
}

function isSymbolic(font: PDFDict): boolean {
  const descriptor = font.lookup(name('FontDescriptor'));
  const flags = descriptor instanceof PDFDict ? descriptor.lookup(name('Flags')) : undefined;
  return flags instanceof PDFNumber && (flags.asNumber() & symbolic) !== 0;
}

function checkSigns(font: PDFDict, tables: readonly CharacterTable[], tell: TellHere): void {
  if (font.has(name('Encoding'))) tell('31-024');
  if (tables.length === 0) tell('31-025');
  const ofSigns = tables.some(({ platform, encoding }) => platform === 3 && encoding === 0);
  if (tables.length > 1 && !ofSigns) tell('31-026');
}

function checkEncoding(
  encoding: PDFObject | undefined,
  tables: readonly CharacterTable[],
  tell: TellHere,
): void {
  if (encoding === undefined) {
    tell('31-019');
    return;
  }
  const changed = encoding instanceof PDFDict ? encoding : null;
  if (changed && !changed.has(name('BaseEncoding'))) tell('31-020');
  const base = changed ? (nameIn(changed, 'BaseEncoding') ?? 'WinAnsiEncoding') : String(encoding).slice(1);
  if (!['WinAnsiEncoding', 'MacRomanEncoding'].includes(base)) tell('31-021', base);
  if (!changed?.has(name('Differences'))) return;
  tell('31-022');
  if (!tables.some(({ platform, encoding: of }) => platform === 3 && of === 1)) tell('31-023');
}

type Letters = { readonly file: Uint8Array; readonly unicode: CharacterTable };

function checkLetters(
  font: PDFDict,
  { file, unicode }: Letters,
  codes: ReadonlySet<number>,
  tell: TellHere,
): void {
  const { glyphs, width } = measuresOf(file);
  const widths = simpleWidths(font);
  for (const code of codes) {
    const glyph = unicode.glyphOf(characterOf(code));
    const told = widths.get(code) ?? 0;
    if (glyph === null) tell('31-018', `code ${code}`);
    else if (glyph === 0) tell('31-030', `code ${code}`);
    else if (glyph >= glyphs) tell('31-011', `code ${code}`);
    else if (widthsDiffer(told, width(glyph))) tell('31-016', `code ${code}: ${told}, not ${width(glyph)}`);
  }
}

/** The character of a code of WinAnsiEncoding (ISO 32000-1, annex D), which is Windows-1252. */
function characterOf(code: number): number {
  return new TextDecoder('windows-1252').decode(Uint8Array.of(code)).codePointAt(0) ?? 0;
}
