import type { Matrix } from './page.ts';
import { combine, identity } from './path.ts';

/** Reads an SVG `transform` list (SVG 1.1, 7.6). */
export function readTransform(source: string): Matrix {
  let matrix = identity;
  const rest = source.replace(/(\w+)\s*\(([^()]*)\)/g, (_, name: string, list: string) => {
    const numbers = (list.match(/[^\s,]+/g) ?? []).map(Number);
    matrix = combine(matrix, step(name, numbers, source));
    return '';
  });
  if (/[^\s,]/.test(rest)) throw new Error(`The press cannot read transform="${source}".`);
  return matrix;
}

function step(name: string, numbers: readonly number[], source: string): Matrix {
  const [first = 0, second, third = 0, ...more] = numbers;
  const readable = numbers.length > 0 && numbers.every(Number.isFinite);
  if (readable && name === 'translate') return [1, 0, 0, 1, first, second ?? 0];
  if (readable && name === 'scale') return [first, 0, 0, second ?? first, 0, 0];
  if (readable && name === 'rotate') return turn((first * Math.PI) / 180, second ?? 0, third);
  const [d, e, f] = more;
  if (
    readable &&
    name === 'matrix' &&
    second !== undefined &&
    d !== undefined &&
    e !== undefined &&
    f !== undefined
  ) {
    return [first, second, third, d, e, f];
  }
  throw new Error(`The press cannot read transform="${source}".`);
}

function turn(angle: number, x: number, y: number): Matrix {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
}
