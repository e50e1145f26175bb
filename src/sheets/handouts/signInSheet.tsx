/** Who is here: a line for everybody in the roster, and some for those who are not in it. */
import { mm } from '../../paper/measures.ts';
import { paged } from '../paged.ts';
import { Grid } from '../parts/Grid.tsx';
import { type ClassInput, type ClassSheet, classSide } from './classSheet.tsx';
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
            <Grid columns={columns(input)} rows={some} rowHeight={rowHeight} headHeight={mm(7)} />,
          ),
      },
      layOut,
    ),
};

function rows({ people }: ClassInput): readonly (readonly string[])[] {
  // Nothing is cut: a note may be the one that a child's health hangs on.
  const listed = people.map(({ name, team, notes }, at) => [String(at + 1), name, team, '', notes]);
  return [...listed, ...Array.from({ length: spareLines }, () => ['', '', '', '', ''])];
}

function columns(input: ClassInput) {
  const widths = { line: 10, name: 52, team: 36, sign: 30, notes: 62 };
  return Object.entries(widths).map(([key, width]) => ({
    head: handoutWords(input, `signIn.${key}`),
    width: mm(width),
  }));
}
