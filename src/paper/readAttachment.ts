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
import { checksum } from './md5.ts';

/** The bytes of the file that was attached under this name; null where the PDF or the file is damaged or not there. */
export async function readAttachment(pdf: Uint8Array, name: string): Promise<Uint8Array | null> {
  try {
    const document = await PDFDocument.load(pdf, { updateMetadata: false, throwOnInvalidObject: true });
    for (const [, object] of document.context.enumerateIndirectObjects()) {
      const file = object instanceof PDFDict && fileName(object) === name ? streamOf(object) : null;
      if (file) return whole(file, decodePDFRawStream(file).decode());
    }
    return null;
  } catch {
    return null;
  }
}

/** The bytes, if they are those whose checksum stands beside them. */
function whole(file: PDFRawStream, bytes: Uint8Array): Uint8Array | null {
  const sum = file.dict.lookupMaybe(PDFName.of('Params'), PDFDict)?.lookup(PDFName.of('CheckSum'));
  if (!(sum instanceof PDFHexString || sum instanceof PDFString)) return null;
  const given = [...sum.asBytes()].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return given === checksum(bytes) ? bytes : null;
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
