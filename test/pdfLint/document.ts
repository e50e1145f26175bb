/** A PDF as the lint looks at it: pages with their commands, and the structure tree as parts. */
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  type PDFPage,
  PDFRawStream,
  PDFRef,
  PDFString,
} from 'pdf-lib';
import { type Command, commandsOf } from './readContent.ts';
import { type RoleMap, roleMapOf, standsFor } from './roleMap.ts';

export type Part = {
  readonly dict: PDFDict;
  /** Its kind, or the standard kind that this stands for. */
  readonly role: string;
  readonly parent: Part | null;
  readonly kids: Part[];
  /** Marked content, as page and number. */
  readonly marks: { readonly page: number; readonly mark: number }[];
  /** Annotations and other objects that it holds. */
  readonly objects: string[];
};

export type Looked = {
  readonly document: PDFDocument;
  readonly pages: readonly { readonly page: PDFPage; readonly commands: readonly Command[] }[];
  /** All parts in reading order, the document itself first. */
  readonly parts: readonly Part[];
};

export async function look(bytes: Uint8Array): Promise<Looked> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false, ignoreEncryption: true });
  const pages = document.getPages().map((page) => ({ page, commands: commandsOf(contentOf(page)) }));
  return { document, pages, parts: partsOf(document) };
}

export function name(text: string): PDFName {
  return PDFName.of(text);
}

/** The value of a name without its slash; what is no name has none. */
export function nameIn(dict: PDFDict, key: string): string | null {
  const value = dict.lookup(name(key));
  return value instanceof PDFName ? value.decodeText() : null;
}

export function textIn(dict: PDFDict, key: string): string {
  const value = dict.lookup(name(key));
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : '';
}

export type Annotation = { readonly dict: PDFDict; readonly ref: string; readonly holder: Part | undefined };

/** What lies on a page, each with the part that it stands in. */
export function annotationsOf({ pages, parts, document }: Looked, index: number): readonly Annotation[] {
  const all = pages[index]?.page.node.lookup(name('Annots'));
  return (all instanceof PDFArray ? all.asArray() : []).flatMap((one) => {
    const dict = document.context.lookup(one);
    const holder = parts.find(({ objects }) => objects.includes(String(one)));
    return dict instanceof PDFDict ? [{ dict, ref: String(one), holder }] : [];
  });
}

export function commandsIn(stream: PDFRawStream): readonly Command[] {
  return commandsOf(decodePDFRawStream(stream).decode());
}

function contentOf(page: PDFPage): Uint8Array {
  const contents = page.node.Contents();
  const streams =
    contents instanceof PDFArray
      ? contents.asArray().map((one) => page.node.context.lookup(one))
      : [contents];
  const parts = streams.flatMap((one) =>
    one instanceof PDFRawStream ? [...decodePDFRawStream(one).decode(), 10] : [],
  );
  return Uint8Array.from(parts);
}

function partsOf(document: PDFDocument): readonly Part[] {
  const found: Part[] = [];
  const root = document.catalog.lookup(name('StructTreeRoot'));
  if (root instanceof PDFDict)
    readKids(root.get(name('K')), null, null, { document, map: roleMapOf(document), found });
  return found;
}

type Reading = { readonly document: PDFDocument; readonly map: RoleMap; readonly found: Part[] };

function readKids(
  kids: PDFObject | undefined,
  parent: Part | null,
  page: PDFRef | null,
  reading: Reading,
): void {
  const value = kids instanceof PDFRef ? reading.document.context.lookup(kids) : kids;
  if (value instanceof PDFArray) for (const kid of value.asArray()) readKids(kid, parent, page, reading);
  else if (value instanceof PDFNumber)
    parent?.marks.push({ page: pageNumber(page, reading), mark: value.asNumber() });
  else if (value instanceof PDFDict) readDict(value, parent, page, reading);
}

function readDict(dict: PDFDict, parent: Part | null, page: PDFRef | null, reading: Reading): void {
  const type = nameIn(dict, 'Type');
  const own = dict.get(name('Pg'));
  const on = own instanceof PDFRef ? own : page;
  if (type === 'OBJR') {
    parent?.objects.push(String(dict.get(name('Obj'))));
    return;
  }
  const mark = dict.lookup(name('MCID'));
  if (type === 'MCR' && mark instanceof PDFNumber) {
    parent?.marks.push({ page: pageNumber(on, reading), mark: mark.asNumber() });
    return;
  }
  const kind = nameIn(dict, 'S') ?? '';
  const known = standsFor(kind, reading.map);
  const role = typeof known === 'string' ? known : kind;
  const part: Part = { dict, role, parent, kids: [], marks: [], objects: [] };
  reading.found.push(part);
  parent?.kids.push(part);
  readKids(dict.get(name('K')), part, on, reading);
}

function pageNumber(page: PDFRef | null, { document }: Reading): number {
  return document.getPages().findIndex((one) => String(one.ref) === String(page));
}
