/**
 * The parts of a sheet that is printed many times, written down once: for every further print only the numbers of its
 * objects differ.
 */
import { PDFHexString } from 'pdf-lib';
import type { PdfFile } from './pdfFile.ts';
import type { Stencil } from './stencil.ts';
import { type Tag, type TaggedPage, tagPage } from './tags.ts';

/** One part: its dictionary but for the numbers of objects. */
type Element = {
  readonly role: string;
  /** The part around it; null where it stands at the top of its sheet. */
  readonly parent: number | null;
  /** In reading order: numbers of marked content, and parts; as it is written where it has no parts. */
  readonly kids: string | readonly Kid[];
  readonly more: string;
};

type Kid = { readonly mark: number | null; readonly element: number | null };

export type StackTags = {
  readonly elements: readonly Element[];
  /** The part that each mark belongs to. */
  readonly elementOf: readonly number[];
  /** What is drawn of the sheet itself: for each of its items its mark, or null for an artifact. */
  readonly marks: TaggedPage['marks'];
  readonly owners: readonly Tag[];
  /** The mark of what is written into a slot, by the slot's node. */
  readonly markOfSlot: ReadonlyMap<number, number>;
};

/** Marks and parts of a sheet, its slots apart from what stands around them, so that they can be drawn by themselves. */
export function stackTags({ page, slots, pictures }: Stencil, file: PdfFile): StackTags {
  const slotNodes = new Set([...slots.values(), ...pictures.values()].flat().map(({ node }) => node));
  const tagged = tagPage(page, 'printed');
  const marks: (number | null)[] = [];
  const owners: Tag[] = [];
  const split = new Map<number, number[]>();
  const markOfSlot = new Map<number, number>();
  let before = { old: null as number | null, slot: null as number | null };
  for (const [at, { node }] of page.items.entries()) {
    const old = tagged.marks[at] ?? null;
    const slot = slotNodes.has(node) ? node : null;
    const owner = old === null ? undefined : tagged.owners[old];
    if (old !== null && owner && (old !== before.old || slot !== before.slot)) {
      split.set(old, [...(split.get(old) ?? []), owners.length]);
      if (slot !== null) markOfSlot.set(slot, owners.length);
      owners.push(owner);
    }
    marks.push(old === null ? null : owners.length - 1);
    before = { old, slot };
  }
  const elements: Element[] = [];
  const indexOf = new Map<Tag, number>();
  for (const tag of tagged.tags) writeDown(tag, null, { elements, indexOf, split, file });
  const elementOf = owners.map((owner) => indexOf.get(owner) ?? 0);
  return { elements, elementOf, marks, owners, markOfSlot };
}

type Desk = {
  readonly elements: Element[];
  readonly indexOf: Map<Tag, number>;
  readonly split: ReadonlyMap<number, readonly number[]>;
  readonly file: PdfFile;
};

function writeDown(tag: Tag, parent: number | null, desk: Desk): number {
  const { elements, indexOf, split, file } = desk;
  const kids: Kid[] = [];
  const element = { role: tag.role, parent, kids, more: moreOf(tag, file) };
  const own = elements.push(element) - 1;
  indexOf.set(tag, own);
  for (const kid of tag.kids) {
    if (typeof kid !== 'number') kids.push({ mark: null, element: writeDown(kid, own, desk) });
    else for (const mark of split.get(kid) ?? []) kids.push({ mark, element: null });
  }
  if (kids.every(({ mark }) => mark !== null))
    elements[own] = { ...element, kids: kids.map(({ mark }) => mark).join(' ') };
  return own;
}

/** What else is said of a part. Texts are objects of their own, which all prints of the sheet share. */
function moreOf({ scope, field, alt }: Tag, file: PdfFile): string {
  const shared = (text: string): string => {
    const number = file.next();
    file.object(number, text);
    return `${number} 0 R`;
  };
  const words = (text: string) => PDFHexString.fromText(text).toString();
  return [
    scope === null ? '' : `/A<</O/Table/Scope/${scope}>>`,
    field === null ? '' : `/A ${shared(`<</O/PrintField/Role/tv/Desc${words(field.of.tip)}>>`)}`,
    alt === null ? '' : `/Alt ${shared(words(alt))}`,
  ].join('');
}

/** Where the parts of one print stand in the file. */
export type Standing = {
  /** The number of its first part; the others follow. */
  readonly first: number;
  readonly page: number;
  /** The part around all of it. */
  readonly around: number;
};

/** The parts of one print, in the order of their numbers. */
export function elementTexts({ elements }: StackTags, { first, page, around }: Standing): readonly string[] {
  return elements.map(({ role, parent, kids, more }, at) => {
    const shown =
      typeof kids === 'string'
        ? kids
        : kids.map(({ mark, element }) => (element === null ? mark : `${first + element} 0 R`)).join(' ');
    // Notes are told apart by an identifier.
    const id = role === 'Note' ? `/ID(note-${first + at})` : '';
    const outer = parent === null ? around : first + parent;
    return `<</S/${role}/P ${outer} 0 R/Pg ${page} 0 R/K[${shown}]${more}${id}>>`;
  });
}

/** For each mark of a print the part that it belongs to. */
export function parentsText({ elementOf }: StackTags, first: number): string {
  return `[${elementOf.map((at) => `${first + at} 0 R`).join(' ')}]`;
}
