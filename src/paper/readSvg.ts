import { pointsPerUnit, thousandth } from './measures.ts';
import type { Clip, FillRule, Matrix, Path, Shape, Stroke, Weight } from './page.ts';
import { readInk } from './paint.ts';
import { combine, ellipsePath, identity, placePath, pointsPath, rectanglePath } from './path.ts';
import { readPathData } from './pathData.ts';
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

type Around = {
  /** From the units of the mark to points. */
  readonly matrix: Matrix;
  readonly clip: Clip | null;
  readonly paint: ReadonlyMap<string, string>;
  readonly clips: ReadonlyMap<string, Mark>;
};

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

const paintNames = [
  ...['fill', 'fill-opacity', 'fill-rule', 'stroke', 'stroke-width', 'stroke-opacity', 'stroke-dasharray'],
  ...['stroke-dashoffset', 'stroke-linecap', 'stroke-linejoin', 'stroke-miterlimit'],
];
const everywhere = [...paintNames, 'transform', 'clip-path', 'mask', 'id'];
const boxNames = ['x', 'y', 'width', 'height'];

/** The marks we can print, and the attributes of each. */
const known: Readonly<Record<string, ReadonlySet<string>>> = {
  g: new Set(everywhere),
  rect: new Set([...everywhere, ...boxNames, 'rx', 'ry']),
  path: new Set([...everywhere, ...boxNames, 'd']),
  line: new Set([...everywhere, 'x1', 'y1', 'x2', 'y2']),
  circle: new Set([...everywhere, 'cx', 'cy', 'r']),
  ellipse: new Set([...everywhere, 'cx', 'cy', 'rx', 'ry']),
  polygon: new Set([...everywhere, 'points']),
  polyline: new Set([...everywhere, 'points']),
  text: new Set([
    ...[
      'fill',
      'transform',
      'clip-path',
      ...boxNames,
      'font-weight',
      'font-style',
      'font-size',
      'font-family',
    ],
  ]),
  image: new Set(['transform', 'clip-path', 'mask', 'href', 'preserveAspectRatio', ...boxNames]),
  defs: new Set(),
  clipPath: new Set(['id', 'clip-path', 'transform']),
  mask: new Set(['id']),
};

function readAll(marks: readonly Mark[], around: Around, hand: Hand): void {
  for (const mark of marks) readMark(mark, around, hand);
}

function readMark(mark: Mark, around: Around, hand: Hand): void {
  checkKnown(mark);
  if (mark.name === 'defs' || mark.name === 'clipPath') return;
  if (mark.name === 'mask') takeNode(mark, hand);
  else if (mark.name === 'g') readAll(mark.children, inside(mark, around, hand), hand);
  else if (mark.name === 'text') hand.found.push(readPiece(mark, inside(mark, around, hand), hand));
  else if (mark.name === 'image') readDrawing(mark, inside(mark, around, hand), hand);
  else readShape(mark, inside(mark, around, hand), hand);
}

function checkKnown(mark: Mark): void {
  const names = known[mark.name];
  if (!names) throw new Error(`The press cannot print the mark <${mark.name}>.`);
  for (const [name, value] of mark.attributes) {
    if (!names.has(name)) throw new Error(`The press cannot print ${name}="${value}" on <${mark.name}>.`);
  }
  const masked = mark.attributes.get('mask');
  if (masked !== undefined && !masked.startsWith('url(#satori_om-')) {
    throw new Error(`The press cannot print mask="${masked}" on <${mark.name}>.`);
  }
}

/** The engine writes a mask before the marks of each box; its id says which box that is. */
function takeNode(mark: Mark, hand: Hand): void {
  const id = /^satori_om-id-?(.*)$/.exec(mark.attributes.get('id') ?? '')?.[1];
  if (id === undefined) throw new Error(`The press cannot print the mask "${mark.attributes.get('id')}".`);
  hand.node = hand.finder.nodeOfPath(id);
}

