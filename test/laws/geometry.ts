/** What every container obeys, whatever its shape. */
import fc from 'fast-check';
import { area_m2, depthAt_mm, rim_L, volume_L } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { taperedBoxVolume_L } from '../../src/core/geometry/taperedBox.ts';
import type { Container } from '../../src/core/system.ts';
import { containerAndShare, shapes, twiceTheSize } from '../core/geometryArbitraries.ts';
import { atMost, equal, less, same } from './claims.ts';
import { type FormulaLaw, law } from './law.ts';

type Holds = (container: Container, share: number) => void;

function ofEveryShape(name: string, holds: Holds): readonly FormulaLaw[] {
  return shapes.map((shape) =>
    law(name, containerAndShare(shape), ([container, share]) => holds(container, share), shape),
  );
}

/** Depths where the surface changes smoothly: inside a segment of a dip table, off floor and rim elsewhere. */
function awayFromCorners(container: Container, share: number): number {
  if (container.shape !== 'dipTable') return container.depth_mm * (0.02 + 0.96 * share);
  const corners = [0, ...container.dips.map((dip) => dip.depth_mm)];
  const lower = Math.min(Math.floor(share * (corners.length - 1)), corners.length - 2);
  return ((corners[lower] ?? 0) + (corners[lower + 1] ?? 0)) / 2;
}

/** Litres below a depth, summed from surfaces; a cosine spacing crowds them where a lying cylinder turns fast. */
function addedUp_L(container: Container, depth_mm: number): number {
  const corners = container.shape === 'dipTable' ? container.dips.map((dip) => dip.depth_mm) : [];
  const ends = [0, ...corners.filter((corner) => corner < depth_mm), depth_mm];
  let sum_L = 0;
  for (const [index, top_mm] of ends.slice(1).entries()) {
    const floor_mm = ends[index] ?? 0;
    for (const { middle, width } of slices) {
      sum_L += area_m2(container, floor_mm + (top_mm - floor_mm) * middle) * (top_mm - floor_mm) * width;
    }
  }
  return sum_L;
}

/** A midpoint sum of this spacing is high by the same small share for every smooth surface; that is taken off. */
const slices = Array.from({ length: 400 }, (_, slice) => {
  const half = Math.PI / 800;
  const angle = half * (2 * slice + 1);
  return { middle: (1 - Math.cos(angle)) / 2, width: (Math.sin(angle) * half * Math.sin(half)) / half };
});

const everyShape: readonly FormulaLaw[] = [
  ...ofEveryShape('a container gives back the depth that gave the volume', (container, share) => {
    const depth_mm = rim_mm(container) * Math.max(share, 1e-3);
    same(depthAt_mm(container, volume_L(container, depth_mm)), depth_mm, 1e-9);
  }),
  ...ofEveryShape('a container gives back the volume that gave the depth', (container, share) => {
    const held_L = rim_L(container) * Math.max(share, 1e-6);
    same(volume_L(container, depthAt_mm(container, held_L)), held_L, 1e-9);
  }),
  ...ofEveryShape('a container holds more the deeper the water', (container, share) => {
    const depth_mm = rim_mm(container) * share * 0.99;
    less(volume_L(container, depth_mm), volume_L(container, depth_mm + rim_mm(container) * 0.005));
  }),
  ...ofEveryShape('a container holds eight times as much at twice the size', (container, share) => {
    const depth_mm = rim_mm(container) * share;
    same(volume_L(twiceTheSize(container), 2 * depth_mm), 8 * volume_L(container, depth_mm), 1e-9);
  }),
  ...ofEveryShape('a container gains volume at the rate of its water surface', (container, share) => {
    const depth_mm = awayFromCorners(container, share);
    const little_mm = rim_mm(container) * 1e-5;
    const gained_L = volume_L(container, depth_mm + little_mm) - volume_L(container, depth_mm - little_mm);
    same(gained_L / (2 * little_mm), area_m2(container, depth_mm), 1e-5);
  }),
  ...ofEveryShape('a container holds what its water surfaces add up to', (container, share) => {
    const depth_mm = rim_mm(container) * Math.max(share, 0.01);
    same(addedUp_L(container, depth_mm), volume_L(container, depth_mm), 1e-5);
  }),
  ...ofEveryShape(
    'a container holds nothing when empty and its rim when it runs over',
    (container, share) => {
      equal(volume_L(container, 0), 0);
      equal(depthAt_mm(container, 0), 0);
      equal(volume_L(container, rim_mm(container) * (1 + share)), rim_L(container));
      equal(depthAt_mm(container, rim_L(container) * (1 + share)), rim_mm(container));
    },
  ),
];

