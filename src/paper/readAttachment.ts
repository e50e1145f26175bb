/** Takes a file out of a PDF again, whoever has written it since. */
import {
  decodePDFRawStream,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFRawStream,
  PDFString,
} from 'pdf-lib';

/** The bytes of the file that was attached under this name; null where the PDF is damaged or has no such file. */
export async function readAttachment(pdf: Uint8Array, name: string): Promise<Uint8Array | null> {
  try {
    const document = await PDFDocument.load(pdf, { updateMetadata: false, throwOnInvalidObject: true });
    for (const [, object] of document.context.enumerateIndirectObjects()) {
      const file = object instanceof PDFDict && fileName(object) === name ? streamOf(object) : null;
      if (file) return decodePDFRawStream(file).decode();
    }
    return null;
  } catch {
    return null;
  }
}

/** What a file specification calls its file; null for anything else. */
function fileName(spec: PDFDict): string | null {
  if (spec.get(PDFName.of('Type')) !== PDFName.of('Filespec')) return null;
  const name = spec.lookup(PDFName.of('UF')) ?? spec.lookup(PDFName.of('F'));
  return name instanceof PDFString || name instanceof PDFHexString ? name.decodeText() : null;
}

function streamOf(spec: PDFDict): PDFRawStream | null {
  const file = spec.lookupMaybe(PDFName.of('EF'), PDFDict)?.lookup(PDFName.of('F'));
  return file instanceof PDFRawStream ? file : null;
}
