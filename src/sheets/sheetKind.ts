/** What every kind of sheet gives: its name, its titles, its pages. */
import type { Sheet } from '../paper/layOut.ts';
import type { Page } from '../paper/page.ts';
import type { SheetInput } from './sheet.ts';

/** The press's way from a tree to a page. */
export type LayOut = (sheet: Sheet) => Promise<Page>;

export type SheetKind = {
  /** Part of the names of its files: `sitters-sheet`. */
  readonly id: string;
  readonly title: (input: SheetInput) => string;
  /** What it is for, as the PDF tells it. */
  readonly subject: (input: SheetInput) => string;
  /** Page after page; the press says what fits. */
  readonly pages: (input: SheetInput, layOut: LayOut) => AsyncGenerator<Page, void, void>;
  /** Whether the system has anything to put on it. */
  readonly fits: (input: SheetInput) => 'yes' | 'no';
  /** true: to be printed at its own size. */
  readonly scale: 'true' | 'fit';
};
