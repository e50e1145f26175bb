import { describe, expect, test } from 'vitest';
import { fullPipeFlow_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { dutyFlow_L_h } from '../../src/core/hydraulics/dutyPoint.ts';
import { bend, fittingLoss_m, twoK } from '../../src/core/hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../../src/core/hydraulics/friction.ts';
import { blockedHead_mm } from '../../src/core/hydraulics/halfBlocked.ts';
import { bucket_s, energy_kWh_d, hydraulicPower_W } from '../../src/core/hydraulics/power.ts';
import { mostFlow_L_h, pumpHead_m } from '../../src/core/hydraulics/pumpCurve.ts';
import { reynolds, velocity_m_s } from '../../src/core/hydraulics/reynolds.ts';
import { settlerArea_m2 } from '../../src/core/hydraulics/settler.ts';
import { waterDensity_kg_m3, waterViscosity_m2_s } from '../../src/core/hydraulics/waterProperties.ts';
import { floodedBed_kg, load_kg_m2 } from '../../src/core/weight/full.ts';

function expectSame(ours: number, theirs: number, relative: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(relative * Math.abs(theirs));
}

describe('the friction factor', () => {
  test('bends into the curve of the whirls without a corner', () => {
    const slope = (from: number, to: number): number =>
      (frictionFactor(to, 0) - frictionFactor(from, 0)) / (to - from);
    expectSame(slope(3999, 3999.9), slope(4000.1, 4001), 0.02);
  });
});

describe('the loss in a pipe', () => {
  test('at bends is more in narrow pipes and slow water than the fixed figure', () => {
    expect(twoK(bend.K1, bend.Kinf, 3000, 16)).toBeGreaterThan(0.9);
    expect(twoK(bend.K1, bend.Kinf, 1e5, 100)).toBeLessThan(0.9);
    expect(twoK(0, 1, 1, 25.4)).toBe(2);
  });
});

describe('a full pipe', () => {
  test('carries nothing without a fall, or under one that is hardly a number', () => {
    const of = { bore_mm: 25, length_m: 1, roughness_mm: 0 };
    expect(fullPipeFlow_L_h(of, 1, 0, 1e-6)).toBe(0);
    expect(fullPipeFlow_L_h(of, 1, 1e-320, 1e-6)).toBeLessThan(1e-100);
  });
});

describe('a pump curve', () => {
  test('of one point starts a third higher and ends at twice the flow', () => {
    const one = [{ flow_L_h: 600, head_m: 150 }];
    expectSame(pumpHead_m(one, 0), 200, 1e-12);
    expect(mostFlow_L_h(one)).toBe(1200);
    expect(pumpHead_m(one, 1200)).toBeCloseTo(0, 9);
  });

  test('of three points that no power of the flow joins goes straight from point to point', () => {
    const bulging = [
      { flow_L_h: 0, head_m: 2 },
      { flow_L_h: 1000, head_m: 1.9999 },
      { flow_L_h: 1010, head_m: 0.5 },
    ];
    expect(pumpHead_m(bulging, 500)).toBeCloseTo(1.99995, 12);
    expect(mostFlow_L_h(bulging)).toBe(1010);
  });

  test('refuses no points, and a flow beyond its end', () => {
    expect(() => mostFlow_L_h([])).toThrow(RangeError);
    expect(() => pumpHead_m([{ flow_L_h: 10, head_m: 1 }], 21)).toThrow(/must be 0 to 20/);
    expect(() => pumpHead_m([{ flow_L_h: 10, head_m: 1 }], Number.NaN)).toThrow(RangeError);
  });
});

describe('the duty point', () => {
  test('of points that only a curve falling upright would join lies on straight lines between them', () => {
    const curve = [
      { flow_L_h: 0, head_m: 0.5 },
      { flow_L_h: 50, head_m: 0.025 },
      { flow_L_h: 110, head_m: 0.024 },
    ];
    expect(dutyFlow_L_h(curve, () => 0.2625)).toBeCloseTo(25, 9);
  });

  test('is nowhere at the greatest height and above', () => {
    const one = [{ flow_L_h: 1000, head_m: 1.5 }];
    expect(dutyFlow_L_h(one, () => 1.9999)).toBeGreaterThan(0);
    expect(dutyFlow_L_h(one, () => 2)).toBeNull();
    expect(dutyFlow_L_h(one, () => 2.0001)).toBeNull();
  });
});

describe('at the edges', () => {
  test('water is densest at four degrees and thins as it warms', () => {
    expect(waterDensity_kg_m3(0)).toBeLessThanOrEqual(waterDensity_kg_m3(2));
    for (let T = 0; T < 50; T++) expect(waterViscosity_m2_s(T + 1)).toBeLessThan(waterViscosity_m2_s(T));
  });

  test('no flow is no Reynolds number and no loss', () => {
    expect(reynolds(0, 20, 1e-6)).toBe(0);
    expect(velocity_m_s(0, 20)).toBe(0);
    expect(frictionLoss_m({ bore_mm: 20, length_m: 1, roughness_mm: 0 }, 0, 1e-6)).toBe(0);
  });

  test.each<readonly [string, () => number]>([
    ['water below freezing', () => waterDensity_kg_m3(-0.01)],
    ['water above fifty', () => waterViscosity_m2_s(50.01)],
    ['bore of nothing', () => velocity_m_s(1, 0)],
    ['flow below nothing', () => velocity_m_s(-1, 1)],
    ['viscosity of nothing', () => reynolds(1, 1, 0)],
    ['Reynolds number of nothing', () => frictionFactor(0, 0)],
    ['wall rougher than a twentieth', () => frictionFactor(1000, 0.051)],
    ['length below nothing', () => frictionLoss_m({ bore_mm: 1, length_m: -1, roughness_mm: 0 }, 1, 1e-6)],
    ['loss coefficient below nothing', () => fittingLoss_m(-1, 1, 1)],
    ['constant below nothing', () => twoK(-1, 1, 1, 1)],
    ['no loss at all', () => fullPipeFlow_L_h({ bore_mm: 1, length_m: 0, roughness_mm: 0 }, 0, 1, 1e-6)],
    ['fall below nothing', () => fullPipeFlow_L_h({ bore_mm: 1, length_m: 0, roughness_mm: 0 }, 1, -1, 1e-6)],
    ['pipe that is all blocked', () => blockedHead_mm(50, 100, 0)],
    ['bucket without flow', () => bucket_s(10, 0)],
    ['day of more than a day', () => energy_kWh_d(10, 1.01)],
    ['power of no water', () => hydraulicPower_W(1, 1, 0)],
    ['settler that does not rise', () => settlerArea_m2(1, 0)],
    ['media above the rim', () => floodedBed_kg(10, 10.1, 1, 0.5)],
    ['voids of more than all', () => floodedBed_kg(10, 5, 1, 1.01)],
    ['footprint of nothing', () => load_kg_m2(1, 0)],
  ])('refuses a %s, for that is our own mistake', (_what, sum) => {
    expect(sum).toThrow(RangeError);
  });
});
