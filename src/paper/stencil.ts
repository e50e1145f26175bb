/**
 * A sheet laid out once, with slots for what differs from one print of it to the next. A thousand handouts are a
 * thousand times the same sheet: laying each out would take hundreds of times as long as setting a few words.
 */
import { mixesDirections } from './direction.ts';
import { changedContent } from './enlarge.ts';
import { thousandth } from './measures.ts';
import type { Box, Item, Page, Words } from './page.ts';
import type { Piece } from './readSvg.ts';
import type { Type } from './type.ts';
import type { TypeCase } from './typeCase.ts';
import { joinWords } from './words.ts';

/** Where words can be exchanged (`data-slot`): the lines that stand there as a sample, and the box they must stay in. */
export type Slot = { readonly node: number; readonly lines: readonly Words[]; readonly box: Box };

/** A figure that can be exchanged, with a line in it as a sample. */
export type PictureSlot = Pick<Slot, 'node' | 'box'>;

export type Stencil = {
  readonly page: Page;
  /** By their names; the same words may stand in several places. */
  readonly slots: ReadonlyMap<string, readonly Slot[]>;
  readonly pictures: ReadonlyMap<string, PictureSlot>;
};

/** What is written into the slots of a sheet, by their names. */
export type Values = Readonly<Record<string, string>>;
/** What is drawn into its figures: each laid out by itself, on a sheet as large as the figure's box. */
export type Pictures = Readonly<Record<string, Page>>;

/** A sheet with other words in its slots, and other drawings in its figures. */
export type Filled = {
  readonly stencil: Stencil;
  readonly items: readonly Item[];
  /** What their words are set in. */
  readonly type: Type;
};

/** How far, in points, a slot's words may stand from its left edge, or reach over its right one. */
const slack_pt = 0.05;

/**
 * The slots of a laid-out sheet. Each holds a sample whose lines begin at its left edge; it takes as many lines as that.
 * @throws Error naming a slot where that is not so
 */
export function stencilOf(page: Page): Stencil {
  const slots = new Map<string, Slot[]>();
  const pictures = new Map<string, PictureSlot>();
  for (const [node, { slot, role, box }] of page.nodes.entries()) {
    if (slot === null) continue;
    if (role === 'Figure') {
      pictures.set(slot, { node, box });
      continue;
    }
    const words = page.items.filter((item) => item.kind === 'words' && item.node === node) as Words[];
    const lines = words.filter((one, at) => one.baseline_pt !== words[at - 1]?.baseline_pt);
    if (lines.length === 0) throw new Error(`The slot "${slot}" has no sample in it.`);
    if (lines.some(({ x_pt }) => Math.abs(x_pt - box.x_pt) > slack_pt))
      throw new Error(`The sample in the slot "${slot}" does not begin at its left edge.`);
    slots.set(slot, [...(slots.get(slot) ?? []), { node, lines, box }]);
  }
  return { page, slots, pictures };
}

/** A sheet that is printed as it was laid out, among others that are filled. */
export function asLaidOut(page: Page, type: Type): Filled {
  return { stencil: { page, slots: new Map(), pictures: new Map() }, items: [], type };
}

/**
 * The sheet with these values; null where one has no room, so that the sheet has to be laid out for it.
 * @throws CoverError naming every character that no font has; Error where a slot got no value
 */
export async function fillStencil(
  stencil: Stencil,
  { values, pictures = {} }: { readonly values: Values; readonly pictures?: Pictures | undefined },
  types: TypeCase,
): Promise<Filled | null> {
  const drawn = picturesIn(stencil, pictures);
  const texts = [...stencil.slots.keys()].map((name) => values[name] ?? '');
  for (const item of drawn) if (item.kind === 'words') texts.push(item.text);
  const type = await types.typeFor(texts);
  type.mustCover(texts);
  const items: Item[] = [...drawn];
  for (const [name, slots] of stencil.slots) {
    const value = values[name];
    if (value === undefined) throw new Error(`The slot "${name}" got no value.`);
    for (const slot of value === '' ? [] : slots) {
      const lines = brokenUp(value, slot, type);
      if (lines === null) return null;
      for (const [at, line] of lines.entries())
        for (const one of wordsIn(slot, line, at, stencil.page, type)) {
          if (!isWithin(one, slot.box)) return null;
          items.push(one);
        }
    }
  }
  return { stencil, items, type };
}

