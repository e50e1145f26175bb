import type { Path, Segment } from './page.ts';

const commands = /([MLHVCSQTAZmlhvcsqtaz])([^MLHVCSQTAZmlhvcsqtaz]*)/g;
const numberOrFlag = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi;
const counts: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

type Pen = {
  x: number;
  y: number;
  startX: number;
  startY: number;
  /** The last control point, which S and T mirror, and the command it belongs to. */
  controlX: number;
  controlY: number;
  last: string;
  path: Segment[];
};

/** Reads SVG path data (SVG 1.1, chapter 8) into absolute lines and cubic curves. */
export function readPathData(source: string): Path {
  const pen: Pen = { x: 0, y: 0, startX: 0, startY: 0, controlX: 0, controlY: 0, last: '', path: [] };
  const rest = source.replace(commands, (_, letter: string, list: string) => {
    for (const step of steps(letter, list)) draw(pen, step.letter, step.numbers);
    return '';
  });
  if (rest.trim() !== '') throw new Error(`A drawing's path cannot be read: "${source.slice(0, 60)}".`);
  return pen.path;
}

type Step = { letter: string; numbers: number[] };

/** One command letter may be followed by many sets of numbers; after a move the further ones are lines. */
function steps(letter: string, list: string): Step[] {
  const upper = letter.toUpperCase();
  const count = counts[upper] ?? 0;
  const numbers = upper === 'A' ? arcNumbers(list) : (list.match(numberOrFlag) ?? []).map(Number);
  if (count === 0) return [{ letter, numbers: [] }];
  if (numbers.length === 0 || numbers.length % count !== 0) {
    throw new Error(`A drawing's path cannot be read: "${letter}${list}".`);
  }
  const found: Step[] = [];
  for (let at = 0; at < numbers.length; at += count) {
    const line = upper === 'M' && at > 0;
    const next = letter === 'm' ? 'l' : 'L';
    found.push({ letter: line ? next : letter, numbers: numbers.slice(at, at + count) });
  }
  return found;
}

/** The two flags of an arc may stand without anything between them and the next number. */
function arcNumbers(list: string): number[] {
  const found: number[] = [];
  const pattern = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?|[01]/giy;
  const flag = /[01]/y;
  const gap = /[\s,]*/y;
  for (let at = 0; at < list.length; ) {
    gap.lastIndex = at;
    gap.exec(list);
    at = gap.lastIndex;
    if (at >= list.length) break;
    const isFlag = found.length % 7 === 3 || found.length % 7 === 4;
    const reader = isFlag ? flag : pattern;
    reader.lastIndex = at;
    const match = reader.exec(list);
    if (!match) throw new Error(`A drawing's arc cannot be read: "${list}".`);
    found.push(Number(match[0]));
    at = reader.lastIndex;
  }
  return found;
}

function draw(pen: Pen, letter: string, given: readonly number[]): void {
  const upper = letter.toUpperCase();
  const relative = letter !== upper;
  const [dx, dy] = relative ? [pen.x, pen.y] : [0, 0];
  // Coordinates come in pairs, but for the single ones of H and V and the radii, angle and flags of arcs.
  const n = given.map((value, at) => value + (at % 2 === 0 ? dx : dy));
  const at = (index: number) => n[index] ?? 0;
  if (upper === 'Z') close(pen);
  else if (upper === 'M') move(pen, at(0), at(1));
  else if (upper === 'L') line(pen, at(0), at(1));
  else if (upper === 'H') line(pen, at(0), pen.y);
  else if (upper === 'V') line(pen, pen.x, (given[0] ?? 0) + dy);
  else if (upper === 'C') curve(pen, [at(0), at(1), at(2), at(3), at(4), at(5)]);
  else if (upper === 'S') curve(pen, [...mirrored(pen, 'CS'), at(0), at(1), at(2), at(3)]);
  else if (upper === 'Q') quadratic(pen, at(0), at(1), at(2), at(3));
  else if (upper === 'T') quadratic(pen, ...mirrored(pen, 'QT'), at(0), at(1));
  else arc(pen, given, (given[5] ?? 0) + dx, (given[6] ?? 0) + dy);
  pen.last = upper;
}

function move(pen: Pen, x: number, y: number): void {
  pen.path.push(['M', x, y]);
  Object.assign(pen, { x, y, startX: x, startY: y });
}

