/** Whether the parts of the document are of known kinds, stand where they may, and say what they have to. */
import { PDFDict, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import { type Looked, name, nameIn, type Part } from './document.ts';
import type { Tell } from './lint.ts';

/** ISO 32000-1, 14.8.4: the kinds that we may meet; tables of contents, Ruby and Warichu are not among them. */
const standard = new Set([
  ...['Document', 'Part', 'Art', 'Sect', 'Div', 'BlockQuote', 'Caption', 'Index', 'NonStruct', 'Private'],
  ...['P', 'H', 'H1', 'H2', 'H3', 'H4', 'H5', 'H6', 'L', 'LI', 'Lbl', 'LBody', 'Table', 'TR', 'TH', 'TD'],
  ...['THead', 'TBody', 'TFoot', 'Span', 'Quote', 'Note', 'Reference', 'BibEntry', 'Code', 'Link', 'Annot'],
  ...['Figure', 'Formula', 'Form'],
]);

type Places = Readonly<Record<string, readonly string[]>>;
const tables = {
  holds: {
    Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
    TR: ['TH', 'TD'],
    THead: ['TR'],
    TBody: ['TR'],
  },
  standsIn: { TR: ['Table', 'THead', 'TBody', 'TFoot'], TH: ['TR'], TD: ['TR'] },
} as const satisfies Record<string, Places>;
const lists = {
  holds: { L: ['L', 'LI', 'Caption'], LI: ['Lbl', 'LBody'] },
  standsIn: { LI: ['L'], Lbl: ['LI', 'Note'], LBody: ['LI'] },
} as const satisfies Record<string, Places>;

export function checkStructure({ document, parts }: Looked, tell: Tell): void {
  const root = document.catalog.lookup(name('StructTreeRoot'));
  if (!(root instanceof PDFDict) || parts.length === 0) tell('01-005', 'the file', 'there is no structure');
  else if (root.has(name('RoleMap'))) tell('02-004', 'the structure');
  for (const part of parts) {
    if (!standard.has(part.role)) tell('02-001', part.role);
    checkPlace(part, tables, () => tell('09-004', `${part.role} in ${part.parent?.role ?? 'nothing'}`));
    checkPlace(part, lists, () => tell('09-005', `${part.role} in ${part.parent?.role ?? 'nothing'}`));
    if (part.role === 'Figure' && !hasWords(part)) tell('13-004', 'Figure');
    if (part.role === 'Formula' && !hasWords(part)) tell('17-002', 'Formula');
    if (part.role === 'TH' && !saysScope(part)) tell('15-003', 'TH');
  }
  checkHeadings(parts, tell);
  checkNotes(parts, tell);
}

function checkPlace(
  part: Part,
  { holds, standsIn }: { holds: Places; standsIn: Places },
  wrong: () => void,
): void {
  const mayHold = holds[part.role];
  if (mayHold && (part.marks.length > 0 || part.kids.some(({ role }) => !mayHold.includes(role)))) wrong();
  const mayStandIn = standsIn[part.role];
  if (mayStandIn && !mayStandIn.includes(part.parent?.role ?? '')) wrong();
}

function textIn(dict: PDFDict, key: string): string {
  const value = dict.lookup(name(key));
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : '';
}

function hasWords({ dict }: Part): boolean {
  return textIn(dict, 'Alt').trim() !== '' || textIn(dict, 'ActualText').trim() !== '';
}

function saysScope({ dict }: Part): boolean {
  const attributes = dict.lookup(name('A'));
  return (
    attributes instanceof PDFDict && ['Row', 'Column', 'Both'].includes(nameIn(attributes, 'Scope') ?? '')
  );
}

function checkHeadings(parts: readonly Part[], tell: Tell): void {
  const levels = parts.flatMap(({ role }) => (/^H[1-6]$/.test(role) ? [Number(role[1])] : []));
  if (levels.length > 0 && levels[0] !== 1) tell('14-002', `H${levels[0]}`);
  for (const [at, level] of levels.entries()) {
    const before = levels[at - 1] ?? level;
    if (level > before + 1) tell('14-003', `H${level} after H${before}`);
  }
  if (levels.length > 0 && parts.some(({ role }) => role === 'H')) tell('14-007', 'H');
}

function checkNotes(parts: readonly Part[], tell: Tell): void {
  const seen = new Set<string>();
  for (const { dict } of parts.filter(({ role }) => role === 'Note')) {
    const id = dict.lookup(name('ID'));
    if (id === undefined || id instanceof PDFName) tell('19-003', 'Note');
    else if (seen.has(String(id))) tell('19-004', `Note ${String(id)}`);
    seen.add(String(id));
  }
}
