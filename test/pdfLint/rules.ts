/**
 * The failure conditions of PDF/UA-1 (ISO 14289-1) that a machine can check, numbered as the Matterhorn Protocol 1.1
 * (PDF Association, 2021) numbers them. The protocol itself was not at hand: numbers, and whether a machine or a person
 * decides, are as four public lists quote them, which agree; the words are ours.
 */
export const covered = {
  '01-003': 'an artifact inside content of the document',
  '01-004': 'content of the document inside an artifact',
  '01-005': 'content that is neither in the structure nor an artifact',
  '01-007': 'the file calls its own tags suspect',
  '02-001': 'a part of a kind that the standard does not know',
  '02-003': 'kinds of parts that are explained by each other',
  '02-004': 'a role map that gives standard parts another meaning',
  '06-001': 'no XMP metadata',
  '06-002': 'no PDF/UA identifier in the metadata',
  '06-003': 'no title in the metadata',
  '07-001': 'viewers are not told to show the title',
  '07-002': 'viewers are told to show the file name instead of the title',
  '09-004': 'parts of a table where they may not stand',
  '09-005': 'parts of a list where they may not stand',
  '09-006': 'parts of a table of contents where they may not stand',
  '09-007': 'parts of a Ruby where they may not stand',
  '09-008': 'parts of a Warichu where they may not stand',
  '10-001': 'a letter without its meaning',
  '11-001': 'no language of the text',
  '11-002': 'no language of the words for a figure',
  '11-003': 'no language of the bookmarks',
  '11-004': 'no language of the words for an annotation',
  '11-005': 'no language of the words for a field',
  '11-006': 'no language of the metadata',
  '13-004': 'a figure without words',
  '14-002': 'the first heading is not of the first level',
  '14-003': 'a level of headings is skipped',
  '14-006': 'two unnumbered headings in one part',
  '14-007': 'numbered and unnumbered headings in one document',
  '15-003': 'a head cell that does not say what it heads',
  '17-002': 'a formula without words',
  '19-003': 'a note without an identifier',
  '19-004': 'two notes with one identifier',
  '20-001': 'one of the choices of optional content has no name',
  '20-002': 'the usual choice of optional content has no name',
  '20-003': 'optional content that comes and goes by itself',
  '21-001': 'an attached file without both of its names',
  '25-001': 'a form of the other kind, XFA, whatever it asks for',
  '26-001': 'the file is locked and does not say for what',
  '26-002': 'the file is locked for screen readers',
  '28-002': 'an annotation that does not stand in an annotation part',
  '28-004': 'an annotation without words',
  '28-005': 'a field without words',
  '28-006': 'an annotation of an unknown kind without words or place',
  '28-007': 'an annotation for the print shop, TrapNet',
  '28-008': 'a page with annotations that does not say in which order they are walked',
  '28-009': 'annotations are walked in another order than the structure',
  '28-010': 'a field that does not stand in a form part',
  '28-011': 'a link that does not stand in a link part',
  '28-012': 'a link without words',
  '28-014': 'a clip that does not say its kind',
  '28-015': 'a clip without words',
  '28-016': 'an attached file on a page without both of its names',
  '28-017': 'a printer’s mark in the structure',
  '28-018': 'a printer’s mark that is no artifact',
  '30-001': 'content from another file',
  '30-002': 'content of the document that is painted more than once',
  '31-004': 'a composed font whose letters are not tied to its glyphs in a way that is known',
  '31-005': 'a composed font whose letters are not tied to its glyphs',
  '31-006': 'a composed font with another encoding than by glyph',
  '31-009': 'a font that is not in the file as TrueType',
  '31-011': 'a glyph that the font does not have',
  '31-014': 'a glyph that the list of glyphs leaves out',
  '31-015': 'a list of glyphs that names more than there are',
  '31-016': 'a width that is not the width of the glyph',
  '31-017': 'a font of letters without a table of letters',
  '31-018': 'a letter that the table of letters does not have',
  '31-019': 'a font of letters without an encoding',
  '31-020': 'a font of letters with a changed encoding that does not say of which',
  '31-021': 'a font of letters with an encoding that is not one of the two usual ones',
  '31-022': 'letters renamed, whatever the names',
  '31-023': 'letters renamed in a font without a table of Unicode',
  '31-024': 'a font of signs with an encoding',
  '31-025': 'a font of signs without a table of signs',
  '31-026': 'a font of signs with several tables, none of them of signs',
  '31-027': 'a font without the meaning of its letters',
  '31-028': 'a letter whose meaning is nothing',
  '31-029': 'a letter whose meaning is a byte-order mark',
  '31-030': 'the sign for a missing letter',
} as const;
export type Rule = keyof typeof covered;

/** Conditions without a check of their own, since what they are about is never written: what tells it if it is. */
export const absent = {
  'a composed font with a table of codes of its own': {
    conditions: ['31-001', '31-002', '31-003', '31-007', '31-008'],
    toldBy: '31-006',
  },
  'a Type 1 font': { conditions: ['31-012', '31-013'], toldBy: '31-009' },
  'a formula with a letter without meaning': { conditions: ['17-003'], toldBy: '10-001' },
} as const satisfies Record<string, { conditions: readonly string[]; toldBy: Rule }>;
export type Absence = keyof typeof absent;

/** Conditions that a person has to judge, and what to look at. */
export const forPeople: Readonly<Record<string, readonly string[]>> = {
  'whether what is told is what is meant, and what is left out is only ornament': [
    ...['01-001', '01-002', '01-006', '02-002', '04-001', '06-004', '09-001', '09-002', '09-003'],
    ...['11-007', '12-001', '13-001', '13-002', '13-003', '13-005', '13-006', '13-007', '13-008'],
    ...['14-001', '14-004', '14-005', '15-001', '15-002', '15-004', '15-005', '16-001', '16-002', '16-003'],
    ...['17-001', '18-001', '18-002', '19-001', '19-002', '22-001', '24-001', '28-001', '28-003', '28-013'],
  ],
  'whether anything flickers, sounds, or waits for a key': [
    ...['03-001', '03-002', '03-003', '05-001', '05-002', '05-003', '29-001'],
  ],
  'whether scanned text is right': ['08-001', '08-002'],
  'whether the licence of a font lets it travel in a file': ['31-010'],
};

/** Checkpoints that the protocol has no test for: signatures and navigation. */
export const withoutTest: readonly string[] = ['23-001', '27-001'];

/** What the result of a look is worth. */
export const scope = [
  `${Object.keys(covered).length} of 87 conditions that a machine can check have a check of their own;`,
  `${Object.values(absent).flatMap(({ conditions }) => conditions).length} are about things that are told when they occur;`,
  `${Object.values(forPeople).flat().length} are for a person. Machine checks only; not a certificate.`,
].join(' ');
