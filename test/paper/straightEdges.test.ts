import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import type { Clip, Page, Path, Shape, Stroke } from '../../src/paper/page.ts';
import { rectanglePath } from '../../src/paper/path.ts';
import { straightEdge } from '../../src/paper/straightEdges.ts';
import { press } from '../sheets/laidOut.ts';

const black = { red: 0, green: 0, blue: 0, alpha_frac: 1 };
const stroke: Stroke = {
  ink: black,
  width_pt: 2,
  cap: 'butt',
  join: 'miter',
  miterLimit: 4,
  dashes_pt: [],
  dashStart_pt: 0,
};
const box = (x: number, y: number, right: number, bottom: number): Path =>
  rectanglePath({ x, y, width: right - x, height: bottom - y });
const cutTo = (path: Path, within: Clip | null = null, rule: Clip['rule'] = 'nonzero'): Clip => {
  return { path, rule, within };
};
const shape = (path: Path, clip: Clip | null): Shape => {
  return { kind: 'shape', node: 0, path, fill: null, stroke, clip };
};

/** The edges of a box from 10 to 60 and from 10 to 40, as the layout engine draws them. */
const around = box(10, 10, 60, 40);
const frame = cutTo([...around, ...box(10, 10, 59, 40)], cutTo(around), 'evenodd');
const right = shape(
  [
    ['M', 60, 10],
    ['L', 60, 40],
  ],
  cutTo(around, frame),
);
const all = shape(
  [
    ['M', 10, 10],
    ['L', 60, 10],
    ['L', 60, 40],
    ['L', 10, 40],
    ['L', 10, 10],
  ],
  cutTo(around),
);

function pixels(item: Shape): Buffer {
  const page = { width_pt: 70, height_pt: 50, title: '', lang: 'en', packs: [], items: [item], nodes: [] };
  const size = { fitTo: { mode: 'width', value: 700 } } as const;
  return new Resvg(press.toSvg(page as Page), size).render().pixels;
}

describe('an edge of a box', () => {
  test.each([
    ['one edge', right],
    ['all four', all],
  ])('is drawn without a cut, and covers the same paper: %s', (_, drawn) => {
    const plain = straightEdge(drawn);
    expect(plain.clip).toBeNull();
    expect(plain.stroke?.width_pt).toBe(1);
    expect(pixels(plain).equals(pixels(drawn))).toBe(true);
    expect(pixels(drawn).some((value) => value > 0)).toBe(true);
  });

  test('stays as it is where it is cut aslant, round, by more, or in its middle', () => {
    const aslant: Path = [['M', 60, 10], ['L', 60, 40], ['L', 40, 30], ['L', 40, 20], ['Z']];
    const round = rectanglePath({ x: 10, y: 10, width: 50, height: 30 }, 4);
    const parted = cutTo([...around, ...box(50, 20, 70, 30)], null, 'evenodd');
    for (const clip of [cutTo(aslant), cutTo(round), parted]) {
      const drawn = shape(right.path, clip);
      expect(straightEdge(drawn)).toBe(drawn);
    }
    for (const drawn of [
      { ...right, stroke: { ...stroke, dashes_pt: [2, 2] } },
      shape(round, cutTo(round)),
      shape(around, cutTo(box(10, 10, 60, 30))),
      shape(right.path, null),
    ])
      expect(straightEdge(drawn)).toBe(drawn);
  });
});
