/** Whether the fonts are in the file, have every glyph that is drawn in its true width, and say what each letter means. */
import { decodePDFRawStream, PDFDict, type PDFObject, PDFRawStream } from 'pdf-lib';
import { checkComposedFont } from './composedFontRules.ts';
import { commandsIn, type Looked, name, nameIn } from './document.ts';
import type { Tell } from './lint.ts';
import type { Command, Operand } from './readContent.ts';
import { checkSimpleFont, simpleWidths } from './simpleFontRules.ts';

export type TellHere = (rule: Parameters<Tell>[0], what?: string) => void;

export function checkFonts(looked: Looked, tell: Tell): void {
  for (const [font, codes] of usedFonts(looked)) {
    const at = nameIn(font, 'BaseFont') ?? 'a font';
    const tellHere: TellHere = (rule, what) => tell(rule, at, what);
    if (nameIn(font, 'Subtype') === 'Type0') checkComposedFont(font, codes, tellHere);
    else if (nameIn(font, 'Subtype') === 'TrueType') checkSimpleFont(font, codes, tellHere);
    else tellHere('31-009', nameIn(font, 'Subtype') ?? '');
    checkMeaning(font, codes, tellHere);
  }
}

type Used = Map<PDFDict, Set<number>>;

/** Every font of the pages and forms with the codes that are drawn; of one that fields are typed in, all that it has. */
function usedFonts({ document, pages }: Looked): Used {
  const used: Used = new Map();
  for (const { page, commands } of pages) collect(commands, fontsIn(page.node.Resources()), used);
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFRawStream) || nameIn(object.dict, 'Subtype') !== 'Form') continue;
    collect(commandsIn(object), fontsIn(object.dict.lookup(name('Resources'))), used);
  }
  const form = document.catalog.lookup(name('AcroForm'));
  const typed = form instanceof PDFDict ? fontsIn(form.lookup(name('DR'))) : undefined;
  for (const key of typed?.keys() ?? []) {
    const font = typed?.lookup(key);
    if (font instanceof PDFDict) used.set(font, new Set([...(used.get(font) ?? []), ...lettersOf(font)]));
  }
  return used;
}

function fontsIn(resources: PDFObject | undefined): PDFDict | undefined {
  const fonts = resources instanceof PDFDict ? resources.lookup(name('Font')) : undefined;
  return fonts instanceof PDFDict ? fonts : undefined;
}

/** The codes that a simple font gives a width. */
function lettersOf(font: PDFDict): readonly number[] {
  return [...simpleWidths(font)].flatMap(([code, width]) => (width > 0 ? [code] : []));
}

function collect(commands: readonly Command[], fonts: PDFDict | undefined, used: Used): void {
  let font: PDFDict | undefined;
  for (const { operator, operands } of commands) {
    if (operator === 'Tf') {
      const named = fonts?.lookup(name(String(operands[0]).slice(1)));
      font = named instanceof PDFDict ? named : undefined;
      if (font && !used.has(font)) used.set(font, new Set());
    } else if (font && ['Tj', 'TJ', "'", '"'].includes(operator)) {
      const digits = digitsOf(font);
      for (const code of operands.flatMap((one) => codesIn(one, digits))) used.get(font)?.add(code);
    }
  }
}

/** How many hexadecimal digits make a code of the font. */
function digitsOf(font: PDFDict): 2 | 4 {
  return nameIn(font, 'Subtype') === 'Type0' ? 4 : 2;
}

/** Strings come as hexadecimal; numbers between them move the pen. */
function codesIn(operand: Operand, digits: 2 | 4): readonly number[] {
  if (Array.isArray(operand)) return operand.flatMap((one) => codesIn(one, digits));
  if (typeof operand !== 'string') return [];
  return (operand.match(new RegExp(`.{${digits}}`, 'g')) ?? []).map((code) => Number.parseInt(code, 16));
}

/** Encodings that say by themselves what a letter means. */
const telling: ReadonlySet<string | null> = new Set(['WinAnsiEncoding', 'MacRomanEncoding']);

function checkMeaning(font: PDFDict, codes: ReadonlySet<number>, tell: TellHere): void {
  const map = font.lookup(name('ToUnicode'));
  if (!(map instanceof PDFRawStream)) {
    if (!telling.has(nameIn(font, 'Encoding'))) tell('31-027');
    return;
  }
  const meaning = meaningsIn(map, digitsOf(font));
  for (const code of codes) {
    const signs: readonly string[] = meaning.get(code)?.match(/.{4}/g) ?? [];
    if (signs.length === 0) tell('10-001', `code ${code}`);
    if (signs.includes('0000')) tell('31-028', `code ${code}`);
    if (signs.includes('feff') || signs.includes('fffe')) tell('31-029', `code ${code}`);
  }
}

/** Codes written with another number of digits than the font's have no meaning to it. */
function meaningsIn(map: PDFRawStream, digits: 2 | 4): ReadonlyMap<number, string> {
  const source = new TextDecoder('latin1').decode(decodePDFRawStream(map).decode());
  const lists = [...source.matchAll(/beginbfchar\n([\s\S]*?)endbfchar/g)]
    .map(([, list = '']) => list)
    .join('');
  const lines = [...lists.matchAll(/^<(\w+)> <(\w*)>$/gm)].filter(([, code]) => code?.length === digits);
  return new Map(lines.map(([, code = '', text = '']) => [Number.parseInt(code, 16), text.toLowerCase()]));
}
