/** What the file says of itself, what is attached to it, and what lies on its pages. */
import { PDFArray, PDFBool, PDFDict, PDFHexString, PDFRawStream, PDFString } from 'pdf-lib';
import { type Looked, name, nameIn } from './document.ts';
import type { Tell } from './lint.ts';

export function checkFile(looked: Looked, tell: Tell): void {
  const { document, pages } = looked;
  const { catalog, context } = document;
  checkMetadata(catalog.lookup(name('Metadata')), tell);
  const shown = catalog.lookup(name('ViewerPreferences'));
  const title = shown instanceof PDFDict ? shown.lookup(name('DisplayDocTitle')) : undefined;
  if (!(title instanceof PDFBool)) tell('07-001', 'the file');
  else if (!title.asBoolean()) tell('07-002', 'the file');
  const marked = catalog.lookup(name('MarkInfo'));
  if (marked instanceof PDFDict && String(marked.lookup(name('Suspects'))) === 'true')
    tell('01-007', 'the file');
  if (!/^[a-z]{2,3}(-\w+)*$/i.test(textOf(catalog.lookup(name('Lang'))))) tell('11-006', 'the file');
  if (catalog.has(name('OCProperties'))) tell('20-001', 'the file');
  if (context.trailerInfo.Encrypt) tell('26-001', 'the file');
  const form = catalog.lookup(name('AcroForm'));
  if (form instanceof PDFDict && form.has(name('XFA'))) tell('25-001', 'the file');
  for (const [ref, object] of context.enumerateIndirectObjects()) {
    const dict = object instanceof PDFRawStream ? object.dict : object;
    if (!(dict instanceof PDFDict)) continue;
    const isFile = nameIn(dict, 'Type') === 'Filespec' && dict.has(name('EF'));
    if (isFile && !(dict.has(name('F')) && dict.has(name('UF')))) tell('21-001', String(ref));
    if (nameIn(dict, 'Subtype') === 'Form' && dict.has(name('Ref'))) tell('30-001', String(ref));
  }
  for (const [index] of pages.entries()) checkAnnotations(looked, index, tell);
}

function textOf(value: unknown): string {
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : '';
}

function checkMetadata(metadata: unknown, tell: Tell): void {
  if (!(metadata instanceof PDFRawStream)) {
    tell('06-001', 'the file');
    return;
  }
  const xmp = new TextDecoder().decode(metadata.getContents());
  if (!/<pdfuaid:part>1<\/pdfuaid:part>|pdfuaid:part="1"/.test(xmp)) tell('06-002', 'the metadata');
  if (!/<dc:title>\s*<rdf:Alt>\s*<rdf:li[^>]*>[^<]+/.test(xmp)) tell('06-003', 'the metadata');
}

function checkAnnotations({ document, pages, parts }: Looked, index: number, tell: Tell): void {
  const node = pages[index]?.page.node;
  const all = node?.lookup(name('Annots'));
  if (!node || !(all instanceof PDFArray) || all.size() === 0) return;
  const at = `page ${index + 1}`;
  const tabs = nameIn(node, 'Tabs');
  if (tabs === null) tell('28-008', at);
  else if (tabs !== 'S') tell('28-009', at);
  for (const ref of all.asArray()) {
    const dict = document.context.lookup(ref);
    if (!(dict instanceof PDFDict)) continue;
    const holder = parts.find(({ objects }) => objects.includes(String(ref)));
    const kind = nameIn(dict, 'Subtype');
    if (kind === 'Widget' && holder?.role !== 'Form') tell('28-010', at, String(ref));
    if (kind === 'Widget' && textOf(dict.lookup(name('TU'))) === '') tell('28-005', at, String(ref));
    if (kind === 'Link' && holder?.role !== 'Link') tell('28-011', at, String(ref));
    if (kind !== 'Widget' && textOf(dict.lookup(name('Contents'))) === '') tell('28-004', at, String(ref));
  }
}
