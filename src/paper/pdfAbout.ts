import { type PDFContext, PDFHexString, type PDFObject, type PDFRef, PDFString } from 'pdf-lib';
import { checksum } from './md5.ts';
import { parcelOf } from './parcel.ts';
import type { Attachment, Print } from './print.ts';
import { escapeXml } from './xml.ts';

const maker = 'Bedfirst';

/** What a viewer shows about the print: the classic dictionary, which older readers use. */
export function writeInfo(context: PDFContext, print: Print): PDFRef {
  const info = context.obj({
    Title: PDFHexString.fromText(print.title),
    Creator: PDFString.of(maker),
    Producer: PDFString.of(maker),
    ...(print.subject === undefined ? {} : { Subject: PDFHexString.fromText(print.subject) }),
    ...(print.date === undefined ? {} : { CreationDate: PDFString.of(pdfDay(print.date)) }),
  });
  return context.register(info);
}

function pdfDay(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  if (year === undefined) throw new Error(`The day of a print is written like 2026-05-04, not "${date}".`);
  return `D:${year}${month}${day}`;
}

/** The same as XMP (ISO 16684-1), not compressed, so that any tool can read it. */
export function writeMetadata(context: PDFContext, print: Print): PDFRef {
  const alternative = (text: string) => {
    return `<rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(text)}</rdf:li></rdf:Alt>`;
  };
  const lines = [
    '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"',
    ' xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"',
    ' xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">',
    '<dc:format>application/pdf</dc:format>',
    `<dc:title>${alternative(print.title)}</dc:title>`,
    ...(print.subject === undefined
      ? []
      : [`<dc:description>${alternative(print.subject)}</dc:description>`]),
    `<dc:language><rdf:Bag><rdf:li>${escapeXml(print.lang)}</rdf:li></rdf:Bag></dc:language>`,
    ...(print.date === undefined ? [] : [`<xmp:CreateDate>${escapeXml(print.date)}</xmp:CreateDate>`]),
    `<xmp:CreatorTool>${maker}</xmp:CreatorTool>`,
    `<pdf:Producer>${maker}</pdf:Producer>`,
    // What the print is meant to be (ISO 14289-1, 5); no one has certified it.
    '<pdfuaid:part>1</pdfuaid:part>',
    '</rdf:Description>',
    '</rdf:RDF>',
    '</x:xmpmeta>',
    '<?xpacket end="r"?>',
  ];
  const bytes = new TextEncoder().encode(lines.join('\n'));
  return context.register(context.stream(bytes, { Type: 'Metadata', Subtype: 'XML' }));
}

/** A file inside the file (ISO 32000-1, 7.11), told to be the source that the print was made from. */
export function writeAttachment(
  context: PDFContext,
  attachment: Attachment,
  date: string | undefined,
): PDFRef {
  const { name, mime, bytes, description } = attachment;
  const file = context.register(
    context.flateStream(bytes, {
      Type: 'EmbeddedFile',
      Subtype: mime,
      Params: {
        Size: bytes.length,
        CheckSum: PDFHexString.of(checksum(bytes)),
        ...(date === undefined ? {} : { ModDate: PDFString.of(pdfDay(date)) }),
      },
    }),
  );
  return context.register(
    context.obj({
      Type: 'Filespec',
      F: PDFString.of(name.replace(/[^\w. -]/g, '_')),
      UF: PDFHexString.fromText(name),
      Desc: PDFHexString.fromText(description),
      AFRelationship: 'Source',
      EF: { F: file, UF: file },
    }),
  );
}

/**
 * The same file once more, as data of the program that made the print (ISO 32000-1, 14.5): as it is, so that it is
 * found even where nothing else of the PDF can be read.
 */
export function writeCopy(context: PDFContext, attachment: Attachment, date = '1970-01-01'): PDFObject {
  const copy = context.register(context.stream(new TextEncoder().encode(parcelOf(attachment)), {}));
  return context.obj({ [maker]: { LastModified: PDFString.of(pdfDay(date)), Private: copy } });
}
