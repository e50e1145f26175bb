/** What the file says of itself, what is attached to it, and what lies on its pages. */
import {
  PDFArray,
  PDFBool,
  PDFDict,
  type PDFDocument,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
} from 'pdf-lib';
import { commandsIn, type Looked, name, nameIn, textIn } from './document.ts';
import type { Tell } from './lint.ts';

export function checkFile({ document, pages }: Looked, tell: Tell): void {
  const { catalog, context } = document;
  checkMetadata(catalog.lookup(name('Metadata')), tell);
  const shown = catalog.lookup(name('ViewerPreferences'));
  const title = shown instanceof PDFDict ? shown.lookup(name('DisplayDocTitle')) : undefined;
  if (!(title instanceof PDFBool)) tell('07-001', 'the file');
  else if (!title.asBoolean()) tell('07-002', 'the file');
  const marked = catalog.lookup(name('MarkInfo'));
  if (marked instanceof PDFDict && String(marked.lookup(name('Suspects'))) === 'true')
    tell('01-007', 'the file');
  const form = catalog.lookup(name('AcroForm'));
  if (form instanceof PDFDict && form.has(name('XFA'))) tell('25-001', 'the file');
  checkChoices(catalog.lookup(name('OCProperties')), tell);
  checkLock(document, tell);
  for (const [ref, object] of context.enumerateIndirectObjects()) checkObject(object, String(ref), tell);
  checkPaintedTwice(pages, tell);
}

function checkObject(object: PDFObject, ref: string, tell: Tell): void {
  const dict = object instanceof PDFRawStream ? object.dict : object;
  if (!(dict instanceof PDFDict)) return;
  const isFile = nameIn(dict, 'Type') === 'Filespec' && dict.has(name('EF'));
  if (isFile && !(dict.has(name('F')) && dict.has(name('UF')))) tell('21-001', ref);
  if (nameIn(dict, 'Subtype') === 'Form' && dict.has(name('Ref'))) tell('30-001', ref);
}

/** Optional content (ISO 32000-1, 8.11.4.3). */
function checkChoices(properties: PDFObject | undefined, tell: Tell): void {
  if (!(properties instanceof PDFDict)) return;
  const usual = properties.lookup(name('D'));
  const others = properties.lookup(name('Configs'));
  const all = others instanceof PDFArray ? others.asArray().map((_, at) => others.lookup(at)) : [];
  if (!(usual instanceof PDFDict) || textIn(usual, 'Name') === '') tell('20-002', 'the file');
  for (const one of all) {
    if (!(one instanceof PDFDict) || textIn(one, 'Name') === '') tell('20-001', 'the file');
  }
  for (const one of [usual, ...all])
    if (one instanceof PDFDict && one.has(name('AS'))) tell('20-003', 'the file');
}

/** What a locked file allows (ISO 32000-1, table 22): bit 10 lets screen readers in. */
const forReaders = 1 << 9;

function checkLock({ context }: PDFDocument, tell: Tell): void {
  const { Encrypt } = context.trailerInfo;
  if (Encrypt === undefined) return;
  const lock = context.lookup(Encrypt);
  const allowed = lock instanceof PDFDict ? lock.lookup(name('P')) : undefined;
  if (!(allowed instanceof PDFNumber)) tell('26-001', 'the file');
  else if ((allowed.asNumber() & forReaders) === 0) tell('26-002', 'the file');
}

/** Content with marks can only hang in the structure once. */
function checkPaintedTwice(pages: Looked['pages'], tell: Tell): void {
  const painted = new Map<PDFRawStream, number>();
  for (const { page, commands } of pages) {
    const forms = page.node.Resources()?.lookup(name('XObject'));
    for (const { operator, operands } of commands) {
      if (operator !== 'Do' || !(forms instanceof PDFDict)) continue;
      const form = forms.lookup(name(String(operands[0]).slice(1)));
      if (form instanceof PDFRawStream && nameIn(form.dict, 'Subtype') === 'Form')
        painted.set(form, (painted.get(form) ?? 0) + 1);
    }
  }
  for (const [form, times] of painted) {
    const hasMarks = commandsIn(form).some(({ operands }) => /\/MCID/.test(String(operands[1])));
    if (times > 1 && hasMarks) tell('30-002', 'a form', `${times} times`);
  }
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
