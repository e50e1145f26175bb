import { pointsPerUnit } from './measures.ts';
import type { Clip, Matrix, Shape, Weight } from './page.ts';
import { combine, identity, placePath } from './path.ts';
import { straightEdge } from './straightEdges.ts';
import { type ClipMaker, type Cutting, clipMaker, clipsIn } from './svgClips.ts';
import { checkKnown } from './svgKnown.ts';
import { type Paint, paintNames, readFill, readStroke } from './svgPaint.ts';
import { number, pathOf } from './svgShapes.ts';
import { readTransform } from './transform.ts';
import { type Mark, readXml } from './xml.ts';

/** A part of a word as the layout engine placed it, in points. */
export type Piece = {
  readonly kind: 'piece';
  readonly node: number;
  readonly text: string;
  readonly x_pt: number;
  readonly baseline_pt: number;
  readonly width_pt: number;
  readonly size_pt: number;
  readonly weight: Weight;
  readonly ink: string;
  readonly matrix: Matrix | null;
  readonly clip: Clip | null;
};

/** Which node a mark belongs to: by the engine's id of a box, and by the mark that every word carries. */
export type NodeFinder = {
  readonly nodeOfPath: (path: string) => number;
  readonly nodeOfFamily: (family: string) => number;
};

/** Where a mark is read: its coordinates, what cuts it, and the paint it is handed. */
type Around = Cutting & { readonly paint: Paint };

type Hand = {
  node: number;
  readonly found: (Piece | Shape)[];
  readonly finder: NodeFinder;
  readonly cut: ClipMaker;
};

/** Reads what the layout engine drew. Throws on anything it does not know how to print. */
export function readSvg(source: string, finder: NodeFinder): readonly (Piece | Shape)[] {
  const root = readXml(source);
  const hand: Hand = { node: 0, found: [], finder, cut: clipMaker() };
  const matrix: Matrix = [pointsPerUnit, 0, 0, pointsPerUnit, 0, 0];
  readAll(root.children, { matrix, clip: null, paint: new Map(), clips: clipsIn(root) }, hand);
  return hand.found;
}

function readAll(marks: readonly Mark[], around: Around, hand: Hand): void {
  for (const mark of marks) readMark(mark, around, hand);
}

function readMark(mark: Mark, around: Around, hand: Hand): void {
  checkKnown(mark);
  if (mark.name === 'clipPath') return;
  if (mark.name === 'defs') checkDefinitions(mark);
  else if (mark.name === 'mask') takeNode(mark, hand);
  else if (mark.name === 'g') readAll(mark.children, inside(mark, around, hand), hand);
  else if (mark.name === 'text') hand.found.push(readPiece(mark, inside(mark, around, hand), hand));
  else if (mark.name === 'image') readDrawing(mark, inside(mark, around, hand), hand);
  else readShape(mark, inside(mark, around, hand), hand);
}

/** Patterns, gradients and filters would come here. */
function checkDefinitions(mark: Mark): void {
  for (const child of mark.children) {
    if (child.name !== 'clipPath') throw new Error(`The press cannot print the mark <${child.name}>.`);
  }
}

/** The engine writes a mask before the marks of each box; its id says which box that is. */
function takeNode(mark: Mark, hand: Hand): void {
  const id = /^satori_om-id-?(.*)$/.exec(mark.attributes.get('id') ?? '')?.[1];
  if (id === undefined) throw new Error(`The press cannot print the mask "${mark.attributes.get('id')}".`);
  hand.node = hand.finder.nodeOfPath(id);
}

function inside(mark: Mark, around: Around, hand: Hand): Around {
  const transform = mark.attributes.get('transform');
  const matrix = transform ? combine(around.matrix, readTransform(transform)) : around.matrix;
  // The clip of a mark is turned with the mark itself.
  const clip = hand.cut(mark.attributes.get('clip-path'), { ...around, matrix });
  return { ...around, matrix, clip, paint: paintOf(mark, around.paint) };
}

function paintOf(mark: Mark, handed: Paint): Paint {
  const own = paintNames.filter((name) => mark.attributes.has(name));
  if (own.length === 0) return handed;
  return new Map([...handed, ...own.map((name) => [name, mark.attributes.get(name) ?? ''] as const)]);
}

