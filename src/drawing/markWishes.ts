/** What wants a mark inside the section, and where: stations, holes, names, widths. */
import type { Section } from '../core/plan/figure.ts';
import type { Fit } from './fit.ts';
import type { Line, MarkWish, Rect, Spot } from './marks.ts';

type Vessel = Section['vessels'][number];

/** Width of each mark, by its key; a key that is not here gets no mark. */
type MarkRoom = { readonly marks: Readonly<Record<string, number>>; readonly markHeight: number };

/** From a floor down to the line that tells its vessel's width. */
const widthDrop = 34;

/** Stations first, then holes, names and widths: what is told in a list as well may rather go. */
export function markWishes(section: Section, room: MarkRoom, at: Fit): readonly MarkWish[] {
  const wish = (key: string, spot: Spot, of: Spot | null, goes: MarkWish['goes']): readonly MarkWish[] => {
    const width = room.marks[key];
    return width === undefined ? [] : [{ key, at: spot, of, width, height: room.markHeight, goes }];
  };
  const off = room.markHeight / 2 + 18;
  const firsts = section.vessels.filter((one) => one.copy === 0);
  return [
    ...section.way.flatMap(({ key, at: point }) => {
      const [x, y] = at.place(point);
      return wish(`station.${key}`, [x + off, y - off / 3], [x, y], 'around');
    }),
    ...section.holes
      .filter((hole) => hole.copy === 0 || hole.role !== 'bed')
      .flatMap((hole) => {
        const [x, y] = at.place(hole.at);
        return wish(`hole.${hole.for}.${hole.index}`, [x + off, y + off], [x, y], 'around');
      }),
    ...firsts.flatMap((one) =>
      wish(`name.${one.role}.${one.index}`, nameSpot(one, at), null, edgesOf(one, at)),
    ),
    ...firsts.flatMap((one) => wish(`width.${one.role}.${one.index}`, widthSpot(one, at), null, 'along')),
  ];
}

function nameSpot({ outline }: Vessel, at: Fit): Spot {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const x = 0.6 * Math.min(...xs) + 0.4 * Math.max(...xs);
  return at.place([x, (Math.min(...ys) + Math.max(...ys)) / 2]);
}

function edgesOf({ outline }: Vessel, at: Fit): Rect {
  const spots = outline.map(at.place);
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Middle of the line that tells a vessel's width. */
export function widthSpot({ outline }: Vessel, at: Fit): Spot {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [at.x((Math.min(...xs) + Math.max(...xs)) / 2), at.y(Math.min(...ys)) + widthDrop];
}

/** Walls, pipes and water lines. */
export function keptClear(section: Section, at: Fit): readonly Line[] {
  const joints = (points: readonly Spot[]): readonly Line[] =>
    points.slice(1).map((point, i) => [points[i] ?? point, point, 'hard']);
  return [
    ...section.vessels.flatMap((one) => joints(one.outline.map(at.place))),
    ...section.pipes.flatMap((one) => joints(one.points.map(at.place))),
    ...section.vessels.flatMap((one) =>
      one.levels.map((level): Line => {
        const ends = [level.left_mm, level.right_mm].map((x) => at.place([x, level.y_mm]));
        return [ends[0] ?? [0, 0], ends[1] ?? [0, 0], 'soft'];
      }),
    ),
  ];
}
