/** What every kind of sheet gives: its name, its titles, its pages. */
import type { Sheet } from '../paper/layOut.ts';
import type { wallSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import type { SheetInput } from './sheet.ts';

/** The press's way from a tree to a page. */
export type LayOut = (sheet: Sheet) => Promise<Page>;

/** Paper for walls. */
export type WallSize = keyof typeof wallSizes;

/** Part of the names of a sheet's files. */
export type SheetId =
  | 'care-card'
  | 'care-card-large'
  | 'pocket-card'
  | 'labels'
  | 'planting-template'
  | 'sitters-sheet'
  | 'start-up-log'
  | 'water-and-feed-log'
  | 'dip-strip'
  | 'planning-worksheet'
  | 'build-sheet'
  | 'stage-sheet'
  | 'system-drawing'
  | `wall-poster-${WallSize}`
  | `wall-poster-${WallSize}-tiles`;

/** A kind of sheet of a system, or of whatever else sheets are made from. */
export type SheetKind<Input = SheetInput, Id extends string = SheetId> = {
  readonly id: Id;
  /** What it is called where sheets are chosen from. */
  readonly name: (input: Input) => string;
  readonly title: (input: Input) => string;
  /** What it is for, as the PDF tells it. */
  readonly subject: (input: Input) => string;
  /** Page after page; the press says what fits. */
  readonly pages: (input: Input, layOut: LayOut) => AsyncGenerator<Page, void, void>;
  /** Whether the system has anything to put on it. */
  readonly fits: (input: Input) => 'yes' | 'no';
  /** true: to be printed at its own size. */
  readonly scale: 'true' | 'fit';
  /** none: only its PDF is written; pages that are put together from paper have no use as pictures. */
  readonly pictures?: 'none';
};
