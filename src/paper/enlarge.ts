/** A laid-out page at another size: nothing is laid out anew, so every line breaks where it broke before. */
import { mm, type PaperSize, pointsPerUnit, thousandth } from './measures.ts';
import type { Box, Clip, Item, Matrix, Page, PageNode, Stroke } from './page.ts';
import { combine, place, placePath } from './path.ts';

/** So many times as large, then moved. */
export type Change = { readonly times: number; readonly right_pt: number; readonly down_pt: number };

/** The page as large as fits on a paper, in the middle of it. */
export function onPaper(page: Page, paper: PaperSize): Page {
  const [width_pt, height_pt] = [paper.width_mm, paper.height_mm].map((side) =>
    thousandth(mm(side) * pointsPerUnit),
  ) as [number, number];
  const times = Math.min(width_pt / page.width_pt, height_pt / page.height_pt);
  const right_pt = (width_pt - page.width_pt * times) / 2;
  const down_pt = (height_pt - page.height_pt * times) / 2;
  return { ...page, width_pt, height_pt, ...changedContent(page, { times, right_pt, down_pt }) };
}

/** What is on a page, enlarged and moved. */
export function changedContent(
  { items, nodes }: Pick<Page, 'items' | 'nodes'>,
  change: Change,
): Pick<Page, 'items' | 'nodes'> {
  const cut = clips(change);
  return {
    items: items.map((item) => changedItem(item, change, cut)),
    nodes: nodes.map((node): PageNode => ({ ...node, box: changedBox(node.box, change) })),
  };
}

function changedBox(box: Box, change: Change): Box {
  const { times } = change;
  const [x_pt, y_pt] = place(matrixOf(change), box.x_pt, box.y_pt);
  return {
    x_pt: thousandth(x_pt),
    y_pt: thousandth(y_pt),
    width_pt: thousandth(box.width_pt * times),
    height_pt: thousandth(box.height_pt * times),
  };
}

function matrixOf({ times, right_pt, down_pt }: Change): Matrix {
  return [times, 0, 0, times, right_pt, down_pt];
}

type Cut = (clip: Clip | null) => Clip | null;

/** Equal clips stay one object, so that writers still cut once for a row of items. */
function clips(change: Change): Cut {
  const made = new Map<Clip, Clip>();
  const cut: Cut = (clip) => {
    if (clip === null) return null;
    const known = made.get(clip);
    if (known) return known;
    const own = { path: placePath(clip.path, matrixOf(change)), rule: clip.rule, within: cut(clip.within) };
    made.set(clip, own);
    return own;
  };
  return cut;
}

function changedItem(item: Item, change: Change, cut: Cut): Item {
  const matrix = matrixOf(change);
  const clip = cut(item.clip);
  if (item.kind === 'shape') {
    const stroke = item.stroke && changedStroke(item.stroke, change.times);
    return { ...item, clip, stroke, path: placePath(item.path, matrix) };
  }
  // Words that are turned keep their own measures: the turn itself grows.
  if (item.matrix) return { ...item, clip, matrix: combine(matrix, item.matrix) };
  const [x_pt, baseline_pt] = place(matrix, item.x_pt, item.baseline_pt);
  return {
    ...item,
    clip,
    x_pt: thousandth(x_pt),
    baseline_pt: thousandth(baseline_pt),
    width_pt: thousandth(item.width_pt * change.times),
    size_pt: thousandth(item.size_pt * change.times),
  };
}

function changedStroke(stroke: Stroke, times: number): Stroke {
  return {
    ...stroke,
    width_pt: thousandth(stroke.width_pt * times),
    dashes_pt: stroke.dashes_pt.map((dash) => thousandth(dash * times)),
    dashStart_pt: thousandth(stroke.dashStart_pt * times),
  };
}
