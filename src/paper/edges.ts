import type { Item, Matrix, Path, Words } from './page.ts';
import { place } from './path.ts';

/** The smallest upright rectangle around something, in points. */
export type Edges = { left: number; top: number; right: number; bottom: number };

/** From the baseline up to the top of capitals, and down to the foot of a "g", in parts of the type size. */
const rise_frac = 0.72;
const fall_frac = 0.22;

/** Around words as they stand before any turn, by the usual reach of letters. */
export function wordsEdges({ x_pt, baseline_pt, width_pt, size_pt }: Words): Edges {
  const [top, bottom] = [baseline_pt - size_pt * rise_frac, baseline_pt + size_pt * fall_frac];
  return { left: x_pt, top, right: x_pt + width_pt, bottom };
}

export function turned({ left, top, right, bottom }: Edges, matrix: Matrix): Edges {
  const corners = [place(matrix, left, top), place(matrix, right, top), place(matrix, left, bottom)];
  return around([...corners, place(matrix, right, bottom)]);
}

/** Around all points of a path: curves may stay a little inside. */
export function pathEdges(path: Path): Edges {
  const points: (readonly [number, number])[] = [];
  for (const [, ...numbers] of path) {
    for (let at = 0; at < numbers.length; at += 2) points.push([numbers[at] ?? 0, numbers[at + 1] ?? 0]);
  }
  return around(points);
}

function around(points: readonly (readonly [number, number])[]): Edges {
  const [across, down] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...across),
    top: Math.min(...down),
    right: Math.max(...across),
    bottom: Math.max(...down),
  };
}

/** Whether any of an item may be seen on a page of this size, within all that cuts it. */
export function maySee(item: Item, page: { readonly width_pt: number; readonly height_pt: number }): boolean {
  const seen: Edges = { left: 0, top: 0, right: page.width_pt, bottom: page.height_pt };
  for (let clip = item.clip; clip; clip = clip.within) narrow(seen, pathEdges(clip.path));
  const own = item.kind === 'shape' ? pathEdges(item.path) : wordsEdges(item);
  const reach = item.kind === 'shape' ? (item.stroke?.width_pt ?? 0) * 2 : item.size_pt / 2;
  const edges = item.kind === 'words' && item.matrix ? turned(own, item.matrix) : own;
  narrow(seen, {
    left: edges.left - reach,
    top: edges.top - reach,
    right: edges.right + reach,
    bottom: edges.bottom + reach,
  });
  return seen.left <= seen.right && seen.top <= seen.bottom;
}

function narrow(seen: Edges, by: Edges): void {
  seen.left = Math.max(seen.left, by.left);
  seen.top = Math.max(seen.top, by.top);
  seen.right = Math.min(seen.right, by.right);
  seen.bottom = Math.min(seen.bottom, by.bottom);
}
