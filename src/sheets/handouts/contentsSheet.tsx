/** The teacher's contents page: what the stack holds, in its order, and on which page whose sheets begin. */
import { mm } from '../../paper/measures.ts';
import { shorten } from '../../wording/shorten.ts';
import type { Page } from '../../paper/page.ts';
import { paged } from '../paged.ts';
import { Grid } from '../parts/Grid.tsx';
import type { LayOut } from '../sheetKind.ts';
import { type ClassInput, classSide } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

/** A line of the contents: what it is, whose, and the page it begins on, counted from the first of the stack. */
export type ContentsLine = {
  readonly what: string;
  readonly team: string;
  readonly number: string;
  readonly page: number;
};

const rowHeight = mm(5.8);

export function contentsSheet(
  input: ClassInput,
  lines: readonly ContentsLine[],
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const rows = lines.map(({ what, team, number, page }) => [
    shorten(what, 60),
    shorten(team, 30),
    number,
    String(page),
  ]);
  return paged(
    {
      all: rows,
      rowHeight,
      draw: ({ some }) =>
        classSide(
          input,
          { kind: handoutWords(input, 'kinds.contents'), subject: handoutWords(input, 'contents.subject') },
          <Grid columns={columns(input)} rows={some} rowHeight={rowHeight} headHeight={mm(7)} />,
        ),
    },
    layOut,
  );
}

function columns(input: ClassInput) {
  const widths = { what: 82, team: 40, number: 46, page: 22 };
  return Object.entries(widths).map(([key, width]) => ({
    head: handoutWords(input, `contents.${key}`),
    width: mm(width),
  }));
}
