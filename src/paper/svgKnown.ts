import { paintNames } from './svgPaint.ts';
import type { Mark } from './xml.ts';

const everywhere = [...paintNames, 'transform', 'clip-path', 'clip-rule', 'mask', 'id'];
const boxNames = ['x', 'y', 'width', 'height'];

const fontNames = ['font-weight', 'font-style', 'font-size', 'font-family'];

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
  text: new Set(['fill', 'transform', 'clip-path', ...boxNames, ...fontNames]),
  image: new Set(['transform', 'clip-path', 'mask', 'href', 'preserveAspectRatio', ...boxNames]),
  defs: new Set(),
  clipPath: new Set(['id', 'clip-path', 'transform']),
  mask: new Set(['id']),
};

/** Throws on a mark or an attribute that would otherwise be lost in print. */
export function checkKnown(mark: Mark): void {
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
