/** Whether the parts of the document are of known kinds, stand where they may, and say what they have to. */
import { PDFDict, PDFName } from 'pdf-lib';
import { type Looked, name, nameIn, type Part, textIn } from './document.ts';
import type { Tell } from './lint.ts';
import { roleMapOf, standardKinds, standsFor } from './roleMap.ts';

type Places = Readonly<Record<string, readonly string[]>>;
type Grammar = { readonly holds: Places; readonly standsIn: Places };

/** ISO 32000-1, tables 333 and 336 to 338. */
const grammars = {
  '09-004': {
    holds: {
      Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
      TR: ['TH', 'TD'],
      THead: ['TR'],
      TBody: ['TR'],
      TFoot: ['TR'],
    },
    standsIn: {
      TR: ['Table', 'THead', 'TBody', 'TFoot'],
      TH: ['TR'],
      TD: ['TR'],
      THead: ['Table'],
      TBody: ['Table'],
      TFoot: ['Table'],
    },
  },
  '09-005': {
    holds: { L: ['L', 'LI', 'Caption'], LI: ['Lbl', 'LBody'] },
    standsIn: { LI: ['L'], Lbl: ['LI', 'TOCI', 'BibEntry', 'Note'], LBody: ['LI'] },
  },
  '09-006': {
    holds: { TOC: ['TOC', 'TOCI', 'Caption'], TOCI: ['Lbl', 'Reference', 'NonStruct', 'P', 'TOC'] },
    standsIn: { TOCI: ['TOC'] },
  },
  '09-007': {
    holds: { Ruby: ['RB', 'RT', 'RP'] },
    standsIn: { RB: ['Ruby'], RT: ['Ruby'], RP: ['Ruby'] },
  },
  '09-008': { holds: { Warichu: ['WT', 'WP'] }, standsIn: { WT: ['Warichu'], WP: ['Warichu'] } },
} as const satisfies Record<string, Grammar>;

export function checkStructure(looked: Looked, tell: Tell): void {
  const { document, parts } = looked;
  const root = document.catalog.lookup(name('StructTreeRoot'));
  if (!(root instanceof PDFDict) || parts.length === 0) tell('01-005', 'the file', 'there is no structure');
  checkKinds(looked, tell);
  for (const part of parts) {
    for (const rule of ['09-004', '09-005', '09-006', '09-007', '09-008'] as const)
      checkPlace(part, grammars[rule], () => tell(rule, placeOf(part)));
    if (part.role === 'Figure' && !hasWords(part)) tell('13-004', placeOf(part));
    if (part.role === 'Formula' && textIn(part.dict, 'Alt').trim() === '') tell('17-002', placeOf(part));
    if (part.role === 'TH' && !saysScope(part)) tell('15-003', placeOf(part));
    if (part.kids.filter(({ role }) => role === 'H').length > 1) tell('14-006', placeOf(part));
  }
  checkHeadings(parts, tell);
  checkNotes(parts, tell);
}

/** Where a part stands, for whoever looks for it. */
function placeOf(part: Part): string {
  const page = part.marks[0]?.page;
  const within = `${part.role} in ${part.parent?.role ?? 'nothing'}`;
  return page === undefined ? within : `${within}, page ${page + 1}`;
}

function checkKinds({ document, parts }: Looked, tell: Tell): void {
  const map = roleMapOf(document);
  for (const kind of map.keys()) if (standardKinds.has(kind)) tell('02-004', 'the structure', kind);
  for (const kind of new Set([...map.keys(), ...parts.map(({ dict }) => nameIn(dict, 'S') ?? '')])) {
    const known = standsFor(kind, map);
    if (known === null) tell('02-001', 'the structure', kind);
    else if (typeof known !== 'string') tell('02-003', 'the structure', kind);
  }
}

function checkPlace(part: Part, { holds, standsIn }: Grammar, wrong: () => void): void {
  const mayHold = holds[part.role];
  if (mayHold && (part.marks.length > 0 || part.kids.some(({ role }) => !mayHold.includes(role)))) wrong();
  const mayStandIn = standsIn[part.role];
  if (mayStandIn && !mayStandIn.includes(part.parent?.role ?? '')) wrong();
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
