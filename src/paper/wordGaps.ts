/** Where the words of two boxes that are told as one part need a space between them. */
import type { Page, Words } from './page.ts';
import type { Tag, TaggedPage } from './tags.ts';

/** Boxes nearer to each other than this, in parts of the type size, were put together on purpose: "(wet". */
const together_frac = 0.12;

type Next = { readonly words: Words | null; readonly owner: Tag | null };

/** The page with a space behind words wherever a reader would else run them into the next box of their part. */
export function withGaps(page: Page, { marks, owners }: TaggedPage): Page {
  let next: Next = { words: null, owner: null };
  const items = [...page.items];
  for (let at = items.length - 1; at >= 0; at -= 1) {
    const item = items[at];
    if (item?.kind !== 'words') continue;
    const owner = owners[marks[at] ?? -1] ?? null;
    const runsOn =
      owner !== null && next.words !== null && owner === next.owner && isOtherBox(page, item, next.words);
    if (runsOn && !/\s$/.test(item.text)) items[at] = { ...item, text: `${item.text} ` };
    next = { words: item, owner };
  }
  return { ...page, items };
}

function isOtherBox({ nodes }: Page, one: Words, next: Words): boolean {
  if (nodes[one.node]?.paragraph === nodes[next.node]?.paragraph) return false;
  if (one.baseline_pt !== next.baseline_pt || one.matrix || next.matrix) return true;
  const gap_pt = Math.max(next.x_pt - one.x_pt - one.width_pt, one.x_pt - next.x_pt - next.width_pt);
  return gap_pt > together_frac * one.size_pt;
}
