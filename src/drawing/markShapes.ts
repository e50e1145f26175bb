/** Small shapes that go with the marks of a section: arrows of the water, crosses to cut, lines that tell a width. */
import type { Section, SectionPipe } from '../core/plan/figure.ts';
import type { Fit } from './fit.ts';
import type { PlacedMark, Spot } from './marks.ts';
import { widthSpot } from './markWishes.ts';
import { path, type Shape } from './shape.ts';

const thin = 2;

function line(from: Spot, to: Spot): string {
  return path([from, to], 'open');
}

/** Half of an arrow's length and width; shorter pieces of pipe get none. */
const arrow = { along: 9, across: 4.5, leastPipe: 44 };

/** In the middle of every longer piece of pipe, the way that the water goes. */
export function arrows({ points }: SectionPipe, at: Fit): readonly Shape[] {
  const spots = points.map(at.place);
  const heads = spots.slice(1).flatMap((to, i) => {
    const from = spots[i] ?? to;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return length < arrow.leastPipe ? [] : [head(from, to, length)];
  });
  return heads.length === 0 ? [] : [{ d: heads.join(''), paint: { fill: 'black' } }];
}

function head(from: Spot, to: Spot, length: number): string {
  const [right, down] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const at = (along: number, across: number): Spot => [
    x + right * along - down * across,
    y + down * along + right * across,
  ];
  return path(
    [at(arrow.along, 0), at(-arrow.along, arrow.across), at(-arrow.along, -arrow.across)],
    'closed',
  );
}

/** Where something is to be cut. */
export function cross([x, y]: Spot): Shape {
  const arm = 17;
  const strokes = [
    line([x - arm, y - arm], [x + arm, y + arm]),
    line([x - arm, y + arm], [x + arm, y - arm]),
  ];
  return { d: strokes.join(''), paint: { stroke: 'black', width: 5 } };
}

/** From a mark that had to move to what it tells of. */
export function pointer({ at, of, width, height }: PlacedMark): readonly Shape[] {
  if (of === null) return [];
  const away = Math.hypot(at[0] - of[0], at[1] - of[1]);
  if (away < Math.max(width, height)) return [];
  return [{ d: line(at, of), paint: { stroke: 'black', width: thin + 1 } }];
}

/** A line under each vessel as long as its rim is wide, with a foot at each end. */
export function widthLines(
  section: Section,
  marks: Readonly<Record<string, number>>,
  at: Fit,
): readonly Shape[] {
  return section.vessels
    .filter((one) => one.copy === 0 && marks[`width.${one.role}.${one.index}`] !== undefined)
    .map((one) => {
      const [middle, y] = widthSpot(one, at);
      const half = (one.width_mm * at.scale) / 2;
      const feet = [middle - half, middle + half].map((x) => line([x, y - 22], [x, y + 8]));
      const d = [line([middle - half, y], [middle + half, y]), ...feet].join('');
      return { d, paint: { stroke: 'black', width: thin } };
    });
}
