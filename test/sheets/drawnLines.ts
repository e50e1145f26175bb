/** What is drawn on the pages of a PDF, read out of its own drawing commands and measured as with a ruler. */
import { decodePDFRawStream, PDFArray, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';

export type Spot = { readonly x_mm: number; readonly y_mm: number };

const pointsPer_mm = 72 / 25.4;

/** The lines of each page as corners in turn, from the left top corner of the paper. Curves are left out. */
export async function drawnLines(pdf: Uint8Array): Promise<readonly (readonly (readonly Spot[])[])[]> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false });
  return document.getPages().map((page) => {
    const contents = page.node.lookup(PDFName.of('Contents'));
    const streams =
      contents instanceof PDFArray
        ? contents.asArray().map((one) => document.context.lookup(one))
        : [contents];
    const commands = streams.flatMap((one) => (one instanceof PDFRawStream ? [textOf(one)] : [])).join('\n');
    return linesOf(commands, page.getHeight());
  });
}

function textOf(stream: PDFRawStream): string {
  return Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
}

function linesOf(commands: string, height_pt: number): readonly (readonly Spot[])[] {
  const found: Spot[][] = [];
  for (const [, x, y, letter] of commands.matchAll(/(-?[\d.]+) (-?[\d.]+) ([ml])\b/g)) {
    const spot = { x_mm: Number(x) / pointsPer_mm, y_mm: (height_pt - Number(y)) / pointsPer_mm };
    if (letter === 'm') found.push([spot]);
    else found.at(-1)?.push(spot);
  }
  return found;
}
