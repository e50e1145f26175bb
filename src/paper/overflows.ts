import { type Edges, pathEdges, turned, wordsEdges } from './edges.ts';
import type { Box, Page, PageNode, Words } from './page.ts';

/** A node whose words do not stay where they belong. */
export type Overflow = {
  readonly node: number;
  /** Off the page; cut by a clip; out of its own box or one around it; or not printed at all. */
  readonly why: 'off the page' | 'cut' | 'out of its box' | 'lost';
  /** The first words that do so, or all the node's words if they are lost. */
  readonly text: string;
};

/** How far letters may reach over the top or the foot of their box where lines are set tight. */
const tight_frac = 0.15;
/** What rounding may do. */
const slack_pt = 0.05;

/** The nodes whose words stick out of the page, a clip or a box, each once. A sheet with any is not to be printed. */
export function overflows(page: Page): readonly Overflow[] {
  const found = new Map<number, Overflow>();
  const sheet: Edges = { left: 0, top: 0, right: page.width_pt, bottom: page.height_pt };
  for (const item of page.items) {
    if (item.kind !== 'words' || found.has(item.node) || isInlaid(page, item)) continue;
    const why = wrongOf(item, page, sheet);
    if (why) found.set(item.node, { node: item.node, why, text: item.text.trim() });
  }
  for (const node of lostNodes(page)) {
    if (!found.has(node)) found.set(node, { node, why: 'lost', text: page.nodes[node]?.text.trim() ?? '' });
  }
  return [...found.values()].sort((a, b) => a.node - b.node);
}

/** Words that a part of another page brought into an empty slot; that part is cut on purpose. */
function isInlaid(page: Page, { node }: Words): boolean {
  const holder = page.nodes[node];
  return holder !== undefined && holder.slot !== null && holder.text === '';
}

function wrongOf(words: Words, page: Page, sheet: Edges): Overflow['why'] | null {
  const flat = wordsEdges(words);
  const seen = words.matrix ? turned(flat, words.matrix) : flat;
  if (!within(seen, sheet, slack_pt)) return 'off the page';
  for (let clip = words.clip; clip; clip = clip.within) {
    if (!within(seen, pathEdges(clip.path), slack_pt)) return 'cut';
  }
  const tight = words.size_pt * tight_frac;
  for (const box of boxesAround(page, words.node)) {
    const edges = boxEdges(box);
    const roomy = { ...edges, top: edges.top - tight, bottom: edges.bottom + tight };
    if (!within(flat, roomy, slack_pt)) return 'out of its box';
  }
  return null;
}

function within(inner: Edges, outer: Edges, slack: number): boolean {
  return (
    inner.left >= outer.left - slack &&
    inner.top >= outer.top - slack &&
    inner.right <= outer.right + slack &&
    inner.bottom <= outer.bottom + slack
  );
}

function boxEdges({ x_pt, y_pt, width_pt, height_pt }: Box): Edges {
  return { left: x_pt, top: y_pt, right: x_pt + width_pt, bottom: y_pt + height_pt };
}

/** The node's own box and those around it, up to one that was taken out of the flow. */
function boxesAround(page: Page, index: number): Box[] {
  const boxes: Box[] = [];
  let node: PageNode | undefined = page.nodes[index];
  while (node) {
    boxes.push(node.box);
    node = node.floats === 'placed' || node.parent === null ? undefined : page.nodes[node.parent];
  }
  return boxes;
}

/** The layout engine leaves out what lies wholly outside the page. Text that ends in an ellipsis was cut on purpose. */
function lostNodes(page: Page): number[] {
  const printed = new Map<number, string>();
  for (const item of page.items) {
    if (item.kind === 'words') printed.set(item.node, (printed.get(item.node) ?? '') + letters(item.text));
  }
  return page.nodes.flatMap((node, index) => {
    const [whole, seen] = [letters(node.text), printed.get(index) ?? ''];
    return seen.length < whole.length && !seen.endsWith('…') ? [index] : [];
  });
}

function letters(text: string): string {
  return text.replace(/\s+/g, '');
}
