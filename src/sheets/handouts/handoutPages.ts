/** Worksheets of many people, and their answers: each kind is laid out once, and filled for everybody of the same kind. */
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled } from '../../paper/stencil.ts';
import type { HandoutInput, HandoutView } from './handout.ts';
import { handoutKinds } from './handoutKinds.ts';
import { sampleOf } from './handoutTasks.ts';
import { handoutWorksheet } from './handoutWorksheet.ts';
import { type LayoutShelf, sharedLayouts } from './sharedLayouts.ts';

/** Gives the pages of one view of somebody's worksheet. */
export type HandoutDesk = (input: HandoutInput, view: HandoutView) => Promise<readonly Filled[]>;

/** A desk that remembers the sheets it has laid out. */
export function handoutDesk(
  press: Pick<Press, 'layOutAnew' | 'stencilOf' | 'fill' | 'asLaidOut'>,
  shelf: LayoutShelf | null = null,
): HandoutDesk {
  const views = { blank: sharedLayouts(press, shelf), key: sharedLayouts(press, shelf) };
  const kindOf = handoutKinds();
  const laidOut = async (input: HandoutInput, view: HandoutView): Promise<readonly Page[]> => {
    const pages: Page[] = [];
    for await (const page of handoutWorksheet(input, view, press.layOutAnew)) pages.push(page);
    return pages;
  };
  return (input, view) => {
    const { shapes, values } = kindOf(input);
    return views[view]({
      shape: shapes[view],
      sample: (lines) => laidOut(sampleOf(input, lines), view),
      values: values(view),
      own: () => laidOut(input, view),
    });
  };
}
