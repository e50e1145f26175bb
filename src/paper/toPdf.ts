import { PDFContext, PDFHexString, PDFName, PDFNumber, type PDFRef, PDFStreamWriter } from 'pdf-lib';
import { checksum } from './md5.ts';
import { writeAttachment, writeCopy, writeInfo, writeMetadata } from './pdfAbout.ts';
import { writeBookmarks } from './pdfBookmarks.ts';
import { writeFields } from './pdfFields.ts';
import { type Content, pageContent } from './pdfContent.ts';
import { pdfFonts } from './pdfFonts.ts';
import { writeStructure } from './pdfTags.ts';
import type { Page } from './page.ts';
import type { Print } from './print.ts';
import { tagPage } from './tags.ts';
import type { Type } from './type.ts';

/**
 * Writes laid-out pages as one PDF 1.7 file: real text in embedded subset fonts, drawings as drawings,
 * and the parts of the document as the sheet names them. The same print
 * gives the same bytes, on every run and in every engine: nothing in it comes from a clock or by chance, and one
 * deflate, the library's own, packs everything.
 */
export async function toPdf(print: Print, typeOf: (page: Page) => Type): Promise<Uint8Array> {
  if (print.pages.length === 0) throw new Error('A print has at least one page.');
  const context = PDFContext.create();
  const fonts = pdfFonts();
  const tagged = print.pages.map((page) => tagPage(page, print.fields));
  const contents = print.pages.map((page, at) =>
    pageContent(page, tagged[at] ?? tagPage(page, print.fields), { type: typeOf(page), fonts }),
  );
  const resources = writeResources(context, fonts.write(context), contents);
  const tree = context.nextRef();
  const pages = print.pages.map((page, at) => {
    const box = [0, 0, page.width_pt, page.height_pt];
    return context.register(
      context.obj({
        Type: 'Page',
        Parent: tree,
        MediaBox: box,
        TrimBox: box,
        Resources: resources,
        StructParents: at,
        Tabs: 'S',
        Contents: context.register(context.flateStream(contents[at]?.commands ?? '')),
      }),
    );
  });
  context.assign(tree, context.obj({ Type: 'Pages', Kids: pages, Count: pages.length }));
  const leaves = pages.flatMap((ref, at) => {
    const [page, tags] = [print.pages[at], tagged[at]];
    return page && tags ? [{ page, tagged: tags, ref }] : [];
  });
  const live = print.fields !== 'printed';
  const { widgets, form } = writeFields(context, live ? leaves : [], typeOf);
  writeCatalog(context, print, {
    pages: tree,
    form,
    structure: writeStructure(context, leaves, widgets),
    bookmarks: writeBookmarks(context, print.pages, pages),
  });
  context.trailerInfo.ID = context.obj([identity(print, contents), identity(print, contents)]);
  return PDFStreamWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
}

function writeResources(
  context: PDFContext,
  fonts: Record<string, PDFRef>,
  contents: readonly Content[],
): PDFRef {
  const alphas = [...new Set(contents.flatMap((content) => [...content.alphas]))].sort((a, b) => a - b);
  const states = alphas.map((alpha) => {
    const frac = PDFNumber.of(alpha / 1000);
    return [`A${alpha}`, context.obj({ Type: 'ExtGState', ca: frac, CA: frac })] as const;
  });
  return context.register(context.obj({ Font: fonts, ExtGState: Object.fromEntries(states) }));
}

type Roots = {
  readonly pages: PDFRef;
  readonly structure: PDFRef;
  readonly bookmarks: PDFRef | null;
  readonly form: PDFRef | null;
};

function writeCatalog(context: PDFContext, print: Print, roots: Roots): void {
  const { pages, structure, bookmarks, form } = roots;
  const catalog = context.obj({
    Type: 'Catalog',
    Pages: pages,
    Lang: PDFHexString.fromText(print.lang),
    MarkInfo: { Marked: true },
    StructTreeRoot: structure,
    ...(bookmarks ? { Outlines: bookmarks } : {}),
    ...(form ? { AcroForm: form } : {}),
    ViewerPreferences: {
      DisplayDocTitle: true,
      ...(print.scale === 'true' ? { PrintScaling: 'None' } : {}),
    },
    Metadata: writeMetadata(context, print),
  });
  if (print.attachment) {
    const file = writeAttachment(context, print.attachment, print.date);
    const names = [PDFHexString.fromText(print.attachment.name), file];
    catalog.set(PDFName.of('Names'), context.obj({ EmbeddedFiles: { Names: names } }));
    catalog.set(PDFName.of('AF'), context.obj([file]));
    catalog.set(PDFName.of('PieceInfo'), writeCopy(context, print.attachment, print.date));
  }
  context.trailerInfo.Root = context.register(catalog);
  context.trailerInfo.Info = writeInfo(context, print);
}

/** The file's identifier (ISO 32000-1, 14.4), from what it shows instead of from when and where it was made. */
function identity(print: Print, contents: readonly Content[]): PDFHexString {
  const shown = [print.title, ...contents.map((content) => content.commands)].join('\n');
  return PDFHexString.of(checksum(new TextEncoder().encode(shown)));
}
