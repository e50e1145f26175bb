import { describe, expect, test } from 'vitest';
import { boxArea_m2, boxVolume_L } from '../../src/core/geometry/box.ts';
import { area_m2, depthAt_mm, rim_L, volume_L, width_mm } from '../../src/core/geometry/container.ts';
import { circleArea_m2, cylinderVolume_L } from '../../src/core/geometry/cylinder.ts';
import { depthWhere_mm } from '../../src/core/geometry/depthWhere.ts';
import { dipTableArea_m2, dipTableDepth_mm, dipTableVolume_L } from '../../src/core/geometry/dipTable.ts';
import { ellipseArea_m2, ellipseVolume_L } from '../../src/core/geometry/ellipse.ts';
import {
  chord_mm,
  lyingCylinderArea_m2,
  lyingCylinderVolume_L,
} from '../../src/core/geometry/lyingCylinder.ts';
import { obroundArea_m2, obroundVolume_L } from '../../src/core/geometry/obround.ts';
import { prismatoidVolume_L } from '../../src/core/geometry/prismatoid.ts';
import { rim_mm, wetDepth_mm } from '../../src/core/geometry/rim.ts';
import { surfaceDiameter_mm } from '../../src/core/geometry/surface.ts';
import { measureAt_mm } from '../../src/core/geometry/taper.ts';
import { taperedRoundDepth_mm, taperedRoundVolume_L } from '../../src/core/geometry/taperedRound.ts';
import type { Container, Shape } from '../../src/core/system.ts';

const containers = {
  box: { shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 },
  taperedBox: {
    shape: 'taperedBox',
    topLength_mm: 700,
    topWidth_mm: 400,
    floorLength_mm: 500,
    floorWidth_mm: 300,
    depth_mm: 600,
  },
  cylinder: { shape: 'cylinder', diameter_mm: 570, depth_mm: 850 },
  taperedRound: { shape: 'taperedRound', topDiameter_mm: 440, floorDiameter_mm: 240, depth_mm: 350 },
  lyingCylinder: { shape: 'lyingCylinder', diameter_mm: 570, length_mm: 850, depth_mm: 285 },
  obround: {
    shape: 'obround',
    length_mm: 1000,
    width_mm: 600,
    floorLength_mm: 900,
    floorWidth_mm: 500,
    depth_mm: 500,
  },
  ellipse: {
    shape: 'ellipse',
    length_mm: 1000,
    width_mm: 600,
    floorLength_mm: 800,
    floorWidth_mm: 400,
    depth_mm: 500,
  },
  dipTable: {
    shape: 'dipTable',
    dips: [
      { depth_mm: 100, volume_L: 20 },
      { depth_mm: 300, volume_L: 80 },
    ],
    outsideLength_mm: 700,
    outsideWidth_mm: 500,
    depth_mm: 300,
  },
} as const satisfies { readonly [S in Shape]: Container & { readonly shape: S } };

const all: readonly Container[] = Object.values(containers);

