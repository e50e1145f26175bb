/** A drawing at true scale cut into sheets that overlap. May scale and place; never makes a figure. */
import { path, type Shape } from './shape.ts';

/** In sheet units, from the left top corner of the whole drawing. */
export type Spot = readonly [x: number, y: number];
export type Line = {
  readonly spots: readonly Spot[];
  readonly end: 'open' | 'closed';
  readonly width: number;
};

/** What one sheet shows of the whole. */
export type Tile = { readonly name: string; readonly left: number; readonly top: number };

export type Tiling = {
  readonly tile: { readonly width: number; readonly height: number };
  readonly columns: number;
  readonly rows: number;
  /** From a sheet to the next one: less than a sheet by the overlap. */
  readonly step: { readonly x: number; readonly y: number };
  readonly tiles: readonly Tile[];
};

type Size = { readonly width: number; readonly height: number };

/** Sheets row by row from the left top: A1, B1, then A2. */
export function tilingOf(whole: Size, tile: Size, overlap: number): Tiling {
  const step = { x: tile.width - overlap, y: tile.height - overlap };
  const columns = Math.max(1, Math.ceil((whole.width - overlap) / step.x));
  const rows = Math.max(1, Math.ceil((whole.height - overlap) / step.y));
  const tiles = Array.from({ length: columns * rows }, (_, index) => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    return { name: `${letters(column)}${row + 1}`, left: column * step.x, top: row * step.y };
  });
  return { tile, columns, rows, step, tiles };
}

/** A to Z, then AA and so on. */
function letters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}

/** Crosses in the overlaps, at the same place of the whole on both sheets: laid on each other, all fits. */
export function joinMarks({ tile, columns, rows, step }: Tiling): readonly Line[] {
  const overlap = tile.width - step.x;
  const spots: Spot[] = [];
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row < rows; row++) {
      const [left, top] = [column * step.x, row * step.y];
      for (const share of markShares) {
        if (column > 0) spots.push([left + overlap / 2, top + tile.height * share]);
        if (row > 0) spots.push([left + tile.width * share, top + overlap / 2]);
      }
    }
  }
  return spots.flatMap(([x, y]) => [
    {
      spots: [
        [x - arm, y - arm],
        [x + arm, y + arm],
      ],
      end: 'open',
      width: 2,
    } as const,
    {
      spots: [
        [x - arm, y + arm],
        [x + arm, y - arm],
      ],
      end: 'open',
      width: 2,
    } as const,
  ]);
}

/** Two on each side of a sheet, away from its corners, where four sheets meet. */
const markShares = [0.2, 0.8];
const arm = 30;

/** What of these lines a sheet shows, from its own left top corner. */
export function linesOn(tile: Tile, { tile: size }: Tiling, lines: readonly Line[]): readonly Shape[] {
  return lines.flatMap(({ spots, end, width }) => {
    const pieces = piecesOf(end === 'closed' ? [...spots, ...spots.slice(0, 1)] : spots, tile, size);
    return pieces.length === 0
      ? []
      : [{ d: pieces.map((piece) => path(piece, 'open')).join(''), paint: { stroke: 'black', width } }];
  });
}

/** Stretches inside the sheet; neighbours that touch stay one line. */
function piecesOf(spots: readonly Spot[], tile: Tile, size: Size): readonly (readonly Spot[])[] {
  const pieces: Spot[][] = [];
  for (let index = 1; index < spots.length; index++) {
    const cut = cutTo(local(spots[index - 1], tile), local(spots[index], tile), size);
    if (cut === null) continue;
    const [from, until] = cut;
    const before = pieces.at(-1)?.at(-1);
    if (before !== undefined && before[0] === from[0] && before[1] === from[1]) pieces.at(-1)?.push(until);
    else pieces.push([from, until]);
  }
  return pieces;
}

function local([x, y]: Spot = [0, 0], { left, top }: Tile): Spot {
  return [x - left, y - top];
}

/** The part of a straight line inside a sheet; null where there is none. */
function cutTo(from: Spot, until: Spot, { width, height }: Size): readonly [Spot, Spot] | null {
  const [dx, dy] = [until[0] - from[0], until[1] - from[1]];
  let [start, end] = [0, 1];
  const edges = [
    [-dx, from[0]],
    [dx, width - from[0]],
    [-dy, from[1]],
    [dy, height - from[1]],
  ] as const;
  for (const [slope, room] of edges) {
    if (slope === 0 && room < 0) return null;
    if (slope < 0) start = Math.max(start, room / slope);
    if (slope > 0) end = Math.min(end, room / slope);
  }
  if (start >= end) return null;
  const at = (share: number): Spot => [from[0] + dx * share, from[1] + dy * share];
  return [start === 0 ? from : at(start), end === 1 ? until : at(end)];
}
