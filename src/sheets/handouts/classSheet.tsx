/** What the sheets for a whole class are made from, and the side that each of them is printed on. */
import type { JSXNode } from 'satori/jsx';
import type { ClassFacts } from '../../core/plan/handoutFacts.ts';
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import type { Page } from '../../paper/page.ts';
import { dayText } from '../../wording/date.ts';
import { Leaf } from '../parts/blocks.tsx';
import { CardHead } from '../parts/CardHead.tsx';
import { Frame } from '../parts/Frame.tsx';
import type { GridColumn } from '../parts/Grid.tsx';
import type { Printing } from '../sheet.ts';
import type { LayOut } from '../sheetKind.ts';
import { type HandoutInput, handoutWords, type Session } from './handout.ts';

/** Somebody in the roster. */
export type Listed = {
  readonly name: string;
  readonly team: string;
  readonly notes: string;
};

/** What is worked through at the wall: as somebody's worksheet, and the figures that it lacks and the class is asked for. */
export type WorkedExample = { readonly input: HandoutInput; readonly lacks: readonly string[] };

export type ClassInput = Printing & {
  readonly session: Session;
  /** Everybody, in the order of the roster. */
  readonly people: readonly Listed[];
  /** Names of the teams, in the order in which they first stand in the roster. */
  readonly teams: readonly string[];
  /** How many are in none of them. */
  readonly alone: number;
  /** Who takes turns with the care: each team by its name, and the names of those who come together without one. */
  readonly turns: readonly string[];
  /** Worksheets that are handed out. */
  readonly worksheets: number;
  readonly work: 'inTeams' | 'alone';
  readonly example: () => WorkedExample;
  readonly facts: ClassFacts;
};

/** A sheet for the class: part of the name of its file, and its pages. */
export type ClassSheet = {
  readonly id: string;
  readonly fits: (input: ClassInput) => 'yes' | 'no';
  readonly pages: (input: ClassInput, layOut: LayOut) => AsyncGenerator<Page, void, void>;
};

/** A page of such a sheet, ready for the press. */
export function classSide(
  input: ClassInput,
  { kind, subject }: { readonly kind: string; readonly subject: string },
  content: JSXNode,
): Sheet {
  const { session, words, paper } = input;
  return {
    ...paperSizes[paper],
    title: handoutWords(input, 'sheetTitle', { kind, name: session.name }),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame>
          <CardHead
            name={session.name}
            place={session.place === '' ? null : session.place}
            subject={subject}
            kind={kind}
            printed={dayText(session.date, words.catalogue)}
          />
          {content}
        </Frame>
      </Leaf>
    ),
  };
}

/** A number of things, one or several of them. */
export function counted(input: Pick<Printing, 'words'>, key: string, count: number): string {
  return handoutWords(input, `${key}.${count === 1 ? 'one' : 'many'}`, { count: String(count) });
}

/** Widths of columns in millimetres, by what stands in them. */
type Widths = Readonly<Record<string, number>>;

/** The columns of a sheet's table; their heads stand under its part of the wording. */
export function columnsOf(
  input: Pick<Printing, 'words'>,
  part: string,
  widths: Widths,
): readonly GridColumn[] {
  return Object.entries(widths).map(([key, width]) => {
    return { head: handoutWords(input, `${part}.${key}`), width: mm(width) };
  });
}

/** What is known of a row, column by column; an empty cell where it is to be written by hand. */
export function inColumns(widths: Widths, row: Readonly<Record<string, string>>): readonly string[] {
  return Object.keys(widths).map((key) => row[key] ?? '');
}
