/** The section of a plan as placed shapes and labels. May scale and place; never makes a figure. */
import type { Section, SectionLevel, SectionPipe, SectionVessel } from '../core/plan/figure.ts';
import { anchorsOf, tagsOf } from './anchors.ts';
import { spanAt, stones, water } from './fills.ts';
import { extentOf, type Fit, fitInto, roundLength_mm, standsOnFloor } from './fit.ts';
import { pushApart } from './labels.ts';
import { type Drawing, path, type Shape } from './shape.ts';

/** Line widths in tenths of a millimetre. */
const wall = 7;
const surface = 3;
const leader = 2;

/** Room that the sheet gives, in tenths of a millimetre. */
export type Room = {
  readonly width: number;
  readonly height: number;
  readonly labelWidth: number;
  /** Length of the reader's unit, so that the scale bar is a round number of them: 1 for millimetres, 25.4 for inches. */
  readonly unit_mm: number;
  /** Height that each label will take, by its key; a key that is not here gets no label. */
  readonly labelHeights: Readonly<Record<string, number>>;
};

/** The whole drawing: to scale, labels to the right, a scale bar below. */
export function sectionDrawing(section: Section, room: Room): Drawing {
  const barRoom = 86;
  const box = { width: room.width - room.labelWidth - 60, height: room.height - barRoom };
  const at = fitInto(extentOf(section), box);
  const labelLeft = room.width - room.labelWidth;
  const scaleBar = bar(at, box, room.unit_mm);
  const anchors = anchorsOf(section, at).filter((anchor) => room.labelHeights[anchor.key] !== undefined);
  const sorted = [...anchors].sort((a, b) => a.y - b.y);
  const tops = pushApart(
    sorted.map((anchor) => ({ middle: anchor.y, height: room.labelHeights[anchor.key] ?? 0 })),
    0,
    room.height - barRoom / 2,
  );
  const labels = sorted.map((anchor, i) => ({ key: anchor.key, top: tops[i] ?? 0 }));
  const leaders = sorted.flatMap((anchor, i) =>
    anchor.at === null
      ? []
      : leaderTo(anchor.at, (tops[i] ?? 0) + (room.labelHeights[anchor.key] ?? 0) / 2, labelLeft, box.width),
  );
  return {
    width: room.width,
    height: room.height,
    shapes: [
      ...ground(section, at, box.width),
      ...section.vessels.flatMap((vessel) => contents(vessel, at)),
      ...section.vessels.flatMap((vessel) => walls(vessel, at)),
      ...section.pipes.flatMap((pipe) => pipeShapes(pipe, at)),
      ...section.vessels.flatMap((vessel) => bell(vessel, section, at)),
      ...pumpShapes(section, at),
      ...leaders,
      barShape(scaleBar),
    ],
    labels,
    labelLeft,
    tags: tagsOf(section, at, box),
    bar: scaleBar,
  };
}

function bar(
  at: Fit,
  box: { readonly width: number; readonly height: number },
  unit_mm: number,
): Drawing['bar'] {
  const real_mm = roundLength_mm((box.width * 0.45) / at.scale, unit_mm);
  const length = real_mm * at.scale;
  return { left: (box.width - length) / 2, top: box.height + 22, length, real_mm };
}

function barShape({ left, top, length }: Drawing['bar']): Shape {
  const right = left + length;
  const d = [
    path(
      [
        [left, top - 8],
        [left, top + 8],
      ],
      'open',
    ),
    path(
      [
        [left, top],
        [right, top],
      ],
      'open',
    ),
    path(
      [
        [right, top - 8],
        [right, top + 8],
      ],
      'open',
    ),
  ].join('');
  return { d, paint: { stroke: 'black', width: 4 } };
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

function contents(vessel: SectionVessel, at: Fit): readonly Shape[] {
  const full = vessel.levels.find((level) => level.key === 'full');
  const media = vessel.mediaTopY_mm;
  const wet = vessel.levels.find((level) => level.key === 'waterLine')?.y_mm ?? Number.NEGATIVE_INFINITY;
  const inside: Shape[] = [];
  if (media !== null) {
    inside.push({ d: path(vessel.outline.map(at.place), 'closed'), paint: { fill: 'white' } });
    inside.push(...stones(vessel.outline, media, wet, at));
  }
  if (full !== undefined) inside.push(...water(vessel.outline, full.y_mm, at));
  return [...inside, ...vessel.levels.flatMap((level) => levelLine(level, at))];
}

/** Water surface: a line at the full level, dashes where the water only comes at times. */
function levelLine(level: SectionLevel, at: Fit): readonly Shape[] {
  if (level.key === 'blocked') return [];
  const from = [at.x(level.left_mm) + 3, at.y(level.y_mm)] as const;
  const to = [at.x(level.right_mm) - 3, at.y(level.y_mm)] as const;
  const width = level.key === 'full' ? surface : surface + 1;
  const dashes = level.key === 'full' ? {} : { dash: [14, 9] };
  return [{ d: path([from, to], 'open'), paint: { stroke: 'black', width, ...dashes } }];
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

/** Level out of the drawing, then slanting to the label's own height. */
function leaderTo(
  from: readonly [number, number],
  labelMiddle: number,
  labelLeft: number,
  drawn: number,
): readonly Shape[] {
  const elbow = Math.max(from[0], drawn) + 8;
  const points = [
    from,
    [elbow, from[1]],
    [labelLeft - 22, labelMiddle],
    [labelLeft - 8, labelMiddle],
  ] as const;
  return [{ d: path(points, 'open'), paint: { stroke: 'black', width: leader } }];
}
