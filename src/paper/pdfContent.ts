import type { Clip, Ink, Item, Matrix, Page, Path, Shape, Words } from './page.ts';
import { combine } from './path.ts';
import type { PdfFonts } from './pdfFonts.ts';
import { pdfNumber, shownText } from './pdfText.ts';
import { utf16 } from './pdfUnicode.ts';
import type { TaggedPage } from './tags.ts';
import type { Type } from './type.ts';
import { withGaps } from './wordGaps.ts';

/** One page's drawing commands, and what they call by name. */
export type Content = { readonly commands: string; readonly alphas: ReadonlySet<number> };

/** The fonts a print is set with, and those of them it uses. */
export type Case = { readonly type: Type; readonly fonts: PdfFonts };

type Sheet = {
  readonly height_pt: number;
  readonly type: Type;
  readonly fonts: PdfFonts;
  readonly lines: string[];
  readonly alphas: Set<number>;
  clip: Clip | null;
  /** The marked content that is open. */
  mark: string | null;
  /** What the graphics state holds, so that it is set only when it changes. */
  state: Map<string, string>;
};

/** Draws a page in the order it is painted, each item marked as part of the document or as an artifact. */
export function pageContent(page: Page, tagged: TaggedPage, own: Case): Content {
  return itemsContent(withGaps(page, tagged), tagged, own);
}

/** The same where words have the spaces that a reader needs already. */
export function itemsContent(page: Page, tagged: TaggedPage, { type, fonts }: Case): Content {
  const sheet: Sheet = {
    height_pt: page.height_pt,
    type,
    fonts,
    lines: [],
    alphas: new Set(),
    clip: null,
    mark: null,
    state: new Map(),
  };
  for (const [at, item] of page.items.entries()) {
    const mark = tagged.marks[at] ?? null;
    openMark(sheet, mark === null ? '/Artifact BMC' : `/${tagged.owners[mark]?.role} <</MCID ${mark}>> BDC`);
    drawItem(sheet, item);
  }
  openMark(sheet, null);
  cutTo(sheet, null);
  return { commands: sheet.lines.join('\n'), alphas: sheet.alphas };
}

/** Marked content goes on over items that belong together, whatever cuts them. */
function openMark(sheet: Sheet, mark: string | null): void {
  if (sheet.mark === mark) return;
  if (sheet.mark) sheet.lines.push('EMC');
  if (mark) sheet.lines.push(mark);
  sheet.mark = mark;
}

function drawItem(sheet: Sheet, item: Item): void {
  cutTo(sheet, item.clip);
  if (item.kind === 'words') drawWords(sheet, item);
  else drawShape(sheet, item);
}

function cutTo(sheet: Sheet, clip: Clip | null): void {
  if (sheet.clip === clip) return;
  if (sheet.clip) {
    sheet.lines.push('Q');
    sheet.state = new Map();
  }
  sheet.clip = clip;
  if (!clip) return;
  sheet.lines.push('q');
  sheet.state = new Map();
  cutWithin(sheet, clip);
}

function cutWithin(sheet: Sheet, { path, rule, within }: Clip): void {
  if (within) cutWithin(sheet, within);
  sheet.lines.push(pathCommands(sheet, path), rule === 'evenodd' ? 'W* n' : 'W n');
}

function pathCommands(sheet: Sheet, path: Path): string {
  const letters = { M: 'm', L: 'l', C: 'c' };
  const commands = path.map((segment) => {
    if (segment[0] === 'Z') return 'h';
    const [letter, ...numbers] = segment;
    const placed = numbers.map((value, at) => pdfNumber(at % 2 === 0 ? value : sheet.height_pt - value));
    return `${placed.join(' ')} ${letters[letter]}`;
  });
  return commands.join(' ');
}

function set(sheet: Sheet, what: string, command: string): void {
  if (sheet.state.get(what) === command) return;
  sheet.state.set(what, command);
  sheet.lines.push(command);
}

