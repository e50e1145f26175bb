/**
 * Many prints of few sheets as one PDF, tagged throughout: what is the same on all prints of a sheet is drawn once,
 * and for each of them only what differs. It gives what `toPdf` gives for the same pages, without form fields and
 * without anything attached, and hands its bytes on while it goes.
 */
import { PDFContext, PDFHexString, PDFStream } from 'pdf-lib';
import { checksum } from './md5.ts';
import type { Item } from './page.ts';
import { writeInfo, writeMetadata } from './pdfAbout.ts';
import { type Content, itemsContent } from './pdfContent.ts';
import { type PdfFile, pdfFile } from './pdfFile.ts';
import { pdfFonts } from './pdfFonts.ts';
import type { Print } from './print.ts';
import { elementTexts, parentsText, type StackTags, stackTags } from './stackTags.ts';
import { type Bookmarks, bookmarks, type PageTree, pageTree, writeParents } from './stackTrees.ts';
import type { Filled, Stencil } from './stencil.ts';
import type { TypeCase } from './typeCase.ts';
import { withGaps } from './wordGaps.ts';

/** The pages of one person, and what they are called in the list of contents. */
export type StackSet = { readonly title: string; readonly pages: readonly Filled[] };

export type Stack = Pick<Print, 'title' | 'lang' | 'subject' | 'date'> & {
  readonly sets: AsyncIterable<StackSet> | Iterable<StackSet>;
};

/** A sheet as this file has it. */
type Master = {
  readonly tags: StackTags;
  /** The object that draws what all its prints share. */
  readonly shared: number;
  /** Slots after which a reader needs a space before what comes next. */
  readonly spaced: ReadonlySet<number>;
};

type Desk = {
  readonly file: PdfFile;
  readonly types: TypeCase;
  readonly fonts: ReturnType<typeof pdfFonts>;
  /** Of sheets that others may still be printed from; who is laid out alone leaves nothing behind. */
  readonly masters: WeakMap<Stencil, Master>;
  readonly alphas: Set<number>;
  readonly resources: number;
  readonly structure: { readonly root: number; readonly document: number; readonly kids: number[] };
  /** For each page the object with the parts of its marks. */
  readonly parents: number[];
  readonly tree: PageTree;
  readonly bookmarks: Bookmarks;
  /** Checksums of all that is drawn, one after the other. */
  drawn: string;
};

/** Bytes are handed on whenever so many have come together. */
const portion = 64_000;

/** @param file an empty one, to be written on */
export async function* toStackPdf(
  stack: Stack,
  types: TypeCase,
  file: PdfFile = pdfFile(),
): AsyncGenerator<Uint8Array, void, void> {
  const catalog = file.next();
  const desk: Desk = {
    ...{ file, types, fonts: pdfFonts(), masters: new WeakMap(), alphas: new Set(), resources: file.next() },
    structure: { root: file.next(), document: file.next(), kids: [] },
    ...{ parents: [], tree: pageTree(file), bookmarks: bookmarks(file), drawn: '' },
  };
  let waiting = 0;
  for await (const set of stack.sets) {
    waiting += writeSet(set, desk);
    if (waiting < portion) continue;
    yield file.taken();
    waiting = 0;
  }
  if (desk.parents.length === 0) throw new Error('A print has at least one page.');
  writeRoots(stack, desk, catalog);
  yield file.taken();
}

/** Writes the pages of one person; returns about how many bytes they took. */
function writeSet({ title, pages }: StackSet, desk: Desk): number {
  const { file, structure, bookmarks } = desk;
  const part = file.next();
  structure.kids.push(part);
  const tops: string[] = [];
  let size = 0;
  for (const [at, filled] of pages.entries()) {
    const written = writePage(filled, part, desk);
    if (at === 0) bookmarks.add(title, written.page, filled.stencil.page.height_pt);
    tops.push(...written.tops);
    size += written.size;
  }
  const named = `/T${PDFHexString.fromText(title).toString()}`;
  file.object(part, `<</S/Part/P ${structure.document} 0 R${named}/K[${tops.join(' ')}]>>`);
  return size;
}

function writePage(filled: Filled, part: number, desk: Desk) {
  const { file, tree, resources, parents } = desk;
  const { stencil } = filled;
  const master = desk.masters.get(stencil) ?? masterOf(stencil, desk);
  desk.masters.set(stencil, master);
  const own = ownContent(filled, master, desk);
  const page = file.next();
  // All numbers before the first part: writing one may make the file take a number for itself.
  const first = file.last(file.last() + master.tags.elements.length) - master.tags.elements.length + 1;
  const texts = elementTexts(master.tags, { first, page, around: part });
  for (const [at, text] of texts.entries()) file.object(first + at, text);
  const byMark = file.next();
  file.object(byMark, parentsText(master.tags, first));
  const box = `[0 0 ${stencil.page.width_pt} ${stencil.page.height_pt}]`;
  const contents = own.number === null ? master.shared : own.number;
  file.object(
    page,
    `<</Type/Page/Parent ${tree.add(page)} 0 R/MediaBox${box}/TrimBox${box}/Resources ${resources} 0 R` +
      `/StructParents ${parents.length}/Tabs/S/Contents` +
      `${own.number === null ? ` ${contents} 0 R` : `[${master.shared} 0 R ${own.number} 0 R]`}>>`,
  );
  parents.push(byMark);
  const tops = master.tags.elements.flatMap(({ parent }, at) =>
    parent === null ? [`${first + at} 0 R`] : [],
  );
  return { page, tops, size: own.size };
}

