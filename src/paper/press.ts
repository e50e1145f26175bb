import type { Sheet } from './layOut.ts';
import type { Page } from './page.ts';
import type { Print } from './print.ts';

/** The press with its type case, layout engine and raster bound: the same in the build and in the browser. */
export type Press = {
  readonly layOut: (sheet: Sheet) => Promise<Page>;
  readonly toPdf: (print: Print) => Promise<Uint8Array>;
  readonly toSvg: (page: Page) => string;
  readonly toPng: (page: Page, options: { readonly dpi: number }) => Promise<Uint8Array>;
};
