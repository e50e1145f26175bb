/** The section with all that a builder reads off it: heights, water lines, widths, holes and stations of the water. */
import type { Section } from '../core/plan/figure.ts';
import { edge, extentOf, type Fit, roundLength_mm } from './fit.ts';
import { pushApart } from './labels.ts';
import { patternsFor } from './levelPaints.ts';
import { type PlacedMark, placeMarks } from './marks.ts';
import { arrows, cross, pointer, widthLines } from './markShapes.ts';
import { keptClear, markWishes } from './markWishes.ts';
import { changed, fitAt, largestScale, usualScale } from './scales.ts';
import { leader, sectionShapes } from './sectionShapes.ts';
import { type SideAnchor, sideAnchors, type SideName } from './sides.ts';
import { path, type PlacedLabel, type Shape } from './shape.ts';

/** Room that the sheet gives, in tenths of a millimetre, and the size of everything that it has words for. */
export type SystemRoom = {
  readonly width: number;
  /** The most; the drawing takes no more than it needs. */
  readonly height: number;
  /** Widths of the two columns of labels. */
  readonly left: number;
  readonly right: number;
  readonly unit_mm: number;
  /** Height of each label, by its key; a key that is not here gets no label. */
  readonly labels: Readonly<Record<string, number>>;
  /** Width of each mark inside the drawing, by its key, likewise. */
  readonly marks: Readonly<Record<string, number>>;
  readonly markHeight: number;
  /** For a ruler, one of the usual scales; for the eye, the largest that fits. */
  readonly scale: 'usual' | 'largest';
};

export type SystemDrawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly labels: readonly (PlacedLabel & { readonly side: SideName })[];
  readonly marks: readonly PlacedMark[];
  /** The drawing is so many times smaller than the real thing. */
  readonly oneTo: number;
  readonly bar: {
    readonly left: number;
    readonly top: number;
    readonly length: number;
    readonly real_mm: number;
  };
};

/** Between a column and the drawing: room for leaders. */
const gap = 48;
/** Under the drawing: widths, then the scale bar; nothing where nobody is to measure. */
const widthsRoom = { usual: 64, largest: 0 };
const barRoom = { usual: 80, largest: 0 };

function footRoom({ scale }: SystemRoom): number {
  return widthsRoom[scale] + barRoom[scale];
}

export function systemSection(section: Section, room: SystemRoom): SystemDrawing {
  const width =
    room.width - (room.left === 0 ? 0 : room.left + gap) - (room.right === 0 ? 0 : room.right + gap);
  const most = { width: width - 2 * edge, height: room.height - footRoom(room) - 2 * edge };
  const extent = extentOf(section);
  const real = { wide: extent.right - extent.left, high: extent.top - extent.bottom };
  const { oneTo, perReal } = room.scale === 'usual' ? usualScale(real, most) : largestScale(real, most);
  const anchors = anchorsFor(section, fitAt(extent, most, perReal), room);
  const wanted = Math.max(columnHeight(anchors, 'left', room), columnHeight(anchors, 'right', room));
  const box = { width, height: Math.min(most.height, Math.max(real.high * perReal, wanted)) + 2 * edge };
  return composed(section, room, { oneTo, box, at: fitAt(extent, box, perReal) });
}

type Layout = {
  readonly oneTo: number;
  readonly box: { readonly width: number; readonly height: number };
  readonly at: Fit;
};

function composed(section: Section, room: SystemRoom, { oneTo, box, at }: Layout): SystemDrawing {
  const right = room.left === 0 ? 0 : room.left + gap;
  const anchors = anchorsFor(section, at, room);
  const columns = (['left', 'right'] as const).flatMap((side) => column(anchors, side, room, box));
  const area = { width: box.width, height: box.height + widthsRoom[room.scale] };
  const marks = placeMarks(markWishes(section, room, at), area, keptClear(section, at));
  const shapes = [
    ...columns.flatMap((one) => leaderOf(one, box)),
    ...sectionShapes(section, at, box.width, patternsFor(room.labels)),
    ...section.pipes.flatMap((pipe) => arrows(pipe, at)),
    ...widthLines(section, room.marks, at),
    ...section.holes.filter((hole) => isMarked(hole, room)).map((hole) => cross(at.place(hole.at))),
    ...marks.flatMap(pointer),
  ];
  const real_mm = roundLength_mm((box.width * 0.4) / at.scale, room.unit_mm);
  return {
    width: room.width,
    height: box.height + footRoom(room),
    shapes: changed(shapes, { times: 1, right, down: 0 }),
    labels: columns.map(({ anchor: { key, side }, top }) => ({ key, side, top })),
    marks: marks.map((mark) => ({ ...mark, at: [mark.at[0] + right, mark.at[1]] })),
    oneTo,
    bar: { left: right, top: box.height + widthsRoom[room.scale] + 14, length: real_mm * at.scale, real_mm },
  };
}

/** What there are words for. Without a column on the left, everything is told on the right. */
function anchorsFor(section: Section, at: Fit, room: SystemRoom): readonly SideAnchor[] {
  return sideAnchors(section, at)
    .filter(({ key }) => room.labels[key] !== undefined)
    .map((anchor) => (room.left === 0 ? { ...anchor, side: 'right' } : anchor));
}

/** A hole that the sheet has a letter for; its equals are cut alike. */
function isMarked(hole: Section['holes'][number], { marks }: SystemRoom): boolean {
  return marks[`hole.${hole.for}.${hole.index}`] !== undefined;
}

type Placed = { readonly anchor: SideAnchor; readonly top: number; readonly height: number };

function columnHeight(anchors: readonly SideAnchor[], side: SideName, room: SystemRoom): number {
  const own = anchors.filter((one) => one.side === side);
  return own.reduce((sum, one) => sum + (room.labels[one.key] ?? 0), 0);
}

/** Labels of one side, pushed apart; the last in the order of importance go first where there are too many. */
function column(
  anchors: readonly SideAnchor[],
  side: SideName,
  room: SystemRoom,
  box: Layout['box'],
): readonly Placed[] {
  let own = anchors.filter((one) => one.side === side);
  while (columnHeight(own, side, room) > box.height) own = own.slice(0, -1);
  const sorted = own.sort((a, b) => a.y - b.y);
  const heightOf = (one: SideAnchor): number => room.labels[one.key] ?? 0;
  const tops = pushApart(
    sorted.map((one) => ({ middle: one.y, height: heightOf(one) })),
    0,
    box.height,
  );
  return sorted.map((anchor, i) => ({ anchor, top: tops[i] ?? 0, height: heightOf(anchor) }));
}

/** Level to the edge of the drawing, then slanting to the label. */
function leaderOf({ anchor: { x, y, side }, top, height }: Placed, box: Layout['box']): readonly Shape[] {
  if (x === null) return [];
  const middle = top + height / 2;
  const [bend, end, column] =
    side === 'left'
      ? [Math.min(x, 0) - 4, 16 - gap, 6 - gap]
      : [Math.max(x, box.width) + 4, box.width + gap - 16, box.width + gap - 6];
  const points = [[x, y] as const, [bend, y] as const, [end, middle] as const, [column, middle] as const];
  return [{ d: path(points, 'open'), paint: { stroke: 'black', width: leader } }];
}
