/** A large page on small paper: the grid of its tiles, and a part of it set into a frame. */
import { maySee } from './edges.ts';
import { type Change, changedContent } from './enlarge.ts';
import type { Box, Clip, Item, Page, PageNode } from './page.ts';
import { rectanglePath } from './path.ts';

/** One tile: its place in the grid, counted from 1, and what of the large page it shows. */
export type Tile = { readonly row: number; readonly column: number; readonly shows: Box };

export type TileGrid = {
  readonly rows: number;
  readonly columns: number;
  /** Row by row. */
  readonly tiles: readonly Tile[];
};

type Size = { readonly width_pt: number; readonly height_pt: number };

/** The fewest tiles that show a part of a page, neighbours sharing an overlap, the part in the middle of them all. */
export function tileGrid(part: Box, window: Size, overlap_pt: number): TileGrid {
  const across = spread(part.x_pt, part.width_pt, window.width_pt, overlap_pt);
  const down = spread(part.y_pt, part.height_pt, window.height_pt, overlap_pt);
  const tiles = down.flatMap((y_pt, row) =>
    across.map((x_pt, column) => ({
      row: row + 1,
      column: column + 1,
      shows: { x_pt, y_pt, width_pt: window.width_pt, height_pt: window.height_pt },
    })),
  );
  return { rows: down.length, columns: across.length, tiles };
}

/** Where the windows begin along one side. */
function spread(from: number, length: number, window: number, overlap: number): readonly number[] {
  if (!(overlap < window)) throw new Error('An overlap is smaller than its tile.');
  const step = window - overlap;
  // A hair over a whole number of tiles is still that number.
  const count = Math.max(1, Math.ceil((length - overlap) / step - 1e-6));
  const first = from - (count * step + overlap - length) / 2;
  return Array.from({ length: count }, (_, i) => first + i * step);
}

/** A part of a page, and whether a reader hears it: what is told elsewhere is only looked at. */
export type Inlay = { readonly page: Page; readonly shows: Box; readonly heard: 'yes' | 'no' };

/**
 * The frame with a part of another page in the box of one of its slots, as large as fits, cut at the box.
 * A frame that has no such slot stays as it is.
 */
export function inlaid(frame: Page, slot: string, { page, shows, heard }: Inlay): Page {
  const host = frame.nodes.findIndex((node) => node.slot === slot);
  const room = frame.nodes[host]?.box;
  if (room === undefined) return frame;
  const change = changeInto(shows, room);
  const { items, nodes } = changedContent(page, change);
  const seen = items.map((item) => ({ ...item, clip: cutAt(item.clip, room) }));
  const visible = seen.filter((item) => maySee(item, frame));
  const base = frame.nodes.length;
  const nodeOf = (node: number): number => (heard === 'yes' ? node + base : host);
  // Painted where the slot stands: over what the frame has drawn so far, under what comes after.
  const later = frame.items.findIndex((item) => item.node > host);
  const turn = later < 0 ? frame.items.length : later;
  const own = visible.map((item): Item => ({ ...item, node: nodeOf(item.node) }));
  const path = frame.nodes[host]?.path ?? '';
  const told = heard === 'yes' ? nodes.map((node) => under(node, host, base, path)) : [];
  return {
    ...frame,
    // Whoever sets the page needs the type of both; what is set in may tell more than its frame.
    packs: [...new Set([...page.packs, ...frame.packs])],
    items: [...frame.items.slice(0, turn), ...own, ...frame.items.slice(turn)],
    nodes: [...frame.nodes, ...told],
  };
}

function changeInto(shows: Box, room: Box): Change {
  const times = Math.min(room.width_pt / shows.width_pt, room.height_pt / shows.height_pt);
  return { times, right_pt: room.x_pt - shows.x_pt * times, down_pt: room.y_pt - shows.y_pt * times };
}

const edges = new WeakMap<Box, Map<Clip | null, Clip>>();

/** The box as the outermost clip; equal clips stay one object. */
function cutAt(clip: Clip | null, room: Box): Clip {
  const known = edges.get(room) ?? new Map<Clip | null, Clip>();
  edges.set(room, known);
  const found = known.get(clip);
  if (found) return found;
  const { x_pt: x, y_pt: y, width_pt: width, height_pt: height } = room;
  const own: Clip =
    clip === null
      ? { path: rectanglePath({ x, y, width, height }), rule: 'nonzero', within: null }
      : { ...clip, within: cutAt(clip.within, room) };
  known.set(clip, own);
  return own;
}

/** A node of the inlay as one of the frame, inside the slot. */
function under(node: PageNode, host: number, base: number, path: string): PageNode {
  return {
    ...node,
    path: `${path}-0${node.path === '' ? '' : `-${node.path}`}`,
    parent: node.parent === null ? host : node.parent + base,
    paragraph: node.paragraph + base,
  };
}
