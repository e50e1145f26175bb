/** How text is shown in a PDF: its glyphs, with their kerning, and what tells a reader the text they stand for. */
import type { Glyph, Run } from './face.ts';
import { lately } from './lately.ts';
import { inReadingOrder, lettersOf } from './letters.ts';
import { thousandth } from './measures.ts';
import { fontName, nothing, type PdfFonts } from './pdfFonts.ts';
import { hex } from './pdfUnicode.ts';

/** Shaped text at a size, in the order in which it is read. */
export type ShownText = {
  /** Where several glyphs make one letter, some readers need to be told the text of the whole. */
  readonly isSpelled: boolean;
  readonly runs: readonly {
    /** How far from the start of the words it stands; null where it stands right after the run before it. */
    readonly after_pt: number | null;
    readonly commands: string;
  }[];
};

/** The same words stand in many places of a print; by the fonts of the print, the shaped text, and its size. */
const shown = new WeakMap<PdfFonts, WeakMap<readonly Run[], Map<number, ShownText>>>();

/** @param runs shaped text; the same object is shown once */
export function shownText(runs: readonly Run[], size_pt: number, fonts: PdfFonts): ShownText {
  const bySize = sizesOf(runs, fonts);
  const known = bySize.get(size_pt);
  if (known !== undefined) return known;
  const made: ShownText = {
    isSpelled: runs.some(({ direction, glyphs }) => direction === 'ltr' && glyphs.some(isFurther)),
    runs: inReadingOrder(runs, size_pt).map(({ run, after_pt }) => {
      const font = `/${fontName(run.face)} ${pdfNumber(size_pt)} Tf`;
      return { after_pt, commands: [font, ...commandsOf(run, size_pt, fonts)].join('\n') };
    }),
  };
  bySize.set(size_pt, made);
  return made;
}

function sizesOf(runs: readonly Run[], fonts: PdfFonts): Map<number, ShownText> {
  let ofFonts = shown.get(fonts);
  if (ofFonts === undefined) {
    ofFonts = new WeakMap();
    shown.set(fonts, ofFonts);
  }
  let bySize = ofFonts.get(runs);
  if (bySize === undefined) {
    bySize = new Map();
    ofFonts.set(runs, bySize);
  }
  return bySize;
}

function isFurther(glyph: Glyph): boolean {
  return glyph.text === '';
}

/** A number as PDF writes it: never with an exponent. */
export function pdfNumber(value: number): string {
  const known = written.get(value);
  if (known !== undefined) return known;
  const text = String(thousandth(value));
  written.set(value, text);
  return text;
}

/** The same few places come again on every print of a sheet, and writing a number takes long. */
const written = lately<number, string>(2_000);

/** Shows glyphs with their kerning: a number in the list moves the next glyph to the left, in thousandths. */
function commandsOf(run: Run, size_pt: number, fonts: PdfFonts): readonly string[] {
  const lines: string[] = [];
  let shown: string[] = [];
  let glyphs = '';
  let move = 0;
  let rise = 0;
  const flush = () => {
    if (glyphs) shown.push(`<${glyphs}>`);
    if (shown.length > 0) lines.push(`[${shown.join(' ')}] TJ`);
    [shown, glyphs] = [[], ''];
  };
  for (const glyph of lettersOf(run)) {
    if (glyph.up !== rise) {
      flush();
      rise = glyph.up;
      lines.push(`${pdfNumber((rise / run.face.unitsPerEm) * size_pt)} Ts`);
    }
    const per1000 = thousandths(glyph, run);
    move -= per1000.right;
    if (thousandth(move) !== 0) {
      if (glyphs) shown.push(`<${glyphs}>`);
      shown.push(pdfNumber(move));
      glyphs = '';
    }
    const text = glyph.text || nothing;
    const drawn = glyph.parts ?? glyph.id;
    glyphs += hex(fonts.code(run.face, drawn, text));
    move = per1000.right + fonts.width(run.face, drawn, text) - per1000.advance;
  }
  // The next run starts where this one ends.
  if (thousandth(move) !== 0) {
    shown.push(`<${glyphs}>`, pdfNumber(move));
    glyphs = '';
  }
  flush();
  if (rise !== 0) lines.push('0 Ts');
  return lines;
}

function thousandths(glyph: Glyph, { face }: Run): { right: number; advance: number } {
  const per1000 = 1000 / face.unitsPerEm;
  return { right: glyph.right * per1000, advance: glyph.advance * per1000 };
}
