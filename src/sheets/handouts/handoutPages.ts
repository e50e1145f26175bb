/** Handouts of many people: each kind of sheet is laid out once, and filled for everybody who has the same kind. */
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled, Stencil } from '../../paper/stencil.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutShape, handoutValues, sampleOf } from './handoutTasks.ts';
import { handoutWorksheet } from './handoutWorksheet.ts';

/** Gives the pages of one view of somebody's worksheet. */
export type HandoutDesk = (input: HandoutInput, view: HandoutView) => Promise<readonly Filled[]>;

/** Longer names than take so many lines are rare: each gets a layout of its own. */
const mostLines = 3;

/** More kinds than this and the oldest is laid out anew. */
const mostKept = 64;

/** Where sheets that were laid out for everybody are kept from one run to the next. */
export type LayoutShelf = {
  readonly kept: (shape: string) => Promise<readonly Page[] | null>;
  /** Of what is kept already nothing is done. */
  readonly keep: (shape: string, pages: readonly Page[]) => Promise<void>;
};

/** A desk that remembers the sheets it has laid out. */
export function handoutDesk(
  press: Pick<Press, 'layOutAnew' | 'stencilOf' | 'fill' | 'asLaidOut'>,
  shelf: LayoutShelf | null = null,
): HandoutDesk {
  const kept = new Map<string, readonly Stencil[]>();
  const laidOut = async (input: HandoutInput, view: HandoutView): Promise<readonly Page[]> => {
    const pages: Page[] = [];
    for await (const page of handoutWorksheet(input, view, press.layOutAnew)) pages.push(page);
    return pages;
  };
  /** What everybody with this shape and so many lines to their name shares, page by page. */
  const stencilsFor = async (
    input: HandoutInput,
    view: HandoutView,
    lines: number,
  ): Promise<readonly Stencil[]> => {
    const shape = `${lines} ${handoutShape(input, view)}`;
    const known = kept.get(shape);
    if (known !== undefined) return known;
    const [oldest] = kept.keys();
    if (kept.size >= mostKept && oldest !== undefined) kept.delete(oldest);
    const pages = (await shelf?.kept(shape)) ?? (await laidOut(sampleOf(input, lines), view));
    await shelf?.keep(shape, pages);
    const made = pages.map(press.stencilOf);
    kept.set(shape, made);
    return made;
  };
  /** Null where something has no room on one of its pages. */
  const filledFor = async (
    input: HandoutInput,
    view: HandoutView,
    lines: number,
  ): Promise<readonly Filled[] | null> => {
    const filled: Filled[] = [];
    for (const stencil of await stencilsFor(input, view, lines)) {
      const page = await press.fill(stencil, handoutValues(input, view));
      if (page === null) return null;
      filled.push(page);
    }
    return filled;
  };
  return async (input, view) => {
    for (let lines = 1; lines <= mostLines; lines += 1) {
      const filled = await filledFor(input, view, lines);
      if (filled !== null) return filled;
    }
    return (await laidOut(input, view)).map(press.asLaidOut);
  };
}
