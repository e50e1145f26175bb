import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream, type PDFObject } from 'pdf-lib';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export type ReadPage = { readonly text: string; readonly width_pt: number; readonly height_pt: number };
export type ReadPdf = {
  readonly pages: readonly ReadPage[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly attachments: readonly { filename: string; content: Uint8Array; description: string }[];
};

/** Reads a PDF back with another library than the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const reading = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await reading.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
    const [, , width_pt = 0, height_pt = 0] = page.view;
    pages.push({ text, width_pt, height_pt });
  }
  const attachments: ReadPdf['attachments'][number][] = [];
  for (const [id, { filename, description }] of (await document.getAttachments()) ?? []) {
    const content = new Uint8Array((await document.getAttachmentContent(id)) ?? []);
    attachments.push({ filename, description, content });
  }
  const { info } = await document.getMetadata();
  await reading.destroy();
  return { pages, info: info as Record<string, unknown>, attachments };
}

/** How many paths are painted on each page. */
export async function paintedOn(bytes: Uint8Array): Promise<readonly number[]> {
  const reading = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await reading.promise;
  const found: number[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { fnArray } = await (await document.getPage(number)).getOperatorList();
    found.push(fnArray.filter((of) => of === OPS.constructPath).length);
  }
  await reading.destroy();
  return found;
}

/** The objects of a PDF, looked at with pdf-lib's parser. */
export async function objectsOf(
  bytes: Uint8Array,
): Promise<{ document: PDFDocument; dicts: readonly PDFDict[] }> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const dicts = document.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (object instanceof PDFDict) return [object];
    return object instanceof PDFRawStream ? [object.dict] : [];
  });
  return { document, dicts };
}

export function named(dict: PDFDict, key: string): string | undefined {
  const value: PDFObject | undefined = dict.get(PDFName.of(key));
  return value instanceof PDFName ? value.decodeText() : undefined;
}

export function numbers(dict: PDFDict, key: string): number[] {
  const value = dict.lookup(PDFName.of(key));
  return value instanceof PDFArray ? value.asArray().map((each) => Number(String(each))) : [];
}

type Branch = { role?: string; alt?: string; type?: string; id?: string; children?: Branch[] };

/** The parts of each page as pdf.js reads them: `Role[alt](parts and "words")`. */
export async function partsOf(bytes: Uint8Array): Promise<string[]> {
  const reading = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await reading.promise;
  const found: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const texts = new Map<string, string>();
    const open: string[] = [];
    for (const item of items) {
      if ('str' in item)
        for (const id of open) texts.set(id, (texts.get(id) ?? '') + item.str + (item.hasEOL ? '\n' : ''));
      else if (item.type === 'endMarkedContent') open.pop();
      else open.push(String(item.id ?? ''));
    }
    const tree = (await page.getStructTree()) as Branch | null;
    const tell = ({ role, alt, type, id, children = [] }: Branch): string => {
      if (type === 'content')
        return texts.has(id ?? '')
          ? `"${texts
              .get(id ?? '')
              ?.replace(/\s+/g, ' ')
              .trim()}"`
          : '';
      if (type === 'annotation') return 'field';
      const inside = joined(children.map(tell));
      return role === 'Root' || role === 'Document' ? inside : `${role}${alt ? `[${alt}]` : ''}(${inside})`;
    };
    found.push(tree ? tell(tree) : '');
  }
  await reading.destroy();
  return found;
}

function joined(parts: readonly string[]): string {
  return parts.filter(Boolean).join(' ');
}
