import type { Sheet } from './layOut.ts';
import type { Uncovered } from './cover.ts';
import type { Outlines } from './outlines.ts';
import type { Page } from './page.ts';
import type { Attachment, Print } from './print.ts';
import type { Filled, Pictures, Stencil, Values } from './stencil.ts';
import type { Picture } from './toPng.ts';
import type { Stack } from './toStackPdf.ts';
import type { ZipEntry } from './zip.ts';

/** The press with its type case, layout engine and raster bound: the same in the build and in the browser. */
export type Press = {
  /** May take over what an earlier sheet left: the sooner the less is new, and alike to the eye. */
  readonly layOut: (sheet: Sheet) => Promise<Page>;
  /** From nothing but the sheet: the same sheet gives the same bytes, whatever was typed before. */
  readonly layOutAnew: (sheet: Sheet) => Promise<Page>;
  readonly toPdf: (print: Print) => Promise<Uint8Array>;
  /** What of these texts cannot be printed, by its characters. */
  readonly uncovered: (texts: readonly string[]) => Promise<readonly Uncovered[]>;
  /** The slots of a laid-out page. */
  readonly stencilOf: (page: Page) => Stencil;
  /** Other words in the slots of a sheet, and other drawings in its figures; null where one has no room there. */
  readonly fill: (stencil: Stencil, values: Values, pictures?: Pictures) => Promise<Filled | null>;
  /** A page as it is, to stand among filled ones. */
  readonly asLaidOut: (page: Page) => Filled;
  /** Many prints of few sheets in one PDF, piece by piece. */
  readonly toStackPdf: (stack: Stack) => AsyncGenerator<Uint8Array, void, void>;
  /** Files as one zip, piece by piece. */
  readonly toZip: (entries: AsyncIterable<ZipEntry>) => AsyncGenerator<Uint8Array, void, void>;
  /** What a page draws, piece by piece, so that a picture of it can be changed where it changes. */
  readonly draw: (page: Page) => Outlines;
  readonly toSvg: (page: Page, carries?: Attachment) => string;
  readonly toPng: (page: Page, options: Picture) => Promise<Uint8Array>;
};
