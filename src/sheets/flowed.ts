/** Things of any height that run over as many pages as it takes. */
import type { Sheet } from '../paper/layOut.ts';
import type { Page } from '../paper/page.ts';
import { mostThatFit } from './mostThatFit.ts';
import type { LayOut } from './sheetKind.ts';

/** Whether anything is left for another page. */
type Rest = 'none' | 'more';

/**
 * Pages in turn, each with as many things as the press finds room for, one at least; no page without things.
 * @param most more than a page can hold, so that a long list is not laid out whole for each of its pages
 */
export async function* flowed<T>(
  all: readonly T[],
  draw: (some: readonly T[], rest: Rest, at: 'first' | 'later') => Sheet,
  layOut: LayOut,
  most = all.length,
): AsyncGenerator<Page, void, void> {
  let left = all;
  while (left.length > 0) {
    const now = left;
    const at = now === all ? 'first' : 'later';
    const { page, taken } = await mostThatFit(Math.min(now.length, most), 1, 'below', async (count) =>
      layOut(draw(now.slice(0, count), count === now.length ? 'none' : 'more', at)),
    );
    yield page;
    left = left.slice(taken);
  }
}