/**
 * What is drawn into the figures, each at its place.
 * @throws Error where a figure got no picture
 */
function picturesIn(stencil: Stencil, pictures: Pictures): readonly Item[] {
  return [...stencil.pictures].flatMap(([name, { node, box }]) => {
    const picture = pictures[name];
    if (picture === undefined) throw new Error(`The figure "${name}" got no picture.`);
    const placed = changedContent(picture, { times: 1, right_pt: box.x_pt, down_pt: box.y_pt });
    return placed.items.map((item): Item => {
      // They stand in boxes of their own, which a reader shall not run together.
      const text = item.kind === 'words' ? { text: `${item.text.trimEnd()} ` } : {};
      return { ...item, ...text, node };
    });
  });
}

type Line = { readonly text: string; readonly width_pt: number };

/** The value as so many lines as the sample has; null where it takes fewer or more. It breaks at blanks only. */
function brokenUp(value: string, { lines, box }: Slot, type: Type): readonly Line[] | null {
  const { weight = 'text', size_pt = 0 } = lines[0] ?? {};
  const lineOf = (text: string): Line => ({ text, width_pt: type.width(text, weight, size_pt) });
  const single = value.includes('  ') ? value.replace(/ +/g, ' ') : value;
  const whole = lineOf(single.trim());
  // Nearly all values stand on one line.
  if (whole.width_pt <= box.width_pt) return lines.length === 1 ? [whole] : null;
  if (lines.length === 1) return whole.text.includes(' ') ? null : [whole];
  const words = whole.text.split(' ');
  const broken: Line[] = [];
  for (let from = 0; from < words.length && broken.length <= lines.length; ) {
    const { line, taken } = longestLine(words.slice(from), box.width_pt, lineOf);
    broken.push(line);
    from += taken;
  }
  return broken.length === lines.length ? broken : null;
}

/** As many words as fit on a line, and one at least; found by halving, since each try has to be shaped. */
function longestLine(
  words: readonly string[],
  width_pt: number,
  lineOf: (text: string) => Line,
): { readonly line: Line; readonly taken: number } {
  const lineWith = (count: number): Line => lineOf(words.slice(0, count).join(' '));
  const all = lineWith(words.length);
  // The last line is nearly always short enough.
  if (all.width_pt <= width_pt || words.length === 1) return { line: all, taken: words.length };
  let [taken, line] = [1, lineWith(1)];
  for (let tooMany = words.length; tooMany - taken > 1; ) {
    const middle = (taken + tooMany) >> 1;
    const longer = lineWith(middle);
    if (longer.width_pt <= width_pt) [taken, line] = [middle, longer];
    else tooMany = middle;
  }
  return { line, taken };
}

/** Words on a line of the sample, as the press sets any line. */
function wordsIn(
  { node, lines }: Slot,
  line: Line,
  at: number,
  { nodes }: Page,
  type: Type,
): readonly Words[] {
  const sample = lines[at];
  if (sample === undefined) return [];
  // A reader needs the blank at which a line was broken.
  const text = at + 1 < lines.length ? `${line.text} ` : line.text;
  if (type.bidi === null || !mixesDirections(text))
    return [{ ...sample, text, width_pt: thousandth(line.width_pt) }];
  const { x_pt, baseline_pt, size_pt, weight, matrix, clip, ink } = sample;
  const piece: Piece = {
    ...{ kind: 'piece', node, text, ink: 'black', x_pt, baseline_pt, size_pt, weight, matrix, clip },
    width_pt: line.width_pt,
  };
  const paragraph = nodes[node]?.paragraph ?? node;
  const read = { nodes, paragraphs: new Map([[paragraph, text]]) };
  return joinWords([piece], read, type).flatMap((item) => (item.kind === 'words' ? [{ ...item, ink }] : []));
}

function isWithin({ x_pt, width_pt }: Words, box: Box): boolean {
  return box.x_pt - slack_pt <= x_pt && x_pt + width_pt <= box.x_pt + box.width_pt + slack_pt;
}
