/** Filling and draining over time, held against textbooks; its laws are in test/laws/filling.ts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { area_m2 } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { bedCells, wetBed_L } from '../../src/core/hydraulics/bedCells.ts';
import { drainTime_s } from '../../src/core/hydraulics/draining.ts';
import { filled, type Rhythm } from '../../src/core/hydraulics/filling.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import type { Container } from '../../src/core/system.ts';
import { boxOf, drained_s, siphonBed } from './beds.ts';
import { containerAndShare, shapes } from './geometryArbitraries.ts';

function expectSame(ours: number, theirs: number, relative: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(
    relative * Math.max(1e-12, Math.abs(theirs)),
  );
}

describe('against the closed form, within half a per cent', () => {
  // Inputs of C. Schaschke, Fluid Mechanics, example 6.8: the exact answer is 1525.3 s.
  test('a basin with inflow, from 1.5 m to 0.5 m', () => {
    const bore_mm = 1000 * Math.sqrt((4 / Math.PI) * (0.4 / Math.sqrt(2 * 9.81 * 1.5)));
    expectSame(drained_s(boxOf(150, 1500), { bore_mm, Cd: 1 }, 1500, 500, 720_000), 1525.3, 5e-3);
  });

  // Dighe, Elementary fluid mechanics, example 4.13, page 120, as quoted by a companion: 2,100 s (exactly 2,094.2).
  test('a boiler on its side, whose surface widens and narrows', () => {
    const boiler: Container = {
      shape: 'lyingCylinder',
      diameter_mm: 8 * 304.8,
      length_mm: 25 * 304.8,
      depth_mm: 8 * 304.8,
    };
    expectSame(drained_s(boiler, { bore_mm: 76.2, Cd: 0.8 }, 6 * 304.8, 0), 2094.2, 5e-3);
  });

  // Sarkar, example 4.10, page 89, as quoted by a companion: a bowl of 5 m radius, 0.005 m2, from 5 m to 3 m, 5,620 s.
  test('a half-round bowl, by its dip table', () => {
    const at = (h: number): number => Math.PI * (5 * h ** 2 - h ** 3 / 3) * 1000;
    const dips = Array.from({ length: 100 }, (_, i) => ({
      depth_mm: 50 * (i + 1),
      volume_L: at(0.05 * (i + 1)),
    }));
    const bowl: Container = {
      shape: 'dipTable',
      dips,
      outsideLength_mm: 10_000,
      outsideWidth_mm: 10_000,
      depth_mm: 5000,
    };
    const bore_mm = 1000 * Math.sqrt((4 / Math.PI) * 0.005);
    expectSame(drained_s(bowl, { bore_mm, Cd: 0.6 }, 5000, 3000), 5620, 5e-3);
  });

  test.each(shapes)('a vessel of shape %s drains in the sum of its areas over the flow', (shape) => {
    const check = ([container]: readonly [Container, number]): void => {
      const [from, to] = [0.9 * rim_mm(container), 0.3 * rim_mm(container)];
      const steps = 4000;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const h = to + ((from - to) * (i + 0.5)) / steps;
        sum += (area_m2(container, h) * ((from - to) / steps)) / orificeFlow_L_h(20, h, 0.6);
      }
      // Where a dip table jumps, a layer across the jump takes the mean of both sides.
      const within = shape === 'dipTable' ? 1e-2 : 5e-3;
      expectSame(drained_s(container, { bore_mm: 20, Cd: 0.6 }, from, to), sum * 3600, within);
    };
    fc.assert(fc.property(containerAndShare(shape), check), { numRuns: 10 });
  });
});

describe('a siphon', () => {
  const tub: Container = { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 400 };
  const followed = (inflow_L_h: number, until_s = 30_000) =>
    filled({ cells: siphonBed(tub, inflow_L_h), drains: 'siphon', inflow_L_h, rhythm: null, until_s });

  test('fills steadily, and starts when the water stands over its lip', () => {
    const cells = siphonBed(tub, 600);
    const { starts_s } = followed(600);
    const room_L = (cells.at(-1)?.water_L ?? 0) - (cells[0]?.water_L ?? 0);
    const toLip_L =
      wetBed_L({ container: tub, count: 1, void_frac: 0.4, mediaDepth_mm: 320 }, 280) -
      (cells[0]?.water_L ?? 0);
    expect(starts_s[0]).toBeGreaterThanOrEqual((toLip_L / 600) * 3600);
    // Some of it runs over the lip before the mouth takes all.
    expect(starts_s[0]).toBeLessThan((room_L / 600) * 3600 * 1.5);
  });

  test('goes on in even rounds', () => {
    const { starts_s, breaks_s } = followed(600);
    const rounds = starts_s.slice(1).map((time, i) => time - (starts_s[i] ?? 0));
    expect(rounds.length).toBeGreaterThan(3);
    for (const round of rounds) expectSame(round, rounds[0] ?? 0, 1e-9);
    for (const [i, time] of starts_s.slice(1).entries()) expect(breaks_s[i]).toBeLessThan(time);
  });

  test('never breaks where as much comes in as it draws, and hangs there', () => {
    const { starts_s, breaks_s, moments } = followed(3000);
    expect(starts_s).toHaveLength(1);
    expect(breaks_s).toEqual([]);
    const last = moments.at(-1);
    const slope = (last?.returned_L ?? 0) - (moments.at(-2)?.returned_L ?? 0);
    expect(slope).toBeGreaterThan(0);
  });

  test('twice the flow in and out takes half the time', () => {
    const half = bedCells({ ...likeTub, lip: () => 0, drain: () => 1500 });
    const whole = bedCells({ ...likeTub, lip: () => 0, drain: () => 3000 });
    const slow = filled({ cells: half, drains: 'siphon', inflow_L_h: 400, rhythm: null, until_s: 20_000 });
    const fast = filled({ cells: whole, drains: 'siphon', inflow_L_h: 800, rhythm: null, until_s: 10_000 });
    for (const [i, time] of slow.starts_s.slice(0, 5).entries()) {
      expectSame(time, 2 * (fast.starts_s[i] ?? 0), 1e-9);
    }
  });

  const likeTub = {
    container: tub,
    count: 1,
    void_frac: 0.4,
    mediaDepth_mm: 320,
    drained_mm: 20,
    line_mm: 280,
    top_mm: 280,
  };

  test('stops filling while a timer rests, and keeps what it has', () => {
    const cells = bedCells({ ...likeTub, lip: () => 0, drain: () => 1500 });
    const rhythm = { on_s: 60, off_s: 600 };
    const { moments } = filled({ cells, drains: 'siphon', inflow_L_h: 60, rhythm, until_s: 660 });
    const [first, last] = [moments[0], moments.at(-1)];
    expectSame((last?.water_L ?? 0) - (first?.water_L ?? 0), 1, 1e-9);
  });
});

describe('a bed on a timer', () => {
  const tub: Container = { shape: 'box', length_mm: 500, width_mm: 400, depth_mm: 300 };
  const hole = (bore_mm: number, inflow_L_h: number, rhythm: Rhythm) => {
    const cells = bedCells({
      container: tub,
      count: 1,
      void_frac: 0.4,
      mediaDepth_mm: 200,
      drained_mm: 10,
      line_mm: 160,
      top_mm: 160,
      lip: () => 0,
      drain: (depth_mm) => orificeFlow_L_h(bore_mm, Math.max(0, depth_mm - 10), 0.6),
    });
    return filled({ cells, drains: 'hole', inflow_L_h, rhythm, until_s: 6 * (rhythm.on_s + rhythm.off_s) });
  };

  test('fills to its lip and drains to its hole in every round', () => {
    const { moments } = hole(6, 200, { on_s: 900, off_s: 2700 });
    const depths = moments.map((moment) => moment.depth_mm);
    expect(Math.max(...depths)).toBe(160);
    expect(moments.filter((moment) => moment.time_s > 0 && moment.depth_mm === 10).length).toBeGreaterThan(3);
  });

  test('with too large a hole rises only to where as much leaves as comes', () => {
    const { moments } = hole(12, 200, { on_s: 900, off_s: 900 });
    const highest = Math.max(...moments.map((moment) => moment.depth_mm));
    expect(highest).toBeLessThan(160);
    // As much leaves as comes: to within the layer in which they meet.
    const level = 10 + 1000 * (200 / orificeFlow_L_h(12, 1000, 0.6)) ** 2;
    expect(Math.abs(highest - level)).toBeLessThan(3);
  });
});

describe('at the edges', () => {
  test('a bed at its lip with no bore to run over stands still', () => {
    const cells = bedCells({
      container: { shape: 'box', length_mm: 500, width_mm: 400, depth_mm: 300 },
      count: 2,
      void_frac: 0.4,
      mediaDepth_mm: 200,
      drained_mm: 160,
      line_mm: 160,
      top_mm: 160,
      lip: () => 0,
      drain: () => 0,
    });
    expect(cells).toHaveLength(1);
    const { moments } = filled({ cells, drains: 'lip', inflow_L_h: 100, rhythm: null, until_s: 3600 });
    expect(moments.at(-1)).toMatchObject({ time_s: 3600, depth_mm: 160, pumped_L: 100, returned_L: 100 });
  });

  test('a bed whose lip is its rim but for a rounding error has no layer without water', () => {
    const rim_mm = 123.21655599761374;
    const cells = bedCells({
      container: { shape: 'lyingCylinder', diameter_mm: 308, length_mm: 308, depth_mm: rim_mm },
      count: 1,
      void_frac: 0.1,
      mediaDepth_mm: rim_mm,
      drained_mm: 0,
      line_mm: rim_mm - 3e-14,
      top_mm: 130,
      lip: () => 10,
      drain: () => 100,
    });
    expect(cells.at(-1)).toMatchObject({ depth_mm: rim_mm, lip_L_h: 10 });
    for (const [i, { water_L }] of cells.entries()) {
      expect(water_L).toBeGreaterThan(cells[i - 1]?.water_L ?? -1);
    }
    const { moments } = filled({ cells, drains: 'siphon', inflow_L_h: 50, rhythm: null, until_s: 20_000 });
    expect(moments.every((moment) => Number.isFinite(moment.depth_mm))).toBe(true);
  });

  test('a bed without layers is our own mistake', () => {
    expect(() => filled({ cells: [], drains: 'lip', inflow_L_h: 1, rhythm: null, until_s: 1 })).toThrow(
      RangeError,
    );
  });

  test.each<readonly [string, () => number]>([
    ['area', () => drainTime_s(0, { bore_mm: 1, Cd: 1 }, 2, 1, 0)],
    ['fall that rises', () => drainTime_s(1, { bore_mm: 1, Cd: 1 }, 1, 2, 0)],
    ['end below the hole', () => drainTime_s(1, { bore_mm: 1, Cd: 1 }, 1, -1, 0)],
    ['inflow below nothing', () => drainTime_s(1, { bore_mm: 1, Cd: 1 }, 2, 1, -1)],
    ['bore', () => drainTime_s(1, { bore_mm: 0, Cd: 1 }, 2, 1, 0)],
  ])('refuses an impossible %s', (_what, sum) => {
    expect(sum).toThrow(RangeError);
  });
});
