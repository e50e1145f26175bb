import { thousandth } from './measures.ts';
import type { Clip, Path, Shape, Stroke } from './page.ts';
import { identity, placePath, rectanglePath } from './path.ts';

/** Left, top, right and bottom of an upright rectangle, in points. */
type Area = readonly [left: number, top: number, right: number, bottom: number];

/** What rounding to thousandths may do. */
const slack_pt = 0.002;

/**
 * The same edge of a box, or all four of them, without a cut. The layout engine draws it twice as thick and cuts the
 * outer half away, and viewers that cut at whole dots lose thin lines by it. Anything else stays as it is.
 */
export function straightEdge(shape: Shape): Shape {
  const { stroke, fill, clip } = shape;
  if (clip === null || fill !== null || stroke === null) return shape;
  if (stroke.dashes_pt.length > 0 || stroke.cap !== 'butt' || stroke.join !== 'miter') return shape;
  return allEdges(shape, stroke, clip) ?? oneEdge(shape, stroke, clip) ?? shape;
}

/** A box that is cut along its own edges. */
function allEdges(shape: Shape, stroke: Stroke, clip: Clip): Shape | null {
  const last = shape.path.at(-1);
  const closed: Path = last?.[0] === 'Z' ? shape.path : [...shape.path, ['Z']];
  const [box, cut] = [boxOf(closed), clip.within === null ? boxOf(clip.path) : null];
  if (box === null || cut === null || box.some((edge, at) => edge !== cut[at])) return null;
  const inset = stroke.width_pt / 4;
  const [left, top, right, bottom] = box;
  if (!(right - left > stroke.width_pt && bottom - top > stroke.width_pt)) return null;
  const inner = {
    x: left + inset,
    y: top + inset,
    width: right - left - 2 * inset,
    height: bottom - top - 2 * inset,
  };
  const path = placePath(rectanglePath(inner), identity);
  return { ...shape, path, stroke: { ...stroke, width_pt: thousandth(stroke.width_pt / 2) }, clip: null };
}

function oneEdge(shape: Shape, stroke: Stroke, clip: Clip): Shape | null {
  const line = lineOf(shape.path);
  if (line === null) return null;
  const [x1, y1, x2, y2] = line;
  const half = stroke.width_pt / 2;
  const lies = y1 === y2 ? 'flat' : 'upright';
  const whole: Area =
    lies === 'flat'
      ? [Math.min(x1, x2), y1 - half, Math.max(x1, x2), y1 + half]
      : [x1 - half, Math.min(y1, y2), x1 + half, Math.max(y1, y2)];
  const seen = seenOf(whole, clip);
  if (seen === null) return null;
  const [left, top, right, bottom] = seen;
  const [middleX, middleY] = [thousandth((left + right) / 2), thousandth((top + bottom) / 2)];
  const drawn: Path =
    lies === 'flat'
      ? [
          ['M', left, middleY],
          ['L', right, middleY],
        ]
      : [
          ['M', middleX, top],
          ['L', middleX, bottom],
        ];
  const width_pt = thousandth(lies === 'flat' ? bottom - top : right - left);
  return { ...shape, path: drawn, stroke: { ...stroke, width_pt }, clip: null };
}

function lineOf(path: Path): readonly [number, number, number, number] | null {
  const [from, to] = path;
  if (path.length !== 2 || from?.[0] !== 'M' || to?.[0] !== 'L') return null;
  const line = [from[1], from[2], to[1], to[2]] as const;
  return (line[0] === line[2]) === (line[1] === line[3]) ? null : line;
}

/** What the cuts leave of an area, where that is one area again. */
function seenOf(area: Area, clip: Clip | null): Area | null {
  let seen: Area | null = area;
  for (let cut = clip; cut !== null && seen !== null; cut = cut.within) seen = withinClip(seen, cut);
  return seen;
}

function withinClip(area: Area, { path, rule }: Clip): Area | null {
  const ends = path.flatMap((segment, at) => (segment[0] === 'Z' ? [at + 1] : []));
  const boxes = ends.map((end, at) => boxOf(path.slice(ends[at - 1] ?? 0, end)));
  const [outer, hole] = boxes;
  if (!outer || boxes.length > 2 || ends.at(-1) !== path.length) return null;
  const seen = common(area, outer);
  if (boxes.length === 1 || seen === null) return seen;
  // A frame: of the line nothing may lie in its middle.
  return hole && rule === 'evenodd' && isClear(seen, hole) ? seen : null;
}

/** The rectangle that a closed path goes round. */
function boxOf(path: Path): Area | null {
  const corners = path.flatMap((segment) => (segment[0] === 'M' || segment[0] === 'L' ? [segment] : []));
  if (corners.length < 4 || corners.length !== path.length - 1) return null;
  const [xs, ys] = [corners.map(([, x]) => x), corners.map(([, , y]) => y)];
  const box: Area = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  const isUpright = corners.every(([, x, y], at) => {
    const next = corners[(at + 1) % corners.length];
    const onEdge = (x === box[0] || x === box[2]) && (y === box[1] || y === box[3]);
    return onEdge && next !== undefined && (x === next[1] || y === next[2]);
  });
  return isUpright ? box : null;
}

function common(one: Area, other: Area): Area | null {
  const area: Area = [
    Math.max(one[0], other[0]),
    Math.max(one[1], other[1]),
    Math.min(one[2], other[2]),
    Math.min(one[3], other[3]),
  ];
  return area[2] - area[0] > slack_pt && area[3] - area[1] > slack_pt ? area : null;
}

function isClear(area: Area, hole: Area): boolean {
  return common(area, hole) === null;
}