describe('a container', () => {
  test.each([
    ['box', 1000],
    ['taperedBox', 600],
    ['cylinder', 570],
    ['taperedRound', 340],
    ['lyingCylinder', 493.6344801],
    ['obround', 950],
    ['ellipse', 900],
    ['dipTable', 700],
  ] as const)('of shape %s is drawn so wide halfway up: %d mm', (shape, expected_mm) => {
    const container = containers[shape];
    expect(width_mm(container, rim_mm(container) / 2)).toBeCloseTo(expected_mm, 6);
  });

  test('on its side may be cut above its middle and narrows again', () => {
    const drum: Container = { shape: 'lyingCylinder', diameter_mm: 600, length_mm: 900, depth_mm: 450 };
    expect(width_mm(drum, 300)).toBe(600);
    expect(width_mm(drum, 450)).toBeLessThan(width_mm(drum, 400));
    expect(area_m2(drum, 450)).toBeLessThan(area_m2(drum, 300));
  });

  test('with a dip table reads straight between two dips', () => {
    expect(volume_L(containers.dipTable, 50)).toBe(10);
    expect(volume_L(containers.dipTable, 200)).toBe(50);
    expect(depthAt_mm(containers.dipTable, 50)).toBe(200);
    expect(area_m2(containers.dipTable, 200)).toBeCloseTo(0.3, 12);
  });

  test('with a dip table that begins with a line for empty reads the same', () => {
    const withEmpty = {
      ...containers.dipTable,
      dips: [{ depth_mm: 0, volume_L: 0 }, ...containers.dipTable.dips],
    };
    expect(volume_L(withEmpty, 50)).toBe(10);
  });

  test('whose dip table ends below the rim counts nothing above the last dip', () => {
    const deeper: Container = { ...containers.dipTable, depth_mm: 400 };
    expect(rim_mm(deeper)).toBe(300);
    expect(rim_L(deeper)).toBe(80);
    expect(volume_L(deeper, 350)).toBe(80);
  });

  test('with a sloping wall is as deep as its volume says, whichever way it slopes', () => {
    const inward: Container = {
      ...containers.taperedRound,
      topDiameter_mm: 240,
      floorDiameter_mm: 440,
    };
    const upright: Container = { ...containers.taperedRound, topDiameter_mm: 240 };
    for (const container of [containers.taperedRound, inward, upright]) {
      expect(depthAt_mm(container, volume_L(container, 123))).toBeCloseTo(123, 9);
    }
  });

  test('may have walls that meet in a line or a point at the floor', () => {
    const trough: Container = { ...containers.taperedBox, floorWidth_mm: 0 };
    const cone: Container = { ...containers.taperedRound, floorDiameter_mm: 0 };
    for (const container of [trough, cone]) {
      expect(depthAt_mm(container, rim_L(container) / 3)).toBeGreaterThan(0);
      expect(area_m2(container, 0)).toBe(0);
    }
    expect(rim_L(cone)).toBeCloseTo(cylinderVolume_L(440, 350) / 3, 9);
  });
});

