/** Filling and draining over time, held against closed forms, textbooks and the fact that no water is made or lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { area_m2, volume_L } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { bedCells, type Cell, wetBed_L } from '../../src/core/hydraulics/bedCells.ts';
import { fullPipeFlow_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { drainTime_s } from '../../src/core/hydraulics/draining.ts';
import { type Drains, filled, type Rhythm } from '../../src/core/hydraulics/filling.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import type { Container } from '../../src/core/system.ts';
import { containerAndShare, shapes } from './geometryArbitraries.ts';

const runs = { numRuns: 200 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A bed over a standpipe, with a siphon of its bore. */
function bed(container: Container, inflow_L_h: number, bore_mm = 32): readonly Cell[] {
  const line_mm = 0.7 * rim_mm(container);
  return bedCells({
    container,
    count: 1,
    void_frac: 0.4,
    mediaDepth_mm: 0.8 * rim_mm(container),
    drained_mm: 0.05 * rim_mm(container),
    line_mm,
    top_mm: line_mm + standpipeHead_mm(bore_mm, inflow_L_h),
    lip: (overLip_mm) => standpipeFlow_L_h(bore_mm, overLip_mm),
    drain: (depth_mm) =>
      fullPipeFlow_L_h({ bore_mm, length_m: 0.5, roughness_mm: 0.0015 }, 5, depth_mm + 100, 1e-6),
  });
}

/** A vessel full to `from_mm` with a hole in its floor: what stood in it is gone when the siphon that plays the hole breaks. */
function drained_s(
  container: Container,
  hole: { bore_mm: number; Cd: number },
  from_mm: number,
  to_mm: number,
  inflow_L_h = 0,
): number {
  const cells = bedCells({
    container,
    count: 1,
    void_frac: 1,
    mediaDepth_mm: 0,
    drained_mm: to_mm,
    line_mm: from_mm,
    top_mm: from_mm,
    lip: () => 0,
    drain: (depth_mm) => orificeFlow_L_h(hole.bore_mm, depth_mm, hole.Cd),
  });
  const fill_L = (cells.at(-1)?.water_L ?? 0) - (cells[0]?.water_L ?? 0);
  // Filled in an hour by a pump that then stops, or by the inflow that goes on.
  const rhythm = inflow_L_h > 0 ? null : { on_s: 3600, off_s: 1e9 };
  // A hair more than it takes, so that a rounding error does not leave it a hair short.
  const flow = inflow_L_h > 0 ? inflow_L_h : fill_L * (1 + 1e-9);
  const { starts_s, breaks_s } = filled({
    cells,
    drains: 'siphon',
    inflow_L_h: flow,
    rhythm,
    until_s: 1e8,
    starts: 2,
  });
  return (breaks_s[0] ?? Number.NaN) - (starts_s[0] ?? Number.NaN);
}

function expectSame(ours: number, theirs: number, relative: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(
    relative * Math.max(1e-12, Math.abs(theirs)),
  );
}

