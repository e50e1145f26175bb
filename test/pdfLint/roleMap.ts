/** What kinds of parts a document has beside those of the standard, and which of those they stand for (ISO 32000-1, 14.7.3). */
import { PDFDict, type PDFDocument, PDFName } from 'pdf-lib';

/** ISO 32000-1, 14.8.4. */
export const standardKinds: ReadonlySet<string> = new Set([
  ...['Document', 'Part', 'Art', 'Sect', 'Div', 'BlockQuote', 'Caption', 'TOC', 'TOCI', 'Index', 'NonStruct'],
  ...[
    'Private',
    'P',
    'H',
    'H1',
    'H2',
    'H3',
    'H4',
    'H5',
    'H6',
    'L',
    'LI',
    'Lbl',
    'LBody',
    'Table',
    'TR',
    'TH',
  ],
  ...[
    'TD',
    'THead',
    'TBody',
    'TFoot',
    'Span',
    'Quote',
    'Note',
    'Reference',
    'BibEntry',
    'Code',
    'Link',
    'Annot',
  ],
  ...['Ruby', 'RB', 'RT', 'RP', 'Warichu', 'WT', 'WP', 'Figure', 'Formula', 'Form'],
]);

export type RoleMap = ReadonlyMap<string, string>;

export function roleMapOf({ catalog }: PDFDocument): RoleMap {
  const root = catalog.lookup(PDFName.of('StructTreeRoot'));
  const map = root instanceof PDFDict ? root.lookup(PDFName.of('RoleMap')) : undefined;
  if (!(map instanceof PDFDict)) return new Map();
  return new Map(
    map
      .entries()
      .flatMap(([kind, to]) =>
        to instanceof PDFName ? [[kind.decodeText(), to.decodeText()] as const] : [],
      ),
  );
}

/** The standard kind that a kind comes to; null where it comes to none, circular where it comes back to itself. */
export function standsFor(kind: string, map: RoleMap): string | null | { readonly circular: string } {
  const seen = new Set<string>();
  let at: string | undefined = kind;
  while (at !== undefined && !standardKinds.has(at)) {
    if (seen.has(at)) return { circular: kind };
    seen.add(at);
    at = map.get(at);
  }
  return at ?? null;
}
