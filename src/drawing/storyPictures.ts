/** Four small pictures of how waste becomes food: fish, what they give off, stones with life on them, a plant. */
import { type Paint, path, type Shape } from './shape.ts';

/** Each picture fills this box, in paper units. */
export const storyBox = { width: 400, height: 240 };

const line: Paint = { stroke: 'black', width: 7, cap: 'round' };
const solid: Paint = { fill: 'black' };

type Spot = readonly [x: number, y: number];

/** An oval of straight pieces, as fine as a wall's reader can see. */
function oval([x, y]: Spot, across: number, down: number): string {
  const steps = 48;
  const points = Array.from({ length: steps }, (_, i): Spot => {
    const angle = (i * 2 * Math.PI) / steps;
    return [x + across * Math.cos(angle), y + down * Math.sin(angle)];
  });
  return path(points, 'closed');
}

function drawn(d: readonly string[], paint: Paint): Shape {
  return { d: d.join(''), paint };
}

/** What swims in the tank. */
export function fishPicture(): readonly Shape[] {
  const tail: readonly Spot[] = [
    [286, 120],
    [372, 62],
    [350, 120],
    [372, 178],
  ];
  const fin: readonly Spot[] = [
    [150, 62],
    [200, 26],
    [220, 66],
  ];
  return [
    drawn([path(tail, 'closed'), path(fin, 'closed')], { ...line, fill: 'white' }),
    drawn([oval([170, 120], 130, 62)], { ...line, fill: 'white' }),
    drawn([oval([92, 106], 10, 10)], solid),
    drawn([path([[126, 84] as const, [138, 120] as const, [126, 156] as const], 'open')], line),
  ];
}

/** Dots in water: nothing to see in the tank, and still there. */
export function wastePicture(): readonly Shape[] {
  const wave = Array.from({ length: 41 }, (_, i): Spot => [10 + i * 9.5, 42 + 14 * Math.sin(i * 0.62)]);
  const dots: readonly Spot[] = [
    ...([
      [60, 110],
      [130, 90],
      [206, 124],
      [284, 96],
      [346, 130],
    ] as const),
    ...([
      [94, 174],
      [170, 190],
      [250, 176],
      [322, 200],
    ] as const),
  ];
  return [
    drawn([path(wave, 'open')], line),
    drawn(
      dots.map((dot) => oval(dot, 13, 13)),
      solid,
    ),
  ];
}

/** Stones, and what lives on them as small dots all round. */
export function stonesPicture(): readonly Shape[] {
  const stones = [
    { at: [100, 160], across: 84, down: 66 },
    { at: [294, 160], across: 90, down: 66 },
    { at: [196, 74], across: 82, down: 58 },
  ] as const;
  const dots = stones.flatMap(({ at: [x, y], across, down }) =>
    Array.from({ length: 9 }, (_, i): Spot => {
      const angle = (i * 2 * Math.PI) / 9;
      return [x + (across - 22) * Math.cos(angle), y + (down - 22) * Math.sin(angle)];
    }),
  );
  return [
    drawn(
      stones.map(({ at, across, down }) => oval(at, across, down)),
      { ...line, fill: 'white' },
    ),
    drawn(
      dots.map((dot) => oval(dot, 7, 7)),
      solid,
    ),
  ];
}

/** Leaves over the water, roots in it. */
export function plantPicture(): readonly Shape[] {
  const stem: readonly Spot[] = [
    [200, 150],
    [200, 44],
  ];
  const roots: readonly (readonly Spot[])[] = [
    [
      [200, 150],
      [196, 228],
    ],
    [
      [200, 158],
      [152, 214],
    ],
    [
      [200, 158],
      [248, 214],
    ],
  ];
  const water: readonly Spot[] = [
    [30, 158],
    [370, 158],
  ];
  return [
    drawn([path(stem, 'open'), ...roots.map((root) => path(root, 'open'))], line),
    drawn([path(water, 'open')], { ...line, width: 5, dash: [20, 14] }),
    drawn([leaf([200, 132], 1), leaf([200, 132], -1), leaf([200, 84], 1), leaf([200, 84], -1)], {
      ...line,
      fill: 'white',
    }),
    drawn([oval([200, 34], 26, 30)], { ...line, fill: 'white' }),
  ];
}

/** To the right (1) or to the left (-1) of a stem. */
function leaf([x, y]: Spot, side: 1 | -1): string {
  const points: readonly Spot[] = [
    [0, 0],
    [36, -34],
    [90, -46],
    [128, -34],
    [92, -8],
    [42, 4],
  ];
  return path(
    points.map(([right, down]): Spot => [x + side * right, y + down]),
    'closed',
  );
}
