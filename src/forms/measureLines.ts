/** Outlines and measure lines of the small drawings beside the fields, on a field of 260 by 216. Not to scale. */
import type { Shape } from '../core/system.ts';

export type At = readonly [x: number, y: number];
export type Dimension = {
  readonly key: string;
  readonly from: At;
  readonly to: At;
  /** A water or media level drawn at the upper end, from x to x. */
  readonly level?: readonly [from: number, to: number];
};

type Outline = { readonly d: string; readonly line: 'wall' | 'ground' | 'gone' };

// Side view: rim at y 30, floor at y 110, ground at y 128. View from above: y 146 to 206.
const straight: Outline = { d: 'M60,30V110H200V30', line: 'wall' };
const leaning: Outline = { d: 'M50,30L68,110H192L210,30', line: 'wall' };
const ground: Outline = { d: 'M20,128H240', line: 'ground' };

const circle = (cx: number, cy: number, r: number): string =>
  `M${cx - r},${cy}a${r},${r} 0 1,0 ${2 * r},0a${r},${r} 0 1,0 ${-2 * r},0Z`;
const oval = (rx: number, ry: number): string =>
  `M${130 - rx},176a${rx},${ry} 0 1,0 ${2 * rx},0a${rx},${ry} 0 1,0 ${-2 * rx},0Z`;
const roundEnds = (half: number, r: number): string =>
  `M${130 - half + r},${176 - r}h${2 * (half - r)}a${r},${r} 0 0,1 0,${2 * r}h${-2 * (half - r)}a${r},${r} 0 0,1 0,${-2 * r}Z`;

const wall = (d: string): Outline => ({ d, line: 'wall' });
const gone = (d: string): Outline => ({ d, line: 'gone' });

export const outlines: { readonly [S in Shape]: readonly Outline[] } = {
  box: [straight, ground, wall('M60,148H200V204H60Z')],
  taperedBox: [leaning, ground, wall('M50,146H210V206H50Z'), gone('M68,156H192V196H68Z')],
  cylinder: [straight, ground, wall(circle(130, 176, 30))],
  taperedRound: [leaning, ground, wall(circle(130, 176, 30)), gone(circle(130, 176, 20))],
  lyingCylinder: [
    wall('M70,50a60,60 0 0,0 120,0'),
    gone('M70,50a60,60 0 0,1 17.6,-42.4M190,50a60,60 0 0,0 -17.6,-42.4'),
    ground,
    wall('M60,148H200V204H60Z'),
  ],
  obround: [leaning, ground, wall(roundEnds(80, 30)), gone(roundEnds(62, 20))],
  ellipse: [leaning, ground, wall(oval(80, 30)), gone(oval(62, 20))],
  dipTable: [
    wall('M56,30C58,60 50,70 72,92C92,112 110,104 130,110C160,114 186,100 192,76C196,58 206,50 204,30'),
    ground,
    wall(
      'M64,152C90,140 130,152 160,148C204,146 210,190 190,200C150,210 120,196 90,204C56,206 50,164 64,152Z',
    ),
  ],
};

const across = (key: string, y: number, x1: number, x2: number): Dimension => ({
  key,
  from: [x1, y],
  to: [x2, y],
});
const upright = (key: string, x: number, y1: number, y2: number): Dimension => ({
  key,
  from: [x, y1],
  to: [x, y2],
});

const depth = upright('depth_mm', 34, 110, 30);

export const containerLines: { readonly [S in Shape]: readonly Dimension[] } = {
  box: [across('length_mm', 16, 60, 200), upright('width_mm', 34, 204, 148), depth],
  taperedBox: [
    across('topLength_mm', 16, 50, 210),
    upright('topWidth_mm', 34, 206, 146),
    across('floorLength_mm', 119, 68, 192),
    upright('floorWidth_mm', 226, 196, 156),
    upright('depth_mm', 28, 110, 30),
  ],
  cylinder: [across('diameter_mm', 16, 60, 200), depth],
  taperedRound: [across('topDiameter_mm', 16, 50, 210), across('floorDiameter_mm', 119, 68, 192), depth],
  lyingCylinder: [
    across('diameter_mm', 50, 70, 190),
    across('length_mm', 176, 60, 200),
    upright('depth_mm', 44, 110, 50),
  ],
  obround: [
    across('length_mm', 16, 50, 210),
    upright('width_mm', 34, 206, 146),
    across('floorLength_mm', 119, 68, 192),
    upright('floorWidth_mm', 226, 196, 156),
    upright('depth_mm', 28, 110, 30),
  ],
  ellipse: [
    across('length_mm', 16, 50, 210),
    upright('width_mm', 34, 206, 146),
    across('floorLength_mm', 119, 68, 192),
    upright('floorWidth_mm', 226, 196, 156),
    upright('depth_mm', 28, 110, 30),
  ],
  dipTable: [depth, across('outsideLength_mm', 16, 56, 204), upright('outsideWidth_mm', 34, 206, 146)],
};

const level = (key: string, x: number, y: number, from: number, to: number): Dimension => ({
  key,
  from: [x, 110],
  to: [x, y],
  level: [from, to],
});

/** Levels in the container, beside its own measures. */
export const vesselLines: readonly Dimension[] = [
  level('full_mm', 110, 58, 86, 174),
  { key: 'above_mm', from: [218, 128], to: [218, 110] },
];

export const bedLines: readonly Dimension[] = [
  level('mediaDepth_mm', 104, 56, 86, 174),
  level('waterLine_mm', 132, 66, 88, 172),
  level('drained_mm', 158, 96, 118, 170),
  { key: 'above_mm', from: [218, 128], to: [218, 110] },
];
