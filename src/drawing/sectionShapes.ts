/** What a section is drawn with, back to front: ground, water and stones, walls, pipes, bells, pump. */
import type { Section, SectionLevel, SectionPipe, SectionVessel } from '../core/plan/figure.ts';
import { spanAt, stones, water } from './fills.ts';
import { type Fit, standsOnFloor } from './fit.ts';
import { type Paint, path, type Shape } from './shape.ts';

/** Line widths in tenths of a millimetre. */
const wall = 7;
export const surface = 3;
export const leader = 2;

/** How a water line is drawn; null where a drawing leaves it out. */
export type LevelPaint = (level: SectionLevel) => Paint | null;

/** The whole section without a word, in the width that the ground may take. */
export function sectionShapes(
  section: Section,
  at: Fit,
  width: number,
  paintOf: LevelPaint,
): readonly Shape[] {
  return [
    ...ground(section, at, width),
    ...section.vessels.flatMap((vessel) => contents(vessel, at, paintOf)),
    ...section.vessels.flatMap((vessel) => walls(vessel, at)),
    ...section.pipes.flatMap((pipe) => pipeShapes(pipe, at)),
    ...section.vessels.flatMap((vessel) => bell(vessel, section, at)),
    ...pumpShapes(section, at),
  ];
}

/** The floor of the place, with hatching where a vessel is let into the ground. */
function ground(section: Section, at: Fit, width: number): readonly Shape[] {
  const sunk = section.vessels.filter((one) => Math.min(...one.outline.map(([, y]) => y)) < -1);
  if (standsOnFloor(section) === 'no') return stands(section, at);
  if (sunk.length === 0) return [line([0, at.y(0)], [width, at.y(0)], leader)];
  const left = Math.min(...sunk.map((one) => at.x(Math.min(...one.outline.map(([x]) => x)))));
  const right = Math.max(...sunk.map((one) => at.x(Math.max(...one.outline.map(([x]) => x)))));
  const hatch: string[] = [];
  for (let x = 8; x < width; x += 22) {
    if (x > left - 14 && x < right + 6) continue;
    hatch.push(
      path(
        [
          [x, at.y(0)],
          [x - 8, at.y(0) + 12],
        ],
        'open',
      ),
    );
  }
  const hatching: Shape = { d: hatch.join(''), paint: { stroke: 'black', width: leader } };
  return [
    line([0, at.y(0)], [Math.max(0, left), at.y(0)], surface),
    line([Math.min(width, right), at.y(0)], [width, at.y(0)], surface),
    hatching,
  ].filter((shape) => shape.d !== '');
}

/** A table top under whatever stands clear of the floor. */
function stands(section: Section, at: Fit): readonly Shape[] {
  return section.vessels
    .filter((one) => one.role !== 'bed')
    .map((one) => {
      const y = at.y(Math.min(...one.outline.map(([, height]) => height))) + wall;
      const xs = one.outline.map(([x]) => at.x(x));
      return line([Math.max(0, Math.min(...xs) - 25), y], [Math.max(...xs) + 25, y], surface);
    });
}

function line(from: readonly [number, number], to: readonly [number, number], width: number): Shape {
  return { d: path([from, to], 'open'), paint: { stroke: 'black', width } };
}

function contents(vessel: SectionVessel, at: Fit, paintOf: LevelPaint): readonly Shape[] {
  const full = vessel.levels.find((level) => level.key === 'full');
  const media = vessel.mediaTopY_mm;
  const wet = vessel.levels.find((level) => level.key === 'waterLine')?.y_mm ?? Number.NEGATIVE_INFINITY;
  const inside: Shape[] = [];
  if (media !== null) {
    inside.push({ d: path(vessel.outline.map(at.place), 'closed'), paint: { fill: 'white' } });
    inside.push(...stones(vessel.outline, media, wet, at));
  }
  if (full !== undefined) inside.push(...water(vessel.outline, full.y_mm, at));
  return [...inside, ...vessel.levels.flatMap((level) => levelLine(level, at, paintOf))];
}

/** Across the inside of the vessel, a hair short of its walls. */
function levelLine(level: SectionLevel, at: Fit, paintOf: LevelPaint): readonly Shape[] {
  const paint = paintOf(level);
  if (paint === null) return [];
  const from = [at.x(level.left_mm) + 3, at.y(level.y_mm)] as const;
  const to = [at.x(level.right_mm) - 3, at.y(level.y_mm)] as const;
  return [{ d: path([from, to], 'open'), paint }];
}

function walls(vessel: SectionVessel, at: Fit): readonly Shape[] {
  return [{ d: path(vessel.outline.map(at.place), 'open'), paint: { stroke: 'black', width: wall } }];
}

/** White between black edges, whatever it runs across. */
function pipeShapes(pipe: SectionPipe, at: Fit): readonly Shape[] {
  const d = path(pipe.points.map(at.place), 'open');
  return [
    { d, paint: { stroke: 'black', width: 17 } },
    { d, paint: { stroke: 'white', width: 10 } },
  ];
}

/** The bell over the standpipe of a siphon bed. */
function bell(vessel: SectionVessel, section: Section, at: Fit): readonly Shape[] {
  if (vessel.mode !== 'siphon') return [];
  const pipe = section.pipes.find((one) => one.role === 'standpipe' && belongs(one, vessel));
  const [lip, foot] = pipe?.points ?? [];
  if (lip === undefined || foot === undefined) return [];
  const x = at.x(lip[0]);
  const top = at.y(lip[1]) - 14;
  const low = at.y(foot[1]) - 6;
  const edge = [
    [x - 24, low],
    [x - 24, top],
    [x + 24, top],
    [x + 24, low],
  ] as const;
  return [{ d: path(edge, 'open'), paint: { stroke: 'black', width: 5 } }];
}

function belongs(pipe: SectionPipe, vessel: SectionVessel): boolean {
  const [lip] = pipe.points;
  if (lip === undefined) return false;
  const span = spanAt(vessel.outline, lip[1]);
  return span !== null && span[0] <= lip[0] && lip[0] <= span[1];
}

function pumpShapes(section: Section, at: Fit): readonly Shape[] {
  const { pump } = section;
  if (pump === null) return [];
  const x = at.x(pump.x_mm);
  const floor = at.y(pump.y_mm);
  const intake = at.y(pump.intakeY_mm);
  const box = (left: number, right: number, top: number, bottom: number): string =>
    path(
      [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ],
      'closed',
    );
  const block: Shape[] =
    floor - intake > 6
      ? [{ d: box(x - 20, x + 20, intake, floor), paint: { stroke: 'black', width: 3, fill: 'white' } }]
      : [];
  return [
    ...block,
    { d: box(x - 30, x + 30, intake - 38, intake), paint: { stroke: 'black', width: 5, fill: 'white' } },
  ];
}
