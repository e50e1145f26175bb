import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fullPipeFlow_L_h, mouthCloses_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { dutyFlow_L_h } from '../../src/core/hydraulics/dutyPoint.ts';
import { bend, fittingLoss_m, twoK } from '../../src/core/hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../../src/core/hydraulics/friction.ts';
import { blockedHead_mm } from '../../src/core/hydraulics/halfBlocked.ts';
import { bucket_s, energy_kWh_d, hydraulicPower_W } from '../../src/core/hydraulics/power.ts';
import { mostFlow_L_h, type PumpCurve, pumpHead_m } from '../../src/core/hydraulics/pumpCurve.ts';
import { reynolds, velocity_m_s } from '../../src/core/hydraulics/reynolds.ts';
import { settlerArea_m2 } from '../../src/core/hydraulics/settler.ts';
import { standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import { waterDensity_kg_m3, waterViscosity_m2_s } from '../../src/core/hydraulics/waterProperties.ts';
import { floodedBed_kg, load_kg_m2 } from '../../src/core/weight/full.ts';

const runs = { numRuns: 200 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const share = between(0, 1);
const roughness = between(0, 0.05);
const flow = between(1, 20_000);
const pipe = fc.record({
  bore_mm: between(8, 100),
  length_m: between(0.1, 50),
  roughness_mm: between(0, 0.3),
});
const viscosity = between(0.5e-6, 1.8e-6);

/** Flow rises and height falls from point to point. */
const curve: fc.Arbitrary<PumpCurve> = fc
  .tuple(
    between(0.5, 10),
    fc.array(fc.tuple(between(50, 2000), between(0.05, 0.95)), { minLength: 1, maxLength: 5 }),
    fc.constantFrom(0, 1),
  )
  .map(([top_m, steps, skip]) => {
    let flow_L_h = 0;
    let head_m = top_m;
    const later = steps.map(([more, left]) => {
      flow_L_h += more;
      head_m *= left;
      return { flow_L_h, head_m };
    });
    return skip === 1 ? later : [{ flow_L_h: 0, head_m: top_m }, ...later];
  });

function expectSame(ours: number, theirs: number, relative: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(relative * Math.abs(theirs));
}

describe('the friction factor', () => {
  test('does not jump where smooth flow ends and where whirls begin', () => {
    const check = (k: number): void => {
      for (const Re of [2000, 4000]) {
        const at = frictionFactor(Re, k);
        expectSame(frictionFactor(Re * (1 - 1e-9), k), at, 1e-7);
        expectSame(frictionFactor(Re * (1 + 1e-9), k), at, 1e-7);
      }
    };
    fc.assert(fc.property(roughness, check), runs);
  });

  test('bends into the curve of the whirls without a corner', () => {
    const slope = (from: number, to: number): number =>
      (frictionFactor(to, 0) - frictionFactor(from, 0)) / (to - from);
    expectSame(slope(3999, 3999.9), slope(4000.1, 4001), 0.02);
  });

  test('is never smaller for a rougher wall', () => {
    const check = (Re: number, k: number, by: number): void => {
      expect(frictionFactor(Re, k * by)).toBeLessThanOrEqual(frictionFactor(Re, k) * (1 + 1e-12));
    };
    fc.assert(fc.property(between(1, 1e6), roughness, share, check), runs);
  });

  test('of smooth flow is the one of Hagen and Poiseuille', () => {
    const check = (Re: number, k: number): void => expectSame(frictionFactor(Re, k) * Re, 64, 1e-12);
    fc.assert(fc.property(between(1, 2000), roughness, check), runs);
  });
});

describe('the loss in a pipe', () => {
  test('grows with flow, through all three ways of running', () => {
    const check = (of: Parameters<typeof frictionLoss_m>[0], flow_L_h: number, nu: number): void => {
      expect(frictionLoss_m(of, flow_L_h, nu)).toBeLessThan(frictionLoss_m(of, flow_L_h * 1.001, nu));
    };
    fc.assert(fc.property(pipe, flow, viscosity, check), runs);
  });

  test('grows with length alike, and is less in a wider pipe', () => {
    const check = (of: Parameters<typeof frictionLoss_m>[0], flow_L_h: number, nu: number): void => {
      const loss = frictionLoss_m(of, flow_L_h, nu);
      expectSame(frictionLoss_m({ ...of, length_m: 2 * of.length_m }, flow_L_h, nu), 2 * loss, 1e-12);
      expect(frictionLoss_m({ ...of, bore_mm: 1.01 * of.bore_mm }, flow_L_h, nu)).toBeLessThan(loss);
    };
    fc.assert(fc.property(pipe, flow, viscosity, check), runs);
  });

  test('twice the size at the same Reynolds number loses a quarter of the head a length', () => {
    const check = (bore_mm: number, flow_L_h: number, nu: number): void => {
      const small = frictionLoss_m({ bore_mm, length_m: 1, roughness_mm: bore_mm / 1000 }, flow_L_h, nu);
      const large = frictionLoss_m(
        { bore_mm: 2 * bore_mm, length_m: 2, roughness_mm: bore_mm / 500 },
        2 * flow_L_h,
        nu,
      );
      expectSame(large, small / 4, 1e-9);
    };
    fc.assert(fc.property(between(8, 100), flow, viscosity, check), runs);
  });

  test('of cold water is never less than of warm', () => {
    const check = (of: Parameters<typeof frictionLoss_m>[0], flow_L_h: number, T: number): void => {
      const at = (degC: number): number => frictionLoss_m(of, flow_L_h, waterViscosity_m2_s(degC));
      // Between the two ways of running the cubic falls where thicker water would still run smoothly.
      const Re = reynolds(flow_L_h, of.bore_mm, waterViscosity_m2_s(T));
      if (1900 < Re && Re < 4200) return;
      expect(at(T)).toBeGreaterThanOrEqual(at(T + 0.5) * (1 - 1e-12));
    };
    fc.assert(fc.property(pipe, flow, between(0, 49), check), runs);
  });

  test('at bends is more in narrow pipes and slow water than the fixed figure', () => {
    expect(twoK(bend.K1, bend.Kinf, 3000, 16)).toBeGreaterThan(0.9);
    expect(twoK(bend.K1, bend.Kinf, 1e5, 100)).toBeLessThan(0.9);
    expect(twoK(0, 1, 1, 25.4)).toBe(2);
  });
});

describe('a full pipe', () => {
  test('carries the flow whose losses use up the fall', () => {
    const check = (
      of: Parameters<typeof frictionLoss_m>[0],
      K: number,
      head_mm: number,
      nu: number,
    ): void => {
      const flow_L_h = fullPipeFlow_L_h(of, K, head_mm, nu);
      const lost_m = frictionLoss_m(of, flow_L_h, nu) + fittingLoss_m(K, flow_L_h, of.bore_mm);
      expectSame(1000 * lost_m, head_mm, 1e-9);
    };
    fc.assert(fc.property(pipe, between(1, 20), between(1, 5000), viscosity, check), runs);
  });

  test('carries nothing without a fall, or under one that is hardly a number', () => {
    const of = { bore_mm: 25, length_m: 1, roughness_mm: 0 };
    expect(fullPipeFlow_L_h(of, 1, 0, 1e-6)).toBe(0);
    expect(fullPipeFlow_L_h(of, 1, 1e-320, 1e-6)).toBeLessThan(1e-100);
  });

  test('closes over its mouth at a flow that grows as the bore to the power two and a half', () => {
    const check = (bore_mm: number): void =>
      expectSame(mouthCloses_L_h(2 * bore_mm), 2 ** 2.5 * mouthCloses_L_h(bore_mm), 1e-9);
    fc.assert(fc.property(between(10, 150), check), runs);
  });
});

describe('a pump curve', () => {
  test('goes through all its points', () => {
    fc.assert(
      fc.property(curve, (points) => {
        for (const { flow_L_h, head_m } of points) expectSame(pumpHead_m(points, flow_L_h), head_m, 1e-9);
      }),
      runs,
    );
  });

  test('never rises with flow', () => {
    fc.assert(
      fc.property(curve, share, share, (points, a, b) => {
        const most = mostFlow_L_h(points);
        const [less, more] = [Math.min(a, b) * most, Math.max(a, b) * most];
        expect(pumpHead_m(points, more)).toBeLessThanOrEqual(pumpHead_m(points, less) * (1 + 1e-12) + 1e-12);
      }),
      runs,
    );
  });

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
  const asked =
    (lift_m: number, K: number) =>
    (flow_L_h: number): number =>
      lift_m +
      frictionLoss_m({ bore_mm: 20, length_m: 3, roughness_mm: 0.0015 }, flow_L_h, 1e-6) +
      fittingLoss_m(K, flow_L_h, 20);

  test('lies on both curves, or at the end of the pump’s', () => {
    fc.assert(
      fc.property(curve, share, between(0, 10), (points, of, K) => {
        const lift_m = of * pumpHead_m(points, 0);
        const duty = dutyFlow_L_h(points, asked(lift_m, K));
        if (duty === null) {
          expect(lift_m).toBeGreaterThanOrEqual(pumpHead_m(points, 0));
          return;
        }
        const spare = pumpHead_m(points, duty) - asked(lift_m, K)(duty);
        if (duty === mostFlow_L_h(points)) expect(spare).toBeGreaterThanOrEqual(0);
        else expect(Math.abs(spare)).toBeLessThan(1e-9 * Math.max(1, pumpHead_m(points, 0)));
      }),
      runs,
    );
  });

  test('never moves to more flow for more bends or more lift', () => {
    fc.assert(
      fc.property(curve, share, between(0, 10), between(0, 10), (points, of, K, more) => {
        const lift_m = 0.9 * of * pumpHead_m(points, 0);
        const duty = dutyFlow_L_h(points, asked(lift_m, K)) ?? 0;
        expect(dutyFlow_L_h(points, asked(lift_m, K + more)) ?? 0).toBeLessThanOrEqual(duty * (1 + 1e-9));
        expect(dutyFlow_L_h(points, asked(lift_m * 1.05, K)) ?? 0).toBeLessThanOrEqual(duty * (1 + 1e-9));
      }),
      runs,
    );
  });

  test('is nowhere at the greatest height and above', () => {
    const one = [{ flow_L_h: 1000, head_m: 1.5 }];
    expect(dutyFlow_L_h(one, () => 1.9999)).toBeGreaterThan(0);
    expect(dutyFlow_L_h(one, () => 2)).toBeNull();
    expect(dutyFlow_L_h(one, () => 2.0001)).toBeNull();
  });
});

describe('a standpipe with a screen', () => {
  test('that is clean stands as an open one, and ever higher the less is open', () => {
    const check = (bore_mm: number, flow_L_h: number, open: number): void => {
      expectSame(blockedHead_mm(bore_mm, flow_L_h, 1), standpipeHead_mm(bore_mm, flow_L_h), 1e-9);
      expect(blockedHead_mm(bore_mm, flow_L_h, open)).toBeGreaterThan(
        blockedHead_mm(bore_mm, flow_L_h, open * 1.01),
      );
    };
    fc.assert(fc.property(between(10, 150), flow, between(0.05, 0.98), check), runs);
  });
});

describe('scale', () => {
  test('power, time of a bucket, settler and solids grow as they should', () => {
    const check = (flow_L_h: number, head_m: number, by: number): void => {
      expectSame(
        hydraulicPower_W(by * flow_L_h, head_m, 1000),
        by * hydraulicPower_W(flow_L_h, head_m, 1000),
        1e-9,
      );
      expectSame(bucket_s(10, by * flow_L_h), bucket_s(10, flow_L_h) / by, 1e-9);
      expectSame(settlerArea_m2(by * flow_L_h, 0.0031), by * settlerArea_m2(flow_L_h, 0.0031), 1e-9);
      expectSame(energy_kWh_d(by * 20, 0.5), by * energy_kWh_d(20, 0.5), 1e-9);
    };
    fc.assert(fc.property(flow, between(0.1, 10), between(0.1, 10), check), runs);
  });

  test('a flooded bed is heavier the more media, the heavier media and the looser heap', () => {
    const check = (rim_L: number, of: number, bulk: number, e: number): void => {
      const at = floodedBed_kg(rim_L, of * rim_L, bulk, e);
      expect(floodedBed_kg(rim_L, of * rim_L, bulk * 1.1, e)).toBeGreaterThan(at);
      expect(floodedBed_kg(rim_L, of * rim_L, bulk, Math.min(1, e * 1.1))).toBeGreaterThan(at);
      // Media whose dry heap is heavier than the water it leaves no room for.
      if (bulk / 1000 > 1 - e) expect(at).toBeGreaterThan(floodedBed_kg(rim_L, 0, bulk, e));
      expectSame(load_kg_m2(at, 0.5), 2 * at, 1e-12);
    };
    fc.assert(
      fc.property(between(10, 2000), between(0.1, 1), between(200, 2000), between(0.2, 0.7), check),
      runs,
    );
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