const size = fc.double({ min: 50, max: 3000, noNaN: true });
const part = fc.double({ min: 0.001, max: 1, noNaN: true });
type OfTwo = (a: number, b: number) => Container;

function alike(name: string, one: OfTwo, other: OfTwo): FormulaLaw {
  return law(name, fc.tuple(size, size, part), ([a, depth_mm, share]) => {
    const at_mm = depth_mm * share;
    same(volume_L(one(a, depth_mm), at_mm), volume_L(other(a, depth_mm), at_mm), 1e-12);
    same(area_m2(one(a, depth_mm), at_mm), area_m2(other(a, depth_mm), at_mm), 1e-12);
  });
}

const cylinder: OfTwo = (diameter_mm, depth_mm) => ({ shape: 'cylinder', diameter_mm, depth_mm });
const oval =
  (shape: 'obround' | 'ellipse'): OfTwo =>
  (d, depth_mm) => ({ shape, length_mm: d, width_mm: d, floorLength_mm: d, floorWidth_mm: d, depth_mm });
const bucket: OfTwo = (d, depth_mm) => ({
  shape: 'taperedRound',
  topDiameter_mm: d,
  floorDiameter_mm: d,
  depth_mm,
});
const tote: OfTwo = (a, depth_mm) => ({
  shape: 'taperedBox',
  topLength_mm: a,
  topWidth_mm: 700,
  floorLength_mm: a,
  floorWidth_mm: 700,
  depth_mm,
});
const box: OfTwo = (a, depth_mm) => ({ shape: 'box', length_mm: a, width_mm: 700, depth_mm });

const face = fc.double({ min: 100, max: 2000, noNaN: true });
const wider = fc.double({ min: 1, max: 2, noNaN: true });

function frustum_L(floor_mm2: number, top_mm2: number): number {
  return ((500 / 3) * (floor_mm2 + Math.sqrt(floor_mm2 * top_mm2) + top_mm2)) / 1e6;
}

/** Laws of containers. */
export const geometryLaws: readonly FormulaLaw[] = [
  ...everyShape,
  alike('an obround as wide as it is long is a cylinder', oval('obround'), cylinder),
  alike('an ellipse with equal axes is a cylinder', oval('ellipse'), cylinder),
  alike('a tapered round tub with equal diameters is a cylinder', bucket, cylinder),
  alike('a tapered box with equal faces is a box', tote, box),
  law('a half drum holds half the drum', fc.tuple(size, size), ([diameter_mm, length_mm]) => {
    const half: Container = { shape: 'lyingCylinder', diameter_mm, length_mm, depth_mm: diameter_mm / 2 };
    same(2 * rim_L(half), rim_L(cylinder(diameter_mm, length_mm)), 1e-12);
  }),
  law(
    'the frustum rule agrees where both faces have the same proportions',
    fc.tuple(face, face, wider),
    (one) => {
      const [l, w, by] = one;
      same(taperedBoxVolume_L(l, w, by * l, by * w, 500), frustum_L(l * w, by * by * l * w), 1e-9);
    },
  ),
  law(
    'the frustum rule says too much where length and width taper differently',
    fc.tuple(face, face, wider),
    (one) => {
      const [l, w, by] = one;
      less(frustum_L(l * w, (by + 0.1) * l * w), taperedBoxVolume_L(l, w, (by + 0.1) * l, w, 500));
      atMost(taperedBoxVolume_L(l, w, by * l, w, 500), taperedBoxVolume_L(l, w, (by + 0.1) * l, w, 500));
    },
  ),
];
