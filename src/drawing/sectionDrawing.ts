/** The section of a plan as placed shapes and labels. May scale and place; never makes a figure. */
import type { Section, SectionLevel } from '../core/plan/figure.ts';
import { anchorsOf, tagsOf } from './anchors.ts';
import { extentOf, type Fit, fitInto, roundLength_mm } from './fit.ts';
import { pushApart } from './labels.ts';
import { leader, sectionShapes, surface } from './sectionShapes.ts';
import { type Drawing, type Paint, path, type Shape } from './shape.ts';

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
    shapes: [...sectionShapes(section, at, box.width, levelPaint), ...leaders, barShape(scaleBar)],
    labels,
    labelLeft,
    tags: tagsOf(section, at, box),
    bar: scaleBar,
  };
}

/** Water surface: a line at the full level, dashes where the water only comes at times. */
function levelPaint({ key }: SectionLevel): Paint | null {
  if (key === 'full') return { stroke: 'black', width: surface };
  const told = key === 'low' || key === 'waterLine';
  return told ? { stroke: 'black', width: surface + 1, dash: [14, 9] } : null;
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
