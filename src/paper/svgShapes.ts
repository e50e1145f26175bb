import type { FillRule, Path } from './page.ts';
import { ellipsePath, pointsPath, rectanglePath } from './path.ts';
import { readPathData } from './pathData.ts';
import type { Mark } from './xml.ts';

/** A length of a mark, or what it is without one. */
export function number(mark: Mark, name: string, otherwise = 0): number {
  return numberFrom(mark.attributes.get(name), name, otherwise);
}

export function numberFrom(source: string | undefined, name: string, otherwise: number): number {
  if (source === undefined) return otherwise;
  const value = Number(source.replace(/px$/, ''));
  if (!Number.isFinite(value)) throw new Error(`The press cannot read the length ${name}="${source}".`);
  return value;
}

/** The path of a mark that has one, in its own coordinates. */
export function pathOf(mark: Mark): Path {
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
  if (mark.name !== 'rect') throw new Error(`The press cannot print the mark <${mark.name}> here.`);
  const rectangle = { x: at('x'), y: at('y'), width: at('width'), height: at('height') };
  const [rx, ry] = [number(mark, 'rx', at('ry')), number(mark, 'ry', at('rx'))];
  return rectangle.width > 0 && rectangle.height > 0 ? rectanglePath(rectangle, rx, ry) : [];
}

export function ruleFrom(source: string | undefined): FillRule {
  if (source === undefined || source === 'nonzero') return 'nonzero';
  if (source === 'evenodd') return source;
  throw new Error(`The press cannot print the rule "${source}".`);
}
