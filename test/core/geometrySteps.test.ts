import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rim_L, volume_L } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { surfaceSteps } from '../../src/core/geometry/surfaceSteps.ts';
import { volumeStep } from '../../src/core/geometry/volumeStep.ts';
import type { Step } from '../../src/core/plan/figure.ts';
import type { Container } from '../../src/core/system.ts';
import { containerAndShare, shapes } from './geometryArbitraries.ts';
import { workedOut } from './workedOut.ts';

function expectTrue(step: Step) {
  const ours = workedOut(step);
  expect(Math.abs(ours - step.gives.value)).toBeLessThanOrEqual(1e-8 * Math.abs(step.gives.value) + 1e-9);
}

describe.each(shapes)('the worked step of a %s', (shape) => {
  test('gives its value when the printed formula is worked out', () => {
    const check = ([container, share]: readonly [Container, number]) => {
      // The acos of a printed formula loses digits close to the floor and to the top of a drum; ours does not.
      const depth_mm = rim_mm(container) * Math.max(share, 1e-3);
      const step = volumeStep(container, depth_mm);
      expectTrue(step);
      expect(step.gives.value).toBe(volume_L(container, depth_mm));
      for (const slope of surfaceSteps(container, depth_mm)) expectTrue(slope);
    };
    fc.assert(fc.property(containerAndShare(shape), check), { numRuns: 200 });
  });
});

describe('the measures at the water surface', () => {
  const tub: Container = {
    shape: 'taperedBox',
    topLength_mm: 700,
    topWidth_mm: 300,
    floorLength_mm: 500,
    floorWidth_mm: 300,
    depth_mm: 600,
  };

  test('are worked out where a wall slopes, and only there', () => {
    expect(surfaceSteps(tub, 300).map((step) => [step.gives.term, step.gives.value])).toEqual([
      ['surfaceLength', 600],
    ]);
  });

  test('stand in the volume step as they were worked out', () => {
    const bucket: Container = {
      shape: 'taperedRound',
      topDiameter_mm: 440,
      floorDiameter_mm: 240,
      depth_mm: 350,
    };
    const [diameter] = surfaceSteps(bucket, 175);
    expect(diameter?.gives).toEqual({ sign: 'D', term: 'surfaceDiameter', value: 340, unit: 'mm' });
    expect(volumeStep(bucket, 175).symbols).toContainEqual(diameter?.gives);
  });
});

describe('at the edges', () => {
  const drum: Container = { shape: 'lyingCylinder', diameter_mm: 570, length_mm: 850, depth_mm: 400 };

  test('a drum filled to its middle can be worked by hand, any other depth not', () => {
    expect(volumeStep(drum, 285).byHand).toBe('yes');
    expectTrue(volumeStep(drum, 285));
    expect(volumeStep(drum, 285.001).byHand).toBe('no');
    expectTrue(volumeStep(drum, 285.001));
  });

  test('water over the rim is shown at the rim', () => {
    const step = volumeStep(drum, 500);
    expect(step.gives.value).toBe(rim_L(drum));
    expect(step.symbols.find((symbol) => symbol.term === 'waterDepth')?.value).toBe(400);
  });

  test('an empty container gives nothing and still a true formula', () => {
    expect(volumeStep(drum, 0).gives.value).toBe(0);
    expectTrue(volumeStep(drum, 0));
  });

  test('a full sloping tub needs no step for its surface, which is its rim', () => {
    const tub: Container = {
      shape: 'ellipse',
      length_mm: 1000,
      width_mm: 600,
      floorLength_mm: 800,
      floorWidth_mm: 400,
      depth_mm: 500,
    };
    expect(surfaceSteps(tub, 500)).toEqual([]);
    expect(surfaceSteps(tub, 499.9)).toHaveLength(2);
  });

  test('a dip table names its two neighbouring dips and is a lookup', () => {
    const dips = [
      { depth_mm: 100, volume_L: 20 },
      { depth_mm: 300, volume_L: 80 },
    ];
    const step = volumeStep(
      { shape: 'dipTable', dips, outsideLength_mm: 700, outsideWidth_mm: 500, depth_mm: 300 },
      200,
    );
    expect(step.kind).toBe('lookup');
    expect(step.symbols.map((symbol) => symbol.value)).toEqual([20, 80, 200, 100, 300]);
  });
});