function line(pen: Pen, x: number, y: number): void {
  pen.path.push(['L', x, y]);
  Object.assign(pen, { x, y });
}

function close(pen: Pen): void {
  pen.path.push(['Z']);
  Object.assign(pen, { x: pen.startX, y: pen.startY });
}

type Six = readonly [number, number, number, number, number, number];

function curve(pen: Pen, points: Six): void {
  pen.path.push(['C', ...points]);
  Object.assign(pen, { controlX: points[2], controlY: points[3], x: points[4], y: points[5] });
}

function mirrored(pen: Pen, after: string): [number, number] {
  if (!after.includes(pen.last) || pen.last === '') return [pen.x, pen.y];
  return [2 * pen.x - pen.controlX, 2 * pen.y - pen.controlY];
}

/** A quadratic curve is a cubic one whose control points stand two thirds of the way to its own. */
function quadratic(pen: Pen, cx: number, cy: number, x: number, y: number): void {
  const toward = (from: number, to: number) => from + ((to - from) * 2) / 3;
  curve(pen, [toward(pen.x, cx), toward(pen.y, cy), toward(x, cx), toward(y, cy), x, y]);
  Object.assign(pen, { controlX: cx, controlY: cy });
}

/** An elliptical arc as cubic curves of at most a quarter turn (SVG 1.1, appendix F.6). */
function arc(pen: Pen, given: readonly number[], x: number, y: number): void {
  const [rx = 0, ry = 0, turn = 0, large = 0, sweep = 0] = given;
  if (x === pen.x && y === pen.y) return;
  if (rx === 0 || ry === 0) {
    line(pen, x, y);
    return;
  }
  const ellipse = ellipseOf(pen, {
    rx: Math.abs(rx),
    ry: Math.abs(ry),
    turn: (turn * Math.PI) / 180,
    x,
    y,
    large,
    sweep,
  });
  const count = Math.ceil(Math.abs(ellipse.sweep) / (Math.PI / 2) - 1e-9);
  const step = ellipse.sweep / count;
  const handle = (4 / 3) * Math.tan(step / 4);
  for (let index = 0; index < count; index++) {
    const from = ellipse.start + index * step;
    const [c1, s1, c2, s2] = [Math.cos(from), Math.sin(from), Math.cos(from + step), Math.sin(from + step)];
    const [x1, y1] = ellipse.at(c1 - handle * s1, s1 + handle * c1);
    const [x2, y2] = ellipse.at(c2 + handle * s2, s2 - handle * c2);
    const [endX, endY] = index === count - 1 ? [x, y] : ellipse.at(c2, s2);
    curve(pen, [x1, y1, x2, y2, endX, endY]);
  }
}

type ArcEnds = { rx: number; ry: number; turn: number; x: number; y: number; large: number; sweep: number };
type Ellipse = { start: number; sweep: number; at: (x: number, y: number) => [number, number] };

function ellipseOf(pen: Pen, { rx, ry, turn, x, y, large, sweep }: ArcEnds): Ellipse {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [halfX, halfY] = [(pen.x - x) / 2, (pen.y - y) / 2];
  const [px, py] = [cos * halfX + sin * halfY, cos * halfY - sin * halfX];
  // Radii too small to reach from end to end are grown until they do.
  const grow = Math.max(1, Math.sqrt((px / rx) ** 2 + (py / ry) ** 2));
  const [a, b] = [rx * grow, ry * grow];
  const over = (a * b) ** 2 - (a * py) ** 2 - (b * px) ** 2;
  const reach = Math.sqrt(Math.max(0, over) / ((a * py) ** 2 + (b * px) ** 2)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [(reach * a * py) / b, (-reach * b * px) / a];
  const start = Math.atan2((py - cy) / b, (px - cx) / a);
  const end = Math.atan2((-py - cy) / b, (-px - cx) / a);
  const full = 2 * Math.PI;
  const turned = sweep ? (((end - start) % full) + full) % full : -((((start - end) % full) + full) % full);
  const [midX, midY] = [(pen.x + x) / 2, (pen.y + y) / 2];
  return {
    start,
    sweep: turned,
    at: (u, v) => [
      cos * (a * u + cx) - sin * (b * v + cy) + midX,
      sin * (a * u + cx) + cos * (b * v + cy) + midY,
    ],
  };
}
