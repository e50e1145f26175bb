/** How much of a list goes on a page, found by trying: the press is the only one who knows. */
import { pointsPerUnit } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import { sideHeight } from './parts/look.ts';

export type Filled = { readonly page: Page; readonly taken: number };

/** Where each thing stands: below the one before it, or in columns that are made equally long. */
type Order = 'below' | 'columns';

type Tried = Filled & { readonly fits: 'yes' | 'no'; readonly clear: number };

/**
 * The page with the most things that still fit. All of them is tried first, since that is the usual case; a page that
 * is too full tells how many of its things stand clear, and from there the end is looked for in steps that grow. The
 * least is given even if it does not fit, so that whoever prints it can say so.
 */
export async function mostThatFit(
  all: number,
  least: number,
  order: Order,
  draw: (count: number) => Promise<Page>,
): Promise<Filled> {
  const attempt = async (taken: number): Promise<Tried> => judged(await draw(taken), taken);
  let tried = await attempt(all);
  if (tried.fits === 'yes' || all <= least) return tried;
  const heights = entryBoxes(tried.page).map(({ height_pt }) => height_pt);
  let best: Filled | null = null;
  let [low, high, step] = [least - 1, all, 1];
  let next = tried.clear;
  while (high - low > 1) {
    const middle = (low + high) / 2;
    tried = await attempt(Math.min(high - 1, Math.max(low + 1, next)));
    if (tried.fits === 'yes') {
      best = tried;
      low = tried.taken;
      // Where the next one is taller than the room that is left, it need not be tried.
      if (order === 'below' && roomBelow_pt(tried.page) < (heights[low] ?? 0)) break;
      next = Math.min(low + step, Math.ceil(middle));
    } else {
      high = tried.taken;
      next = Math.max(high - step, Math.floor(middle));
    }
    step *= 2;
  }
  return best ?? (tried.taken === least ? tried : attempt(least));
}

function judged(page: Page, taken: number): Tried {
  const cut = overflows(page);
  if (cut.length === 0) return { page, taken, fits: 'yes', clear: taken };
  const entries = page.nodes.filter(({ entry }) => entry).length;
  if (entries !== taken) throw new Error(`${taken} things to place, and ${entries} marked with data-entry`);
  const unclear = new Set(cut.map(({ node }) => entryAround(page, node)));
  unclear.delete(null);
  return { page, taken, fits: 'no', clear: taken - unclear.size };
}

function entryBoxes({ nodes }: Page) {
  return nodes.flatMap(({ entry, box }) => (entry ? [box] : []));
}

/** From the foot of the last thing to the foot of the side. */
function roomBelow_pt(page: Page): number {
  const foot_pt = (page.height_pt + sideHeight * pointsPerUnit) / 2;
  return foot_pt - Math.max(0, ...entryBoxes(page).map(({ y_pt, height_pt }) => y_pt + height_pt));
}

function entryAround(page: Page, node: number): number | null {
  let at: number | null = node;
  while (at !== null && !page.nodes[at]?.entry) at = page.nodes[at]?.parent ?? null;
  return at;
}