/** Grey is written as grey, so that a printer uses its black alone. */
function inkCommand({ red, green, blue }: Ink, [grey, colour]: readonly [string, string]): string {
  const part = (channel: number) => pdfNumber(channel / 255);
  if (red === green && green === blue) return `${part(red)} ${grey}`;
  return `${part(red)} ${part(green)} ${part(blue)} ${colour}`;
}

function setAlpha(sheet: Sheet, ink: Ink): void {
  const alpha = Math.round(ink.alpha_frac * 1000);
  // Until an alpha is set, everything is opaque.
  if (alpha === 1000 && !sheet.state.has('alpha')) return;
  sheet.alphas.add(alpha);
  set(sheet, 'alpha', `/A${alpha} gs`);
}

function drawShape(sheet: Sheet, { path, fill, stroke }: Shape): void {
  const apart = fill && stroke && fill.ink.alpha_frac !== stroke.ink.alpha_frac;
  if (apart) {
    paint(sheet, { path, fill, stroke: null });
    paint(sheet, { path, fill: null, stroke });
  } else paint(sheet, { path, fill, stroke });
}

const caps = { butt: 0, round: 1, square: 2 };
const joins = { miter: 0, round: 1, bevel: 2 };

function paint(sheet: Sheet, { path, fill, stroke }: Pick<Shape, 'path' | 'fill' | 'stroke'>): void {
  if (fill) {
    setAlpha(sheet, fill.ink);
    set(sheet, 'fill', inkCommand(fill.ink, ['g', 'rg']));
  }
  if (stroke) {
    setAlpha(sheet, stroke.ink);
    set(sheet, 'stroke', inkCommand(stroke.ink, ['G', 'RG']));
    set(sheet, 'width', `${pdfNumber(stroke.width_pt)} w`);
    set(sheet, 'cap', `${caps[stroke.cap]} J`);
    set(sheet, 'join', `${joins[stroke.join]} j`);
    set(sheet, 'miter', `${pdfNumber(stroke.miterLimit)} M`);
    set(sheet, 'dash', `[${stroke.dashes_pt.map(pdfNumber).join(' ')}] ${pdfNumber(stroke.dashStart_pt)} d`);
  }
  const star = fill?.rule === 'evenodd' ? '*' : '';
  const letter = fill ? (stroke ? `B${star}` : `f${star}`) : 'S';
  sheet.lines.push(`${pathCommands(sheet, path)} ${letter}`);
}

function drawWords(sheet: Sheet, words: Words): void {
  if (words.ink.alpha_frac === 0) return;
  setAlpha(sheet, words.ink);
  set(sheet, 'fill', inkCommand(words.ink, ['g', 'rg']));
  const { isSpelled, runs } = shownText(
    sheet.type.shape(words.text, words.weight, words.direction),
    words.size_pt,
    sheet.fonts,
  );
  if (isSpelled) sheet.lines.push(`/Span <</ActualText <FEFF${utf16(words.text)}>>> BDC`);
  sheet.lines.push('BT');
  for (const { after_pt, commands } of runs) {
    if (after_pt !== null) sheet.lines.push(`${textMatrix(sheet, words, after_pt)} Tm`);
    sheet.lines.push(commands);
  }
  sheet.lines.push('ET');
  if (isSpelled) sheet.lines.push('EMC');
}

function textMatrix(sheet: Sheet, words: Words, after_pt: number): string {
  // Hardly any words are turned.
  if (!words.matrix)
    return `1 0 0 1 ${pdfNumber(words.x_pt + after_pt)} ${pdfNumber(sheet.height_pt - words.baseline_pt)}`;
  const upright: Matrix = [1, 0, 0, -1, words.x_pt + after_pt, words.baseline_pt];
  const onSheet = combine(words.matrix, upright);
  return combine([1, 0, 0, -1, 0, sheet.height_pt], onSheet).map(pdfNumber).join(' ');
}
