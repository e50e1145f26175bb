/** Small marks inside a drawing: each as near to its place as can be, none on another, off the lines where there is room. */

export type Spot = readonly [x: number, y: number];

/** A line that marks keep clear of while they can: of walls and pipes sooner than of water lines. */
export type Line = readonly [from: Spot, to: Spot, kind: 'hard' | 'soft'];

export type Rect = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

export type MarkWish = {
  readonly key: string;
  /** Where its middle wants to be. */
  readonly at: Spot;
  /** What it tells of, where that is a point; a mark that stands away from it points at it. */
  readonly of: Spot | null;
  readonly width: number;
  readonly height: number;
  /** How far it may go: anywhere near, only along its own level line, or only inside what it names. */
  readonly goes: 'around' | 'along' | Rect;
};

export type PlacedMark = Pick<MarkWish, 'key' | 'of' | 'width' | 'height'> & { readonly at: Spot };

type Box = { readonly width: number; readonly height: number };

/** Half the air between two marks. */
const air = 3;
const step = 20;
const reach = 14;
/** So far a mark still seems to stand at its place. */
const nearby = 110;

/** Offsets on a grid, the nearest first. */
const around: readonly Spot[] = gridOf(reach, reach);
const along: readonly Spot[] = gridOf(reach, 0);

function gridOf(across: number, down: number): readonly Spot[] {
  const range = (most: number): readonly number[] => Array.from({ length: 2 * most + 1 }, (_, i) => i - most);
  const spots = range(across).flatMap((x) => range(down).map((y): Spot => [x * step, y * step]));
  return spots.sort(([a, b], [c, d]) => Math.hypot(a, b) - Math.hypot(c, d));
}

/** Marks in the order of their importance; one that finds no free place at all is left out. */
export function placeMarks(
  wishes: readonly MarkWish[],
  box: Box,
  lines: readonly Line[],
): readonly PlacedMark[] {
  const placed: PlacedMark[] = [];
  for (const wish of wishes) {
    const found = placeFor(wish, placed, box, lines);
    if (found === null) continue;
    placed.push({ key: wish.key, of: wish.of, width: wish.width, height: wish.height, at: found });
  }
  return placed;
}

function placeFor(
  wish: MarkWish,
  placed: readonly PlacedMark[],
  box: Box,
  lines: readonly Line[],
): Spot | null {
  const [x, y] = wish.at;
  const taken = placed.map((one) => rectOf(one, one.at));
  const places = (wish.goes === 'along' ? along : around)
    .map(([right, down]) => inside([x + right, y + down], wish, box))
    .filter((at) => mayGo(at, wish))
    .filter((at) => taken.every((one) => !overlaps(one, rectOf(wish, at))));
  const clearOf = (at: Spot, some: readonly Line[]) => some.every((line) => !crosses(line, rectOf(wish, at)));
  const hard = lines.filter(([, , kind]) => kind === 'hard');
  const near = places.filter(([a, b]) => Math.hypot(a - x, b - y) < nearby);
  const clear =
    near.find((at) => clearOf(at, lines)) ??
    near.find((at) => clearOf(at, hard)) ??
    places.find((at) => clearOf(at, hard));
  // A name may rather go than hide a pipe; a number is needed.
  return clear ?? (typeof wish.goes === 'string' ? places[0] : undefined) ?? null;
}

function mayGo([x, y]: Spot, { at, goes, width, height }: MarkWish): boolean {
  if (goes === 'around') return true;
  if (goes === 'along') return y === at[1];
  const [a, b] = [width / 2, height / 2];
  return goes.left <= x - a && x + a <= goes.right && goes.top <= y - b && y + b <= goes.bottom;
}

function rectOf({ width, height }: { width: number; height: number }, [x, y]: Spot): Rect {
  const [a, b] = [width / 2 + air, height / 2 + air];
  return { left: x - a, right: x + a, top: y - b, bottom: y + b };
}

/** Wholly in the box, however far its wish lies out. */
function inside([x, y]: Spot, { width, height }: MarkWish, box: Box): Spot {
  return [clamped(x, width / 2, box.width - width / 2), clamped(y, height / 2, box.height - height / 2)];
}

function clamped(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}

function overlaps(a: Rect, b: Rect): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether a straight line passes through a rectangle: its part inside both bands is not empty. */
function crosses([[x1, y1], [x2, y2]]: Line, rect: Rect): boolean {
  const spans = [span(x1, x2, rect.left, rect.right), span(y1, y2, rect.top, rect.bottom), [0, 1] as const];
  return Math.max(...spans.map(([from]) => from)) < Math.min(...spans.map(([, to]) => to));
}

/** The part of the way from a to b, as shares of it, that lies between low and high. */
function span(a: number, b: number, low: number, high: number): readonly [number, number] {
  if (a === b) return low < a && a < high ? [0, 1] : [1, 0];
  const [from, to] = [(low - a) / (b - a), (high - a) / (b - a)];
  return [Math.min(from, to), Math.max(from, to)];
}
