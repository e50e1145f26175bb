import { thousandth } from './measures.ts';
import type { Ink, Matrix, Shape, Stroke } from './page.ts';
import { readInk } from './paint.ts';
import { numberFrom, ruleFrom } from './svgShapes.ts';

/** The attributes of painting, which a group hands on to what is in it. */
export const paintNames = [
  ...['fill', 'fill-opacity', 'fill-rule', 'stroke', 'stroke-width', 'stroke-opacity', 'stroke-dasharray'],
  ...['stroke-dashoffset', 'stroke-linecap', 'stroke-linejoin', 'stroke-miterlimit'],
];

export type Paint = ReadonlyMap<string, string>;

export function readFill(paint: Paint): Shape['fill'] {
  const ink = fadedInk(
    paint.get('fill') ?? 'black',
    numberFrom(paint.get('fill-opacity'), 'fill-opacity', 1),
  );
  return ink && { ink, rule: ruleFrom(paint.get('fill-rule')) };
}

function fadedInk(source: string, alpha_frac: number): Ink | null {
  const ink = readInk(source);
  return ink && alpha_frac > 0 ? { ...ink, alpha_frac: thousandth(ink.alpha_frac * alpha_frac) } : null;
}

export function readStroke(paint: Paint, matrix: Matrix): Stroke | null {
  const value = (name: string, otherwise: number) => numberFrom(paint.get(name), name, otherwise);
  const ink = fadedInk(paint.get('stroke') ?? 'none', value('stroke-opacity', 1));
  const width = value('stroke-width', 1);
  if (!ink || !(width > 0)) return null;
  const scale = scaleOf(matrix);
  const dashes = readDashes(paint.get('stroke-dasharray') ?? 'none');
  return {
    ink,
    width_pt: thousandth(width * scale),
    cap: oneOf(paint.get('stroke-linecap') ?? 'butt', ['butt', 'round', 'square']),
    join: oneOf(paint.get('stroke-linejoin') ?? 'miter', ['miter', 'round', 'bevel']),
    miterLimit: value('stroke-miterlimit', 4),
    dashes_pt: dashes.map((length) => thousandth(length * scale)),
    dashStart_pt: thousandth(value('stroke-dashoffset', 0) * scale),
  };
}

/** An odd list of dashes is repeated to become even (SVG 1.1, 11.4). */
function readDashes(source: string): number[] {
  if (source === 'none') return [];
  const lengths = source
    .trim()
    .split(/[\s,]+/)
    .map((each) => numberFrom(each, 'stroke-dasharray', 0));
  return lengths.length % 2 ? [...lengths, ...lengths] : lengths;
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
