/** Ways to damage a PDF on purpose, object by object. */
import { decodePDFRawStream, PDFArray, PDFDict, type PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';

export type Damage = (document: PDFDocument) => void;

export const of = (text: string) => PDFName.of(text);

function dicts(document: PDFDocument): readonly PDFDict[] {
  return document.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (object instanceof PDFRawStream) return [object.dict];
    return object instanceof PDFDict ? [object] : [];
  });
}

export function first(document: PDFDocument, key: string, value: string): PDFDict {
  const found = dicts(document).find((dict) => dict.get(of(key)) === of(value));
  if (!found) throw new Error(`no ${key} ${value}`);
  return found;
}

export function all(document: PDFDocument, role: string): readonly PDFDict[] {
  return dicts(document).filter((dict) => dict.get(of('S')) === of(role));
}

export const part = (document: PDFDocument, role: string) => first(document, 'S', role);

/** The text of the first page's commands, changed. */
export function rewritten(change: (commands: string) => string): Damage {
  return (document) => {
    const node = document.getPage(0).node;
    const stream = node.Contents();
    if (!(stream instanceof PDFRawStream)) throw new Error('no content');
    const text = new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode());
    const changed = change(text);
    if (changed === text) throw new Error('nothing was changed');
    node.set(of('Contents'), document.context.register(document.context.flateStream(changed)));
  };
}

/** A stream that a dictionary names, changed as text. */
export function restreamed(
  key: string,
  holder: (document: PDFDocument) => PDFDict,
  change: (text: string) => string,
): Damage {
  return (document) => {
    const dict = holder(document);
    const stream = dict.lookup(of(key));
    if (!(stream instanceof PDFRawStream)) throw new Error(`no ${key}`);
    const text = new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode());
    const changed = change(text);
    if (changed === text) throw new Error('nothing was changed');
    dict.set(of(key), document.context.register(document.context.flateStream(changed)));
  };
}

export function metadata(change: (text: string) => string): Damage {
  return ({ catalog, context }) => {
    const stream = catalog.lookup(of('Metadata'));
    if (!(stream instanceof PDFRawStream)) throw new Error('no metadata');
    const bytes = new TextEncoder().encode(change(new TextDecoder().decode(stream.getContents())));
    catalog.set(
      of('Metadata'),
      context.register(context.stream(bytes, { Type: 'Metadata', Subtype: 'XML' })),
    );
  };
}

export function annotated(annotation: Record<string, unknown>, tabs: string | null = 'S'): Damage {
  return (document) => {
    const { node } = document.getPage(0);
    const ref = document.context.register(
      document.context.obj({ Type: 'Annot', Rect: [0, 0, 10, 10], ...annotation } as Parameters<
        typeof document.context.obj
      >[0]),
    );
    node.set(of('Annots'), document.context.obj([ref]));
    if (tabs === null) node.delete(of('Tabs'));
    else node.set(of('Tabs'), of(tabs));
  };
}

export const descendant = (document: PDFDocument) => first(document, 'Subtype', 'CIDFontType2');
export const composite = (document: PDFDocument) => first(document, 'Subtype', 'Type0');
export const preferences = (document: PDFDocument) =>
  document.catalog.lookup(of('ViewerPreferences'), PDFDict);

/** One way to break each rule that is covered. */

type Entries = Readonly<Record<string, unknown>>;

/** One damage after the other. */
export function both(...damages: readonly Damage[]): Damage {
  return (document) => {
    for (const damage of damages) damage(document);
  };
}

export const withoutLanguage: Damage = ({ catalog }) => void catalog.delete(of('Lang'));

/** Something in the file that the catalog names, or that nothing names. */
export function written(value: Entries, key?: string): Damage {
  return ({ catalog, context }) => {
    const ref = context.register(context.obj(value as Record<string, string>));
    if (key !== undefined) catalog.set(of(key), ref);
  };
}

/** What lies on the first page, hung into a part of the structure. */
export function hung(role: string): Damage {
  return (document) => {
    const annotation = document.getPage(0).node.lookup(of('Annots'), PDFArray).get(0);
    const holder = part(document, 'P');
    holder.set(of('S'), of(role));
    holder.set(of('K'), document.context.obj({ Type: 'OBJR', Obj: annotation }));
  };
}
