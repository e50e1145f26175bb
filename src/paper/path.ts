import { thousandth } from './measures.ts';
import type { Matrix, Path, Segment } from './page.ts';

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export function combine(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

export function place([a, b, c, d, e, f]: Matrix, x: number, y: number): [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** The path after a matrix, rounded to thousandths. */
export function placePath(path: Path, matrix: Matrix): Path {
  const at = (x: number, y: number): [number, number] => {
    const [placedX, placedY] = place(matrix, x, y);
    return [thousandth(placedX), thousandth(placedY)];
  };
  return path.map((segment): Segment => {
    if (segment[0] === 'Z') return segment;
    if (segment[0] !== 'C') return [segment[0], ...at(segment[1], segment[2])];
    return ['C', ...at(segment[1], segment[2]), ...at(segment[3], segment[4]), ...at(segment[5], segment[6])];
  });
}

/** How far a quarter circle's control points stand from its ends, for a radius of 1; off by at most 0.03 %. */
const quarter = 0.5522847498;

export type Rectangle = { x: number; y: number; width: number; height: number };

export function rectanglePath({ x, y, width, height }: Rectangle, rx = 0, ry = rx): Path {
  const [right, bottom] = [x + width, y + height];
  const [h, v] = [Math.min(rx, width / 2), Math.min(ry, height / 2)];
  if (!(h > 0 && v > 0)) {
    return [['M', x, y], ['L', right, y], ['L', right, bottom], ['L', x, bottom], ['Z']];
  }
  const [i, j] = [h * (1 - quarter), v * (1 - quarter)];
  return [
    ['M', x + h, y],
    ['L', right - h, y],
    ['C', right - i, y, right, y + j, right, y + v],
    ['L', right, bottom - v],
    ['C', right, bottom - j, right - i, bottom, right - h, bottom],
    ['L', x + h, bottom],
    ['C', x + i, bottom, x, bottom - j, x, bottom - v],
    ['L', x, y + v],
    ['C', x, y + j, x + i, y, x + h, y],
    ['Z'],
  ];
}

export function ellipsePath(cx: number, cy: number, rx: number, ry: number): Path {
  const [i, j] = [rx * quarter, ry * quarter];
  return [
    ['M', cx + rx, cy],
    ['C', cx + rx, cy + j, cx + i, cy + ry, cx, cy + ry],
    ['C', cx - i, cy + ry, cx - rx, cy + j, cx - rx, cy],
    ['C', cx - rx, cy - j, cx - i, cy - ry, cx, cy - ry],
    ['C', cx + i, cy - ry, cx + rx, cy - j, cx + rx, cy],
    ['Z'],
  ];
}

/** The corners of `points="0,0 10,5 ..."`. */
export function pointsPath(points: string, ending: readonly Segment[]): Path {
  const numbers = (points.match(/[^\s,]+/g) ?? []).map(Number);
  if (numbers.length % 2 !== 0 || numbers.some((number) => !Number.isFinite(number))) {
    throw new Error(`A drawing's points cannot be read: "${points}".`);
  }
  const path: Segment[] = [];
  for (let at = 0; at < numbers.length; at += 2) {
    path.push([at === 0 ? 'M' : 'L', numbers[at] ?? 0, numbers[at + 1] ?? 0]);
  }
  return [...path, ...ending];
}