function inside(mark: Mark, around: Around, hand: Hand): Around {
  const matrix = combine(around.matrix, readTransform(mark.attributes.get('transform') ?? ''));
  const paint = new Map(around.paint);
  for (const name of paintNames) {
    const value = mark.attributes.get(name);
    if (value !== undefined) paint.set(name, value);
  }
  // The clip of a mark is turned with the mark itself.
  const clip = hand.cut(mark.attributes.get('clip-path'), { ...around, matrix });
  return { ...around, matrix, clip, paint };
}

function number(mark: Mark, name: string, otherwise = 0): number {
  return numberFrom(mark.attributes.get(name), name, otherwise);
}

function numberFrom(source: string | undefined, name: string, otherwise: number): number {
  if (source === undefined) return otherwise;
  const value = Number(source.replace(/px$/, ''));
  if (!Number.isFinite(value)) throw new Error(`The press cannot read the length ${name}="${source}".`);
  return value;
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
  const [x, y, width, height] = [
    number(mark, 'x'),
    number(mark, 'y'),
    number(mark, 'width'),
    number(mark, 'height'),
  ];
  const view = drawing.attributes
    .get('viewBox')
    ?.trim()
    .split(/[\s,]+/)
    .map(Number);
  const [left, top, wide, high] = view ?? [
    0,
    0,
    number(drawing, 'width', width),
    number(drawing, 'height', height),
  ];
  if (!wide || !high) throw new Error('A drawing needs a viewBox, or a width and a height.');
  const [sx, sy] = [width / wide, height / high];
  const fit = mark.attributes.get('preserveAspectRatio') ?? 'xMidYMid meet';
  if (fit === 'none') return [sx, 0, 0, sy, x - (left ?? 0) * sx, y - (top ?? 0) * sy];
  if (!/^xMidYMid( meet)?$/.test(fit))
    throw new Error(`The press cannot print preserveAspectRatio="${fit}".`);
  const s = Math.min(sx, sy);
  const middle = (from: number, room: number, size: number) => from + (room - size * s) / 2;
  return [s, 0, 0, s, middle(x, width, wide) - (left ?? 0) * s, middle(y, height, high) - (top ?? 0) * s];
}

function readShape(mark: Mark, around: Around, hand: Hand): void {
  const path = placePath(pathOf(mark), around.matrix);
  const alpha = (name: string) => numberFrom(around.paint.get(name), name, 1);
  const fillInk = fadedInk(around.paint.get('fill') ?? 'black', alpha('fill-opacity'));
  const rule = ruleFrom(around.paint.get('fill-rule'));
  const fill = fillInk && mark.name !== 'line' ? { ink: fillInk, rule } : null;
  const stroke = readStroke(around);
  if (path.length === 0 || (!fill && !stroke)) return;
  hand.found.push({ kind: 'shape', node: hand.node, path, fill, stroke, clip: around.clip });
}

function pathOf(mark: Mark): Path {
  const at = (name: string) => number(mark, name);
  if (mark.name === 'path') return readPathData(mark.attributes.get('d') ?? '');
  if (mark.name === 'circle') return ellipsePath(at('cx'), at('cy'), at('r'), at('r'));
  if (mark.name === 'ellipse') return ellipsePath(at('cx'), at('cy'), at('rx'), at('ry'));
  if (mark.name === 'polygon') return pointsPath(mark.attributes.get('points') ?? '', [['Z']]);
  if (mark.name === 'polyline') return pointsPath(mark.attributes.get('points') ?? '', []);
  if (mark.name === 'line')
    return [
      ['M', at('x1'), at('y1')],
      ['L', at('x2'), at('y2')],
    ];
  const rectangle = { x: at('x'), y: at('y'), width: at('width'), height: at('height') };
  const [rx, ry] = [number(mark, 'rx', at('ry')), number(mark, 'ry', at('rx'))];
  return rectangle.width > 0 && rectangle.height > 0 ? rectanglePath(rectangle, rx, ry) : [];
}

function ruleFrom(source: string | undefined): FillRule {
  if (source === undefined || source === 'nonzero') return 'nonzero';
  if (source === 'evenodd') return source;
  throw new Error(`The press cannot print the rule "${source}".`);
}

