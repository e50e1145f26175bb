/** The teacher's contents page: what the stack holds, in its order, and on which page whose sheets begin. */
import { mm } from '../../paper/measures.ts';
import { shorten } from '../../wording/shorten.ts';
import type { Page } from '../../paper/page.ts';
import { paged } from '../paged.ts';
import { Grid } from '../parts/Grid.tsx';
import type { LayOut } from '../sheetKind.ts';
import { type ClassInput, classSide, columnsOf, inColumns } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

/** A line of the contents: what it is, whose, and the page it begins on, counted from the first of the stack. */
export type ContentsLine = {
  readonly what: string;
  readonly team: string;
  readonly number: string;
  readonly page: number;
};

const rowHeight = mm(5.8);

const besideTeams = { what: 82, team: 40, number: 46, page: 22 };
/** A column in which nothing would stand leaves its room to the names. */
const withoutTeams = { what: 122, number: 46, page: 22 };

export function contentsSheet(
  input: ClassInput,
  lines: readonly ContentsLine[],
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const widths = input.teams.length > 0 ? besideTeams : withoutTeams;
  const rows = lines.map(({ what, team, number, page }) =>
    inColumns(widths, { what: shorten(what, 100), team: shorten(team, 60), number, page: String(page) }),
  );
  return paged(
    {
      all: rows,
      rowHeight,
      draw: ({ some }) =>
        classSide(
          input,
          { kind: handoutWords(input, 'kinds.contents'), subject: handoutWords(input, 'contents.subject') },
          <Grid
            columns={columnsOf(input, 'contents', widths)}
            rows={some}
            rowHeight={rowHeight}
            headHeight={mm(7)}
          />,
        ),
    },
    layOut,
  );
}
