/** Handouts of many people: each kind of sheet is laid out once, and filled for everybody who has the same kind. */
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled, Stencil } from '../../paper/stencil.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutKinds } from './handoutKinds.ts';
import { sampleOf } from './handoutTasks.ts';
import { handoutWorksheet } from './handoutWorksheet.ts';

/** Gives the pages of one view of somebody's worksheet. */
export type HandoutDesk = (input: HandoutInput, view: HandoutView) => Promise<readonly Filled[]>;

/** Longer names than take so many lines are rare: each gets a layout of its own. */
const mostLines = 3;

/** More shapes than this and the oldest is laid out anew. */
const mostKept = 32;

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
  const shapes = new Map<string, Map<string, readonly Stencil[]>>();
  /** By the view and by how many lines the name takes. */
  const layoutsOf = (shape: string): Map<string, readonly Stencil[]> => {
    const known = shapes.get(shape);
    if (known !== undefined) return known;
    const [oldest] = shapes.keys();
    if (shapes.size >= mostKept && oldest !== undefined) shapes.delete(oldest);
    const made = new Map<string, readonly Stencil[]>();
    shapes.set(shape, made);
    return made;
  };
  const kindOf = handoutKinds();
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
    const { shape: ofKind } = kindOf(input);
    const kept = layoutsOf(ofKind);
    const own = `${lines} ${view}`;
    const known = kept.get(own);
    if (known !== undefined) return known;
    const shape = `${own} ${ofKind}`;
    const pages = (await shelf?.kept(shape)) ?? (await laidOut(sampleOf(input, lines), view));
    await shelf?.keep(shape, pages);
    const made = pages.map(press.stencilOf);
    kept.set(own, made);
    return made;
  };
  /** Null where something has no room on one of its pages. */
  const filledFor = async (
    input: HandoutInput,
    view: HandoutView,
    lines: number,
  ): Promise<readonly Filled[] | null> => {
    const values = kindOf(input).values(view);
    const filled: Filled[] = [];
    for (const stencil of await stencilsFor(input, view, lines)) {
      const page = await press.fill(stencil, values);
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