function fadedInk(source: string, alpha_frac: number) {
  const ink = readInk(source);
  return ink && alpha_frac > 0 ? { ...ink, alpha_frac: thousandth(ink.alpha_frac * alpha_frac) } : null;
}

function readStroke({ paint, matrix }: Around): Stroke | null {
  const value = (name: string, otherwise: number) => numberFrom(paint.get(name), name, otherwise);
  const ink = fadedInk(paint.get('stroke') ?? 'none', value('stroke-opacity', 1));
  const width = value('stroke-width', 1);
  if (!ink || !(width > 0)) return null;
  const scale = scaleOf(matrix);
  const dashes = paint.get('stroke-dasharray') ?? 'none';
  const lengths =
    dashes === 'none'
      ? []
      : dashes
          .trim()
          .split(/[\s,]+/)
          .map((each) => numberFrom(each, 'stroke-dasharray', 0));
  return {
    ink,
    width_pt: thousandth(width * scale),
    cap: oneOf(paint.get('stroke-linecap') ?? 'butt', ['butt', 'round', 'square']),
    join: oneOf(paint.get('stroke-linejoin') ?? 'miter', ['miter', 'round', 'bevel']),
    miterLimit: value('stroke-miterlimit', 4),
    // An odd list of dashes is repeated to become even (SVG 1.1, 11.4).
    dashes_pt: (lengths.length % 2 ? [...lengths, ...lengths] : lengths).map((length) =>
      thousandth(length * scale),
    ),
    dashStart_pt: thousandth(value('stroke-dashoffset', 0) * scale),
  };
}

function oneOf<Choice extends string>(given: string, choices: readonly Choice[]): Choice {
  const found = choices.find((choice) => choice === given);
  if (!found) throw new Error(`The press cannot print a stroke with "${given}".`);
  return found;
}

/** A line keeps one width only where its drawing is not stretched to one side. */
function scaleOf([a, b, c, d]: Matrix): number {
  const [across, down] = [Math.hypot(a, b), Math.hypot(c, d)];
  if (Math.abs(across - down) > 1e-4 * across)
    throw new Error('A stretched drawing cannot have lines. Keep its aspect ratio.');
  return across;
}

type ClipMaker = (reference: string | undefined, around: Around) => Clip | null;

/** Equal clips are one object, so that writers cut once for a row of items. */
function clipMaker(): ClipMaker {
  const made = new Map<string, Clip>();
  const numbers = new Map<Clip, number>();
  const cut: ClipMaker = (reference, around) => {
    if (reference === undefined) return around.clip;
    const id = /^url\(#(.*)\)$/.exec(reference)?.[1] ?? '';
    const mark = around.clips.get(id);
    if (!mark) throw new Error(`The press cannot find the clip ${reference}.`);
    const within = cut(mark.attributes.get('clip-path'), around);
    const rules = new Set(mark.children.map((child) => ruleFrom(child.attributes.get('clip-rule'))));
    const [rule = 'nonzero'] = rules;
    if (rules.size > 1) throw new Error('A clip of paths with different rules cannot be printed.');
    const own = combine(around.matrix, readTransform(mark.attributes.get('transform') ?? ''));
    const path = mark.children.flatMap((child) => {
      return placePath(pathOf(child), combine(own, readTransform(child.attributes.get('transform') ?? '')));
    });
    const key = JSON.stringify([path, rule, within ? numbers.get(within) : null]);
    const clip = made.get(key) ?? { path, rule, within };
    made.set(key, clip);
    if (!numbers.has(clip)) numbers.set(clip, numbers.size);
    return clip;
  };
  return cut;
}

function clipsIn(root: Mark): ReadonlyMap<string, Mark> {
  const found = new Map<string, Mark>();
  const look = (mark: Mark): void => {
    const id = mark.attributes.get('id');
    if (mark.name === 'clipPath' && id !== undefined) found.set(id, mark);
    mark.children.forEach(look);
  };
  look(root);
  return found;
}