describe('water is neither made nor lost', () => {
  test.each(shapes)('in a bed of shape %s, whatever the drain and the timer do', (shape) => {
    const drains = fc.constantFrom<Drains>('siphon', 'hole', 'lip');
    const rhythm = fc.option(fc.record({ on_s: between(60, 3600), off_s: between(60, 3600) }), { nil: null });
    const check = (container: Container, inflow_L_h: number, how: Drains, beat: Rhythm | null): void => {
      const cells = bed(container, inflow_L_h);
      const { moments } = filled({ cells, drains: how, inflow_L_h, rhythm: beat, until_s: 20_000 });
      const [first] = moments;
      const most_L = cells.at(-1)?.water_L ?? 0;
      let before = first;
      let worst = 0;
      for (const now of moments) {
        const stored_L = now.water_L - (first?.water_L ?? 0);
        const scale_L = Math.max(1, most_L, now.pumped_L);
        worst = Math.max(worst, Math.abs(now.pumped_L - now.returned_L - stored_L) / scale_L);
        // Not above its highest water, not below its drain, time goes on, and nothing runs back into the pump.
        const fine =
          now.water_L <= most_L * (1 + 1e-12) &&
          now.water_L >= (first?.water_L ?? 0) * (1 - 1e-12) &&
          now.time_s >= (before?.time_s ?? 0) &&
          now.returned_L >= (before?.returned_L ?? 0) - 1e-9 * scale_L;
        if (!fine) throw new Error(`at ${now.time_s} s: ${JSON.stringify(now)}`);
        before = now;
      }
      expect(worst).toBeLessThanOrEqual(1e-9);
      const beats = beat === null ? 20_000 : onTime_s(beat, before?.time_s ?? 0);
      if ((before?.time_s ?? 0) === 20_000)
        expectSame(before?.pumped_L ?? 0, (inflow_L_h / 3600) * beats, 1e-9);
    };
    fc.assert(
      fc.property(containerAndShare(shape), between(50, 3000), drains, rhythm, ([container], q, how, beat) =>
        check(container, q, how, beat),
      ),
      { numRuns: 30 },
    );
  });

  function onTime_s({ on_s, off_s }: Rhythm, until_s: number): number {
    const rounds = Math.floor(until_s / (on_s + off_s));
    return rounds * on_s + Math.min(on_s, until_s - rounds * (on_s + off_s));
  }

  test.each(shapes)('and a bed of shape %s holds what its layers hold', (shape) => {
    const check = ([container]: readonly [Container, number]): void => {
      for (const { depth_mm, water_L } of bed(container, 500)) {
        const media_L = volume_L(container, Math.min(depth_mm, 0.8 * rim_mm(container)));
        expectSame(water_L, 0.4 * media_L + volume_L(container, depth_mm) - media_L, 1e-12);
      }
    };
    fc.assert(fc.property(containerAndShare(shape), check), { numRuns: 50 });
  });
});

describe('against the closed form, within half a per cent', () => {
  const box = (area: number, depth_mm: number): Container => {
    const side_mm = Math.sqrt(area) * 1000;
    return { shape: 'box', length_mm: side_mm, width_mm: side_mm, depth_mm };
  };

  test('an upright vessel drains as the root of its head', () => {
    const check = (area: number, bore_mm: number, from_mm: number, share: number): void => {
      const hole = { bore_mm, Cd: 0.6 };
      const to_mm = from_mm * share;
      expectSame(
        drained_s(box(area, from_mm), hole, from_mm, to_mm),
        drainTime_s(area, hole, from_mm, to_mm, 0),
        5e-3,
      );
    };
    fc.assert(
      fc.property(between(0.05, 5), between(5, 60), between(50, 1500), between(0, 0.95), check),
      runs,
    );
  });

  test('and with water running in, later, or never', () => {
    const check = (area: number, bore_mm: number, from_mm: number, share: number, q: number): void => {
      const hole = { bore_mm, Cd: 0.6 };
      const to_mm = from_mm * share;
      const inflow_L_h = q * orificeFlow_L_h(bore_mm, to_mm, 0.6);
      const closed_s = drainTime_s(area, hole, from_mm, to_mm, inflow_L_h);
      expectSame(drained_s(box(area, from_mm), hole, from_mm, to_mm, inflow_L_h), closed_s, 5e-3);
      expect(closed_s).toBeGreaterThan(drainTime_s(area, hole, from_mm, to_mm, 0));
    };
    fc.assert(
      fc.property(
        between(0.05, 5),
        between(5, 60),
        between(50, 1500),
        between(0.1, 0.9),
        between(0.05, 0.9),
        check,
      ),
      runs,
    );
    expect(drainTime_s(1, { bore_mm: 20, Cd: 0.6 }, 500, 100, 5000)).toBe(Number.POSITIVE_INFINITY);
  });

  // Inputs of C. Schaschke, Fluid Mechanics, example 6.8: the exact answer is 1525.3 s.
  test('a basin with inflow, from 1.5 m to 0.5 m', () => {
    const bore_mm = 1000 * Math.sqrt((4 / Math.PI) * (0.4 / Math.sqrt(2 * 9.81 * 1.5)));
    expectSame(drained_s(box(150, 1500), { bore_mm, Cd: 1 }, 1500, 500, 720_000), 1525.3, 5e-3);
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
    filled({ cells: bed(tub, inflow_L_h), drains: 'siphon', inflow_L_h, rhythm: null, until_s });

  test('fills steadily, and starts when the water stands over its lip', () => {
    const cells = bed(tub, 600);
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