/** Draws what every print of the sheet has, and writes down its parts. */
function masterOf(stencil: Stencil, desk: Desk): Master {
  const { file, types, fonts } = desk;
  const { page } = stencil;
  const tags = stackTags(stencil, file);
  const spacedItems = withGaps(page, { ...tags, tags: [], faults: [] }).items;
  // A line around a slot has no mark, and stays whatever is written there.
  const kept = spacedItems.map(({ node }, at) => tags.marks[at] === null || !tags.markOfSlot.has(node));
  const items = spacedItems.filter((_, at) => kept[at]);
  const marks = tags.marks.filter((_, at) => kept[at]);
  const content = itemsContent(
    { ...page, items },
    { tags: [], faults: [], owners: tags.owners, marks },
    { type: types.typeOf(page), fonts },
  );
  const shared = draw(content, desk);
  const spaced = new Set(
    spacedItems.flatMap((item, at) =>
      item.kind === 'words' && kept[at] === false && /\s$/.test(item.text) ? [item.node] : [],
    ),
  );
  return { tags, shared, spaced };
}

function ownContent({ stencil, items: own, type }: Filled, { tags, spaced }: Master, desk: Desk) {
  if (own.length === 0) return { number: null, size: 0 };
  const items = own.map((one, at): Item => {
    const endsSlot = own[at + 1]?.node !== one.node;
    if (one.kind !== 'words' || !endsSlot || !spaced.has(one.node)) return one;
    return { ...one, text: `${one.text.trimEnd()} ` };
  });
  const marks = items.map(({ node }) => tags.markOfSlot.get(node) ?? null);
  const content = itemsContent(
    { ...stencil.page, items },
    { tags: [], faults: [], owners: tags.owners, marks },
    { type, fonts: desk.fonts },
  );
  const number = draw(content, desk);
  return { number, size: content.commands.length };
}

/** Writes what a page draws, or a part of it; gives the number of its object. */
function draw({ commands, alphas }: Content, desk: Desk): number {
  for (const alpha of alphas) desk.alphas.add(alpha);
  const number = desk.file.next();
  desk.drawn += desk.file.stream(number, '', ascii(commands));
  return number;
}

function ascii(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** What stands once in a file: fonts, what is said of it, and the roots of its trees. */
function writeRoots(stack: Stack, desk: Desk, catalog: number): void {
  const { file, fonts, alphas, structure, parents } = desk;
  const context = PDFContext.create();
  context.flateStream = (data, entries = {}) => {
    const bytes = file.deflate(typeof data === 'string' ? ascii(data) : data);
    return context.stream(bytes, { ...entries, Filter: 'FlateDecode' });
  };
  context.largestObjectNumber = file.last();
  const print: Print = { ...stack, pages: [] };
  const metadata = writeMetadata(context, print);
  const info = writeInfo(context, print);
  const faces = Object.entries(fonts.write(context)).map(([name, ref]) => `/${name} ${ref.toString()}`);
  file.last(context.largestObjectNumber);
  for (const [{ objectNumber }, object] of context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFStream)) file.object(objectNumber, object.toString());
    else {
      const bytes = new Uint8Array(object.sizeInBytes());
      object.copyBytesInto(bytes, 0);
      file.asWritten(objectNumber, bytes);
    }
  }
  const states = [...alphas]
    .sort((a, b) => a - b)
    .map((alpha) => {
      return `/A${alpha}<</Type/ExtGState/ca ${alpha / 1000}/CA ${alpha / 1000}>>`;
    });
  file.object(desk.resources, `<</Font<<${faces.join('')}>>/ExtGState<<${states.join('')}>>>>`);
  const kids = structure.kids.map((part) => `${part} 0 R`).join(' ');
  file.object(structure.document, `<</S/Document/P ${structure.root} 0 R/K[${kids}]>>`);
  const tree = writeParents(parents, file);
  file.object(
    structure.root,
    `<</Type/StructTreeRoot/K[${structure.document} 0 R]/ParentTree ${tree} 0 R/ParentTreeNextKey ${parents.length}>>`,
  );
  const outlines = desk.bookmarks.write();
  file.object(
    catalog,
    `<</Type/Catalog/Pages ${desk.tree.write()} 0 R/Lang${PDFHexString.fromText(stack.lang).toString()}` +
      `/MarkInfo<</Marked true>>/StructTreeRoot ${structure.root} 0 R` +
      `${outlines === null ? '' : `/Outlines ${outlines} 0 R`}` +
      `/ViewerPreferences<</DisplayDocTitle true>>/Metadata ${metadata.objectNumber} 0 R>>`,
  );
  const id = PDFHexString.of(checksum(ascii(stack.title + desk.drawn))).toString();
  file.end(`/Root ${catalog} 0 R/Info ${info.objectNumber} 0 R/ID[${id}${id}]`);
}
