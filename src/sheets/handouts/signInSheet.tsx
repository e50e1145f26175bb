/** Who is here: a line for everybody in the roster, and some for those who are not in it. */
import { mm } from '../../paper/measures.ts';
import { paged } from '../paged.ts';
import { Grid } from '../parts/Grid.tsx';
import { type ClassInput, type ClassSheet, classSide, columnsOf, inColumns } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

const rowHeight = mm(7.6);
/** Somebody always brings somebody. */
const spareLines = 4;

export const signInSheet: ClassSheet = {
  id: 'sign-in',
  fits: () => 'yes',
  pages: (input, layOut) =>
    paged(
      {
        all: rows(input),
        rowHeight,
        draw: ({ some }) =>
          classSide(
            input,
            { kind: handoutWords(input, 'kinds.signIn'), subject: handoutWords(input, 'signIn.subject') },
            <Grid
              columns={columnsOf(input, 'signIn', widthsOf(input))}
              rows={some}
              rowHeight={rowHeight}
              headHeight={mm(7)}
            />,
          ),
      },
      layOut,
    ),
};

const besideTeams = { line: 10, name: 52, team: 36, sign: 30, notes: 62 };
/** A column in which nothing would stand leaves its room to the others. */
const withoutTeams = { line: 10, name: 66, sign: 36, notes: 78 };

function widthsOf({ teams }: ClassInput): Readonly<Record<string, number>> {
  return teams.length > 0 ? besideTeams : withoutTeams;
}

function rows(input: ClassInput): readonly (readonly string[])[] {
  // Nothing is cut: a note may be the one that a child's health hangs on.
  const listed = input.people.map((one, at) => inColumns(widthsOf(input), { ...one, line: String(at + 1) }));
  return [...listed, ...Array.from({ length: spareLines }, () => inColumns(widthsOf(input), {}))];
}
