import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { area_m2, depthAt_mm, rim_L, volume_L } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { taperedBoxVolume_L } from '../../src/core/geometry/taperedBox.ts';
import type { Container } from '../../src/core/system.ts';
import { containerAndShare, shapes, twiceTheSize } from './geometryArbitraries.ts';

const runs = { numRuns: 200 };

function expectSame(ours: number, theirs: number, relative: number) {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.max(Math.abs(theirs), 1e-12));
}

describe.each(shapes)('%s', (shape) => {
  const law = (check: (container: Container, share: number) => void) =>
    fc.assert(
      fc.property(containerAndShare(shape), ([container, share]) => check(container, share)),
      runs,
    );

  test('gives back the depth that gave the volume', () => {
    law((container, share) => {
      const depth_mm = rim_mm(container) * Math.max(share, 1e-3);
      expectSame(depthAt_mm(container, volume_L(container, depth_mm)), depth_mm, 1e-9);
    });
  });

  test('gives back the volume that gave the depth', () => {
    law((container, share) => {
      const held_L = rim_L(container) * Math.max(share, 1e-6);
      expectSame(volume_L(container, depthAt_mm(container, held_L)), held_L, 1e-9);
    });
  });

  test('holds more the deeper the water', () => {
    law((container, share) => {
      const depth_mm = rim_mm(container) * share * 0.99;
      const deeper_mm = depth_mm + rim_mm(container) * 0.005;
      expect(volume_L(container, depth_mm)).toBeLessThan(volume_L(container, deeper_mm));
    });
  });

  test('holds eight times as much at twice the size', () => {
    law((container, share) => {
      const depth_mm = rim_mm(container) * share;
      expectSame(volume_L(twiceTheSize(container), 2 * depth_mm), 8 * volume_L(container, depth_mm), 1e-9);
    });
  });

  test('gains volume at the rate of its water surface', () => {
    law((container, share) => {
      const depth_mm = awayFromCorners(container, share);
      const little_mm = rim_mm(container) * 1e-5;
      const rate_m2 =
        (volume_L(container, depth_mm + little_mm) - volume_L(container, depth_mm - little_mm)) /
        (2 * little_mm);
      expectSame(rate_m2, area_m2(container, depth_mm), 1e-5);
    });
  });

  test('holds what its water surfaces add up to', () => {
    law((container, share) => {
      const depth_mm = rim_mm(container) * Math.max(share, 0.01);
      expectSame(addedUp_L(container, depth_mm), volume_L(container, depth_mm), 1e-6);
    });
  });

  test('holds nothing when it is empty and no more than its rim when it runs over', () => {
    law((container, share) => {
      expect(volume_L(container, 0)).toBe(0);
      expect(depthAt_mm(container, 0)).toBe(0);
      expect(volume_L(container, rim_mm(container) * (1 + share))).toBe(rim_L(container));
      expect(depthAt_mm(container, rim_L(container) * (1 + share))).toBe(rim_mm(container));
    });
  });
});

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
  const slices = 800;
  let sum_L = 0;
  for (const [index, top_mm] of ends.slice(1).entries()) {
    const floor_mm = ends[index] ?? 0;
    for (let slice = 0; slice < slices; slice++) {
      const angle = (Math.PI * (slice + 0.5)) / slices;
      const at_mm = floor_mm + ((top_mm - floor_mm) * (1 - Math.cos(angle))) / 2;
      const thick_mm = ((top_mm - floor_mm) * Math.sin(angle) * Math.PI) / (2 * slices);
      sum_L += area_m2(container, at_mm) * thick_mm;
    }
  }
  // A midpoint sum of this spacing is high by the same small share for every smooth surface.
  return sum_L * (Math.sin(Math.PI / (2 * slices)) / (Math.PI / (2 * slices)));
}

describe('shapes that are the same', () => {
  const size = fc.double({ min: 50, max: 3000, noNaN: true });
  const share = fc.double({ min: 0.001, max: 1, noNaN: true });

  function agree(one: (a: number, b: number) => Container, other: (a: number, b: number) => Container) {
    const check = (a: number, depth_mm: number, part: number) => {
      const at_mm = depth_mm * part;
      expectSame(volume_L(one(a, depth_mm), at_mm), volume_L(other(a, depth_mm), at_mm), 1e-12);
      expectSame(area_m2(one(a, depth_mm), at_mm), area_m2(other(a, depth_mm), at_mm), 1e-12);
    };
    fc.assert(fc.property(size, size, share, check), runs);
  }

  const cylinder = (diameter_mm: number, depth_mm: number): Container => ({
    shape: 'cylinder',
    diameter_mm,
    depth_mm,
  });
  const oval = (shape: 'obround' | 'ellipse') => (d: number, depth_mm: number) =>
    ({
      shape,
      length_mm: d,
      width_mm: d,
      floorLength_mm: d,
      floorWidth_mm: d,
      depth_mm,
    }) satisfies Container;

  test('an obround as wide as it is long is a cylinder', () => agree(oval('obround'), cylinder));
  test('an ellipse with equal axes is a cylinder', () => agree(oval('ellipse'), cylinder));

  test('a tapered round tub with equal diameters is a cylinder', () => {
    agree(
      (d, depth_mm) => ({ shape: 'taperedRound', topDiameter_mm: d, floorDiameter_mm: d, depth_mm }),
      cylinder,
    );
  });

  test('a tapered box with equal faces is a box', () => {
    agree(
      (a, depth_mm) => ({
        shape: 'taperedBox',
        topLength_mm: a,
        topWidth_mm: 700,
        floorLength_mm: a,
        floorWidth_mm: 700,
        depth_mm,
      }),
      (a, depth_mm) => ({ shape: 'box', length_mm: a, width_mm: 700, depth_mm }),
    );
  });

  test('a half drum holds half the drum', () => {
    const check = (diameter_mm: number, length_mm: number) => {
      const half: Container = { shape: 'lyingCylinder', diameter_mm, length_mm, depth_mm: diameter_mm / 2 };
      expectSame(2 * rim_L(half), rim_L(cylinder(diameter_mm, length_mm)), 1e-12);
    };
    fc.assert(fc.property(size, size, check), runs);
  });
});

describe('the frustum rule', () => {
  const frustum_L = (floor_mm2: number, top_mm2: number, depth_mm: number) =>
    ((depth_mm / 3) * (floor_mm2 + Math.sqrt(floor_mm2 * top_mm2) + top_mm2)) / 1e6;
  const size = fc.double({ min: 100, max: 2000, noNaN: true });
  const wider = fc.double({ min: 1, max: 2, noNaN: true });

  test('agrees where both faces have the same proportions', () => {
    const check = (length_mm: number, width_mm: number, by: number) => {
      const ours = taperedBoxVolume_L(length_mm, width_mm, by * length_mm, by * width_mm, 500);
      expectSame(ours, frustum_L(length_mm * width_mm, by * by * length_mm * width_mm, 500), 1e-9);
    };
    fc.assert(fc.property(size, size, wider, check), runs);
  });

  test('says too much where length and width taper differently', () => {
    const check = (length_mm: number, width_mm: number, by: number) => {
      const ours = taperedBoxVolume_L(length_mm, width_mm, (by + 0.1) * length_mm, width_mm, 500);
      const rule = frustum_L(length_mm * width_mm, (by + 0.1) * length_mm * width_mm, 500);
      expect(rule).toBeLessThan(ours);
    };
    fc.assert(fc.property(size, size, wider, check), runs);
  });
});
