/** Who is here: a line for everybody in the roster, and some for those who are not in it. */
import { mm } from '../../paper/measures.ts';
import { shorten } from '../../wording/shorten.ts';
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
  const listed = people.map(({ name, team, notes }, at) => [
    String(at + 1),
    shorten(name, 60),
    shorten(team, 30),
    '',
    shorten(notes, 60),
  ]);
  return [...listed, ...Array.from({ length: spareLines }, () => ['', '', '', '', ''])];
}

function columns(input: ClassInput) {
  const widths = { line: 10, name: 58, team: 30, sign: 50, notes: 42 };
  return Object.entries(widths).map(([key, width]) => ({
    head: handoutWords(input, `signIn.${key}`),
    width: mm(width),
  }));
}
