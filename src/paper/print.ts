import type { Page } from './page.ts';

/** A file that travels inside a print. */
export type Attachment = {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
  readonly description: string;
};

/** Pages that belong together, and what is said of them. No clock: whoever wants a date gives it. */
export type Print = {
  readonly pages: readonly Page[];
  readonly title: string;
  /** BCP 47 language tag. */
  readonly lang: string;
  readonly subject?: string;
  readonly attachment?: Attachment;
  /** true: whoever prints it must not scale it to fit. */
  readonly scale?: 'true' | 'fit';
  /** printed: places to write in are for a pencil; else they are form fields, and look the same on paper. */
  readonly fields?: 'live' | 'printed';
  /** The day of the print, `2026-05-04`. */
  readonly date?: string;
};
