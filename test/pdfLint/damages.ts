/** For each rule a damage that breaks it. */
import { PDFArray, PDFBool, PDFDict, PDFNumber, PDFString } from 'pdf-lib';
import {
  all,
  annotated,
  both,
  composite,
  type Damage,
  descendant,
  first,
  hung,
  metadata,
  of,
  part,
  preferences,
  restreamed,
  rewritten,
  withoutLanguage,
  written,
} from './damageTools.ts';
import { listed, locked, paintedTwice, renamed, simpleFont } from './damagedParts.ts';
import type { Absence, Rule } from './rules.ts';

export const damages: Readonly<Record<Rule, Damage>> = {
  '01-003': rewritten((text) => text.replace(/(MCID 0>> BDC\n)/, '$1/Artifact BMC\nEMC\n')),
  '01-004': rewritten((text) => text.replace(/(\/\w+ <<\/MCID 0>> BDC)/, '/Artifact BMC\n$1\nEMC')),
  '01-005': rewritten((text) => `${text}\n0 0 m 10 10 l S`),
  '01-007': ({ catalog }) => catalog.lookup(of('MarkInfo'), PDFDict).set(of('Suspects'), PDFBool.True),
  '02-001': (document) => part(document, 'P').set(of('S'), of('Sentence')),
  '02-003': ({ catalog, context }) =>
    catalog.lookup(of('StructTreeRoot'), PDFDict).set(of('RoleMap'), context.obj({ Hen: 'Egg', Egg: 'Hen' })),
  '02-004': ({ catalog, context }) =>
    catalog.lookup(of('StructTreeRoot'), PDFDict).set(of('RoleMap'), context.obj({ P: 'Div' })),
  '06-001': ({ catalog }) => void catalog.delete(of('Metadata')),
  '06-002': metadata((text) => text.replace('<pdfuaid:part>1', '<pdfuaid:part>7')),
  '06-003': metadata((text) => text.replace(/<dc:title>.*?<\/dc:title>/s, '')),
  '07-001': (document) => void preferences(document).delete(of('DisplayDocTitle')),
  '07-002': (document) => preferences(document).set(of('DisplayDocTitle'), PDFBool.False),
  '09-004': (document) => part(document, 'TD').set(of('S'), of('P')),
  '09-005': (document) => part(document, 'LBody').set(of('S'), of('P')),
  '09-006': (document) => part(document, 'P').set(of('S'), of('TOCI')),
  '09-007': (document) => part(document, 'P').set(of('S'), of('RT')),
  '09-008': (document) => part(document, 'P').set(of('S'), of('WT')),
  '10-001': restreamed('ToUnicode', composite, (text) =>
    text.replace(/(beginbfchar\n)<\w{4}> <\w+>\n/, '$1'),
  ),
  '11-001': withoutLanguage,
  '11-002': withoutLanguage,
  '11-003': withoutLanguage,
  '11-004': both(withoutLanguage, annotated({ Subtype: 'Text', Contents: PDFString.of('x') })),
  '11-005': both(withoutLanguage, annotated({ Subtype: 'Widget', TU: PDFString.of('x') })),
  '11-006': withoutLanguage,
  '13-004': (document) => void part(document, 'Figure').delete(of('Alt')),
  '14-002': (document) => part(document, 'H1').set(of('S'), of('H2')),
  '14-003': (document) => {
    for (const heading of all(document, 'H2')) heading.set(of('S'), of('H3'));
  },
  '14-006': (document) => {
    const holder = all(document, 'H2')[0]?.get(of('P'));
    for (const one of all(document, 'H2').filter((each) => each.get(of('P')) === holder))
      one.set(of('S'), of('H'));
  },
  '14-007': (document) => all(document, 'H2').at(-1)?.set(of('S'), of('H')),
  '15-003': (document) => void part(document, 'TH').delete(of('A')),
  '17-002': (document) => part(document, 'P').set(of('S'), of('Formula')),
  '19-003': (document) => part(document, 'P').set(of('S'), of('Note')),
  '19-004': (document) => {
    for (const one of all(document, 'P').slice(0, 2)) {
      one.set(of('S'), of('Note'));
      one.set(of('ID'), PDFString.of('same'));
    }
  },
  '20-001': written({ D: { Name: PDFString.of('all') }, Configs: [{}] }, 'OCProperties'),
  '20-002': written({ D: {} }, 'OCProperties'),
  '20-003': written({ D: { Name: PDFString.of('all'), AS: [] } }, 'OCProperties'),
  '21-001': (document) => void first(document, 'Type', 'Filespec').delete(of('UF')),
  '25-001': ({ catalog, context }) => catalog.set(of('AcroForm'), context.obj({ XFA: [] })),
  '26-001': locked({ Filter: 'Standard', V: 1, R: 2 }),
  '26-002': locked({ Filter: 'Standard', V: 1, R: 3, P: -1 - 512 }),
  '28-002': annotated({ Subtype: 'Text', Contents: PDFString.of('x') }),
  '28-004': annotated({ Subtype: 'Text' }),
  '28-005': annotated({ Subtype: 'Widget' }),
  '28-006': annotated({ Subtype: 'Balloon' }),
  '28-007': annotated({ Subtype: 'TrapNet' }),
  '28-008': annotated({ Subtype: 'Text', Contents: PDFString.of('x') }, null),
  '28-009': annotated({ Subtype: 'Text', Contents: PDFString.of('x') }, 'R'),
  '28-010': annotated({ Subtype: 'Widget', TU: PDFString.of('x') }),
  '28-011': annotated({ Subtype: 'Link', Contents: PDFString.of('x') }),
  '28-012': both(annotated({ Subtype: 'Link' }), hung('Link')),
  '28-014': written({ S: 'MCD', Alt: [] }),
  '28-015': written({ S: 'MCD', CT: PDFString.of('audio/mpeg') }),
  '28-016': both(
    annotated({ Subtype: 'FileAttachment', Contents: PDFString.of('x'), FS: { F: PDFString.of('x') } }),
    hung('Annot'),
  ),
  '28-017': both(annotated({ Subtype: 'PrinterMark', Contents: PDFString.of('x') }), hung('Annot')),
  '28-018': annotated({ Subtype: 'PrinterMark', Contents: PDFString.of('x') }),
  '30-001': ({ context }) => void context.register(context.obj({ Subtype: 'Form', Ref: {} })),
  '30-002': paintedTwice,
  '31-004': (document) => descendant(document).set(of('CIDToGIDMap'), of('Otherwise')),
  '31-005': (document) => void descendant(document).delete(of('CIDToGIDMap')),
  '31-006': (document) => composite(document).set(of('Encoding'), of('Elsewhere-H')),
  '31-009': (document) => void first(document, 'Type', 'FontDescriptor').delete(of('FontFile2')),
  '31-011': rewritten((text) => text.replace(/<[0-9A-Fa-f]{4}/, '<FFF0')),
  '31-014': listed(() => new Uint8Array(8)),
  '31-015': listed(() => new Uint8Array(4000).fill(255)),
  '31-016': (document) => {
    const widths = descendant(document).lookup(of('W'), PDFArray).lookup(1, PDFArray);
    for (let at = 0; at < widths.size(); at += 1) widths.set(at, PDFNumber.of(7));
  },
  '31-017': simpleFont({ tables: () => [] }),
  '31-018': simpleFont({ text: '\x81' }),
  '31-019': simpleFont({ entries: { Encoding: undefined } }),
  '31-020': simpleFont({ entries: { Encoding: { Type: 'Encoding' } } }),
  '31-021': simpleFont({ entries: { Encoding: 'StandardEncoding' } }),
  '31-022': simpleFont({ entries: { Encoding: renamed } }),
  '31-023': simpleFont({ entries: { Encoding: renamed }, tables: () => [[1, 0]] }),
  '31-024': simpleFont({ flags: 4 }),
  '31-025': simpleFont({ flags: 4, entries: { Encoding: undefined }, tables: () => [] }),
  '31-026': simpleFont({
    flags: 4,
    entries: { Encoding: undefined },
    tables: () => [
      [1, 0],
      [3, 1],
    ],
  }),
  '31-027': (document) => void composite(document).delete(of('ToUnicode')),
  '31-028': restreamed('ToUnicode', composite, (text) =>
    text.replace(/(beginbfchar\n<\w{4}>) <\w+>/, '$1 <0000>'),
  ),
  '31-029': restreamed('ToUnicode', composite, (text) =>
    text.replace(/(beginbfchar\n<\w{4}>) <\w+>/, '$1 <FEFF>'),
  ),
  '31-030': rewritten((text) => text.replace(/<[0-9A-Fa-f]{4}/, '<0000')),
};

/** What is never written, written. */
export const intruders: Readonly<Record<Absence, Damage>> = {
  'a composed font with a table of codes of its own': (document) =>
    composite(document).set(of('Encoding'), document.context.register(document.context.stream('', {}))),
  'a Type 1 font': simpleFont({ entries: { Subtype: 'Type1' } }),
  'a formula with a letter without meaning': both(damages['10-001'], (document) => {
    const formula = part(document, 'P');
    formula.set(of('S'), of('Formula'));
    formula.set(of('Alt'), PDFString.of('x'));
  }),
};
