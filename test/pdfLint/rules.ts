/**
 * The machine-checkable failure conditions of PDF/UA-1 (ISO 14289-1), numbered as the Matterhorn Protocol 1.1 numbers
 * them; numbers and meaning are from memory, the words are ours. Machine checks only; not a certificate.
 */
export const covered = {
  '01-003': 'an artifact inside content of the document',
  '01-004': 'content of the document inside an artifact',
  '01-005': 'content that is neither in the structure nor an artifact',
  '01-007': 'the file calls its own tags suspect',
  '02-001': 'a part of a kind that the standard does not know',
  '02-004': 'a role map that gives standard parts another meaning',
  '06-001': 'no XMP metadata',
  '06-002': 'no PDF/UA identifier in the metadata',
  '06-003': 'no title in the metadata',
  '07-001': 'viewers are not told to show the title',
  '07-002': 'viewers are told to show the file name instead of the title',
  '09-004': 'parts of a table where they may not stand',
  '09-005': 'parts of a list where they may not stand',
  '10-001': 'a letter without its meaning',
  '11-006': 'no language of the document',
  '13-004': 'a figure without words',
  '14-002': 'the first heading is not of the first level',
  '14-003': 'a level of headings is skipped',
  '14-007': 'numbered and unnumbered headings in one document',
  '15-003': 'a head cell that does not say what it heads',
  '17-002': 'a formula without words',
  '19-003': 'a note without an identifier',
  '19-004': 'two notes with one identifier',
  '20-001': 'optional content',
  '21-001': 'an attached file without both of its names',
  '25-001': 'a form of the other kind, XFA',
  '26-001': 'the file is locked',
  '28-004': 'an annotation without words',
  '28-005': 'a field without words',
  '28-008': 'a page with annotations that does not say in which order they are walked',
  '28-009': 'annotations are walked in another order than the structure',
  '28-010': 'a field that does not stand in a form part',
  '28-011': 'a link that does not stand in a link part',
  '30-001': 'content from another file',
  '31-004': 'a composed font whose letters are not tied to its glyphs',
  '31-006': 'a composed font with an encoding that is not in the file',
  '31-009': 'a font that is not in the file',
  '31-011': 'a glyph that the font does not have',
  '31-016': 'a width that is not the width of the glyph',
  '31-027': 'a font without the meaning of its letters',
  '31-028': 'a letter that means nothing',
  '31-030': 'the sign for a missing letter',
} as const;
export type Rule = keyof typeof covered;

/** Conditions without a check of their own, and why. */
export const notCovered: Readonly<Record<string, string>> = {
  '01-001, 01-002, 01-006, 02-002, 05-001 to 05-003, 06-004, 09-001 to 09-003, 11-007, 13-001 to 13-006, 14-001, 14-004, 14-005, 15-001, 15-002, 16, 17-001, 18, 19-001, 19-002, 22, 23, 24, 27, 29':
    'for a person: whether what is told is what is meant',
  '02-003': 'no role map is written, and any is told by 02-004',
  '09-006 to 09-008': 'no tables of contents, Ruby or Warichu; 02-001 lets none of them in',
  '11-001 to 11-005': 'one language of the whole document holds for all of them (11-006)',
  '14-006': 'unnumbered headings are told by 14-007',
  '17-003': 'no formula parts are written; one without words is told by 17-002',
  '20-002, 20-003': 'optional content of any kind is told by 20-001',
  '26-002': 'any lock is told by 26-001',
  '28-002, 28-006, 28-007, 28-012 to 28-018': 'other annotations than fields and links are refused by 28-004',
  '30-002': 'forms that are painted twice are not written; marks inside them would be told by 01-005',
  '31-001 to 31-003, 31-005, 31-007, 31-008': 'only the encodings Identity-H and WinAnsi are let in (31-006)',
  '31-012 to 31-015, 31-017 to 31-026':
    'no Type 1 fonts and no symbolic fonts are written; 31-009 lets only TrueType in',
  '31-029': 'a byte-order mark as the meaning of a letter is told by 31-028',
};