describe('at the edges', () => {
  test.each(all.map((container) => [container.shape, container] as const))(
    'a %s holds nothing at 0, its fill at the rim, and no more just past it',
    (_shape, container) => {
      const rim = rim_mm(container);
      expect(volume_L(container, 0)).toBe(0);
      expect(volume_L(container, rim)).toBe(rim_L(container));
      expect(volume_L(container, rim + 1e-6)).toBe(rim_L(container));
      expect(area_m2(container, rim + 1)).toBe(area_m2(container, rim));
      expect(width_mm(container, rim + 1)).toBe(width_mm(container, rim));
      expect(depthAt_mm(container, 0)).toBe(0);
      expect(depthAt_mm(container, rim_L(container))).toBe(rim);
      expect(depthAt_mm(container, rim_L(container) + 1e-6)).toBe(rim);
    },
  );

  test.each(all.map((container) => [container.shape, container] as const))(
    'a %s refuses a depth or a volume below nothing, for that is our own mistake',
    (_shape, container) => {
      for (const below of [-1e-9, Number.NaN]) {
        expect(() => volume_L(container, below)).toThrow(RangeError);
        expect(() => area_m2(container, below)).toThrow(RangeError);
        expect(() => width_mm(container, below)).toThrow(RangeError);
        expect(() => depthAt_mm(container, below)).toThrow(RangeError);
      }
    },
  );

  test('a whole drum on its side closes at the top', () => {
    const drum: Container = { shape: 'lyingCylinder', diameter_mm: 600, length_mm: 900, depth_mm: 600 };
    expect(area_m2(drum, 600)).toBe(0);
    expect(rim_L(drum)).toBeCloseTo(cylinderVolume_L(600, 900), 9);
  });

  test('a drum cannot be cut above its top', () => {
    expect(() => rim_L({ ...containers.lyingCylinder, depth_mm: 571 })).toThrow(RangeError);
  });

  test('an obround is never wider than long', () => {
    expect(obroundArea_m2(600, 600)).toBeCloseTo(circleArea_m2(600), 12);
    expect(() => obroundArea_m2(599, 600)).toThrow(/599, must be 600 or more/);
  });

  test('a dip table must rise and must reach', () => {
    const flat = [
      { depth_mm: 100, volume_L: 20 },
      { depth_mm: 200, volume_L: 20 },
    ];
    expect(() => dipTableVolume_L(flat, 150)).toThrow(/does not rise at 200 mm, 20 L/);
    expect(() => dipTableVolume_L([], 1)).toThrow(/ends at 0/);
    expect(() => dipTableVolume_L(containers.dipTable.dips, 301)).toThrow(/ends at 300/);
    expect(() => dipTableDepth_mm(containers.dipTable.dips, 80.1)).toThrow(/ends at 80/);
    expect(() => dipTableArea_m2(containers.dipTable.dips, -1)).toThrow(/0 or more/);
  });

  test('at a dip the surface is that of the water below it', () => {
    expect(dipTableArea_m2(containers.dipTable.dips, 100)).toBe(0.2);
    expect(dipTableArea_m2(containers.dipTable.dips, 100.001)).toBeCloseTo(0.3, 12);
  });

  test.each<readonly [string, () => number]>([
    ['length of a box', () => boxArea_m2(-1, 1)],
    ['width of a box', () => boxArea_m2(1, -1)],
    ['depth of a box', () => boxVolume_L(1, 1, -1)],
    ['diameter of a circle', () => circleArea_m2(Number.NaN)],
    ['depth of a cylinder', () => cylinderVolume_L(1, -1)],
    ['length of an ellipse', () => ellipseArea_m2(-1, 1)],
    ['width of an ellipse', () => ellipseArea_m2(1, -1)],
    ['depth of an ellipse', () => ellipseVolume_L(1, 1, 1, 1, -1)],
    ['width of an obround', () => obroundArea_m2(1, -1)],
    ['depth of an obround', () => obroundVolume_L(1, 1, 1, 1, -1)],
    ['area of a prismatoid', () => prismatoidVolume_L(1, -1, 1, 1)],
    ['diameter of a lying cylinder', () => chord_mm(0, 0)],
    ['depth of a lying cylinder', () => lyingCylinderVolume_L(600, 900, 601)],
    ['length of a lying cylinder', () => lyingCylinderVolume_L(600, -1, 300)],
    ['length of its surface', () => lyingCylinderArea_m2(600, -1, 300)],
    ['floor of a taper', () => measureAt_mm(-1, 1, 1, 1)],
    ['top of a taper', () => measureAt_mm(1, -1, 1, 1)],
    ['rim of a taper', () => measureAt_mm(1, 1, 0, 0)],
    ['depth past the rim of a taper', () => measureAt_mm(1, 2, 100, 100.1)],
    ['floor of a bucket', () => taperedRoundVolume_L(-1, 1, 1)],
    ['nothing in a bucket', () => taperedRoundDepth_mm(1, 1, 1, 0)],
    ['volume that is never reached', () => depthWhere_mm((h) => h, 11, 10)],
    ['depth over a bucket', () => surfaceDiameter_mm(containers.taperedRound, 351)],
    ['depth below a floor', () => wetDepth_mm(containers.box, -1)],
  ])('refuses an impossible %s', (_what, sum) => {
    expect(sum).toThrow(RangeError);
  });

  test('the search for a depth ends on the last digit a number can carry', () => {
    expect(depthWhere_mm((h) => h * h, 2, 10)).toBeCloseTo(Math.SQRT2, 15);
    expect(depthWhere_mm((h) => h, 0, 10)).toBeLessThan(1e-300);
    expect(depthWhere_mm((h) => h, 10, 10)).toBe(10);
    expect(depthWhere_mm((h) => h, 5e-324, 10)).toBe(5e-324);
    // A jump has no depth of its own; the search ends at its foot or its top.
    expect(depthWhere_mm((h) => (h > 5 ? h + 100 : h), 50, 10)).toBeCloseTo(5, 14);
    // So flat at the floor that curves mislead.
    expect(depthWhere_mm((h) => h ** 9, 1e-9, 1000)).toBeCloseTo(0.1, 14);
  });
});