const weightOf: Readonly<Record<string, Weight>> = {
  normal: 'text',
  '400': 'text',
  '800': 'heavy',
  bold: 'heavy',
};

function readPiece(mark: Mark, around: Around, hand: Hand): Piece {
  const given = mark.attributes.get('font-weight') ?? '400';
  const weight = weightOf[given];
  if (!weight) throw new Error(`The press has no font-weight "${given}".`);
  const length = (name: string) => number(mark, name) * pointsPerUnit;
  hand.node = hand.finder.nodeOfFamily(mark.attributes.get('font-family') ?? '');
  return {
    kind: 'piece',
    node: hand.node,
    text: mark.text,
    x_pt: length('x'),
    baseline_pt: length('y'),
    width_pt: length('width'),
    size_pt: length('font-size'),
    weight,
    ink: around.paint.get('fill') ?? 'black',
    matrix: turnOf(around.matrix),
    clip: around.clip,
  };
}

/** What the matrix does beyond turning units into points, as a matrix of points; null if nothing. */
function turnOf(matrix: Matrix): Matrix | null {
  const turn = combine(matrix, [1 / pointsPerUnit, 0, 0, 1 / pointsPerUnit, 0, 0]);
  return turn.every((value, at) => Math.abs(value - (identity[at] ?? 0)) < 1e-6) ? null : turn;
}

/** An inline svg comes as an image that holds its source. It is read like the sheet itself and stays a drawing. */
function readDrawing(mark: Mark, around: Around, hand: Hand): void {
  const source = mark.attributes.get('href') ?? '';
  const start = 'data:image/svg+xml;utf8,';
  if (!source.startsWith(start))
    throw new Error(`The press prints no pictures but drawings: "${source.slice(0, 40)}".`);
  const drawing = readXml(decodeURIComponent(source.slice(start.length)));
  const paint = new Map<string, string>();
  for (const [name, value] of drawing.attributes) {
    if (paintNames.includes(name)) paint.set(name, value);
    else if (!['xmlns', 'width', 'height', 'viewBox', 'preserveAspectRatio'].includes(name)) {
      throw new Error(`The press cannot print ${name}="${value}" on <svg>.`);
    }
  }
  const matrix = combine(around.matrix, viewport(mark, drawing));
  readAll(drawing.children, { matrix, clip: around.clip, paint, clips: clipsIn(drawing) }, hand);
}

/** How a drawing's own coordinates lie in its box (SVG 1.1, 7.8): filling it, or as large as fits, in the middle. */
function viewport(mark: Mark, drawing: Mark): Matrix {
  const [x, y] = [number(mark, 'x'), number(mark, 'y')];
  const [width, height] = [number(mark, 'width'), number(mark, 'height')];
  const [left = 0, top = 0, wide, high] = viewBoxOf(drawing, width, height);
  if (!wide || !high) throw new Error('A drawing needs a viewBox, or a width and a height.');
  const [sx, sy] = [width / wide, height / high];
  const fit = mark.attributes.get('preserveAspectRatio') ?? 'xMidYMid meet';
  if (fit === 'none') return [sx, 0, 0, sy, x - left * sx, y - top * sy];
  if (!/^xMidYMid( meet)?$/.test(fit)) {
    throw new Error(`The press cannot print preserveAspectRatio="${fit}".`);
  }
  const s = Math.min(sx, sy);
  const middle = (from: number, room: number, size: number) => from + (room - size * s) / 2;
  return [s, 0, 0, s, middle(x, width, wide) - left * s, middle(y, height, high) - top * s];
}

function viewBoxOf(drawing: Mark, width: number, height: number): readonly number[] {
  const given = drawing.attributes.get('viewBox');
  if (given === undefined) return [0, 0, number(drawing, 'width', width), number(drawing, 'height', height)];
  return given
    .trim()
    .split(/[\s,]+/)
    .map(Number);
}

function readShape(mark: Mark, around: Around, hand: Hand): void {
  const path = placePath(pathOf(mark), around.matrix);
  const fill = mark.name === 'line' ? null : readFill(around.paint);
  const stroke = readStroke(around.paint, around.matrix);
  if (path.length === 0 || (!fill && !stroke)) return;
  hand.found.push(straightEdge({ kind: 'shape', node: hand.node, path, fill, stroke, clip: around.clip }));
}
