import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { area_m2 } from '../../src/core/geometry/container.ts';
import type { Point } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import { demoSystem } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

const sectionOf = (id: string) => planOf(demoSystem(id).system).section;

/** Area of a polygon by the trapezoid formula (weissteinMathematics, polygon area). */
function area(points: readonly Point[]): number {
  const sum = points.reduce((total, [x, y], i) => {
    const [a, b] = points[(i + 1) % points.length] ?? [0, 0];
    return total + x * b - a * y;
  }, 0);
  return Math.abs(sum) / 2 / 1e6;
}

describe('a vessel from above', () => {
  test('has at its rim the area that its own formula gives', () => {
    const law = (system: System) => {
      const vessels = [system.tank, ...(system.sump ? [system.sump] : []), ...system.beds];
      planOf(system).section.above.forEach((seen, i) => {
        const container = vessels[i]?.container;
        if (container === undefined) throw new Error('more outlines than vessels');
        // What a dip table says lies inside its vessel, not round it.
        if (container.shape === 'dipTable') return;
        const lying = container.shape === 'lyingCylinder';
        // A drum on its side is seen where it is widest: at its middle, or at its cut below that.
        const seen_mm = lying ? Math.min(container.depth_mm, container.diameter_mm / 2) : container.depth_mm;
        const wanted = area_m2(container, seen_mm);
        // 72 corners of a circle miss 0.13 % of it.
        expect(Math.abs(area(seen.rim) - wanted)).toBeLessThan(0.004 * wanted);
        expect(seen.floor === null).toBe(lying || Math.abs(area_m2(container, 0) - wanted) < 1e-9);
      });
    };
    fc.assert(fc.property(systems(), law), { numRuns: 150 });
  });

  test('is told once for each kind, with its count, and says where it was measured outside', () => {
    const above = sectionOf('drum-corner').above;
    expect(above.map(({ role, count }) => [role, count])).toEqual([
      ['tank', 1],
      ['bed', 2],
    ]);
    expect(above.map(({ measured }) => measured)).toEqual(['inside', 'inside']);
  });
});

describe('the heights of a section', () => {
  test('are those of the file, from the top down, equal ones together', () => {
    const heights = sectionOf('hollow-lane-ibc-two-beds').heights;
    // 900 + 360, 900 + 280, both beds' floors at 900, the tank's rim and floor.
    expect(heights.map(({ y_mm }) => y_mm)).toEqual([1260, 1180, 900, 780, 0]);
    expect(heights[2]?.of.map(({ index, edge }) => [index, edge])).toEqual([
      [0, 'floor'],
      [1, 'floor'],
    ]);
  });

  test('lie below the floor of the place where a tank is let in', () => {
    const heights = sectionOf('pond-and-tray').heights;
    const { tank } = demoSystem('pond-and-tray').system;
    expect(tank.above_mm).toBeLessThan(0);
    expect(heights.at(-1)?.y_mm).toBe(tank.above_mm);
  });
});

describe('the way of the water', () => {
  const stations = (id: string) => sectionOf(id).way.map(({ key }) => key);

  test('runs from the pump through the bed back to it', () => {
    expect(stations('hollow-lane-ibc')).toEqual(['pump', 'supply', 'bed', 'siphon', 'return']);
  });

  test('names every way out once, and the overflow beside a sump', () => {
    expect(stations('hollow-lane-ibc-two-beds')).toEqual([
      ...['pump', 'supply', 'bed', 'siphon', 'constantFlood', 'return'],
    ]);
    expect(stations('old-tank-as-sump')).toEqual(['pump', 'supply', 'bed', 'siphon', 'return', 'overflow']);
  });

  test('is only the baskets where nothing is pumped', () => {
    expect(stations('basket-tub')).toEqual(['baskets']);
  });

  test('has no two stations of a kind, and each inside what the section shows', () => {
    fc.assert(
      fc.property(systems(), (system) => {
        const { section } = planOf(system);
        const keys = section.way.map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        const points = [
          ...section.vessels.flatMap((one) => one.outline),
          ...section.pipes.flatMap((one) => one.points),
        ];
        const xs = points.map(([x]) => x);
        for (const { at } of section.way) {
          expect(at[0]).toBeGreaterThanOrEqual(Math.min(...xs));
          expect(at[0]).toBeLessThanOrEqual(Math.max(...xs));
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('the water lines of a section', () => {
  test('count from the inside floor, and the line after a power cut leaves the plan’s own freeboard', () => {
    fc.assert(
      fc.property(systems(), (system) => {
        const { section, figures } = planOf(system);
        const lower = section.vessels.find(({ role }) => role === (system.sump ? 'sump' : 'tank'));
        const container = (system.sump ?? system.tank).container;
        const cut = lower?.levels.find(({ key }) => key === 'powerCut');
        const full = (system.sump ?? system.tank).full_mm;
        const freeboard = figures['freeboard_mm']?.value;
        if (freeboard === null || freeboard === undefined) expect(cut).toBeUndefined();
        else if (cut === undefined) expect(container.depth_mm - freeboard).toBeLessThan(full + 0.5);
        else expect(cut.height_mm).toBeCloseTo(container.depth_mm - freeboard, 6);
        for (const vessel of section.vessels) {
          const floor = Math.min(...vessel.outline.map(([, y]) => y));
          for (const level of vessel.levels) expect(level.y_mm - floor).toBeCloseTo(level.height_mm, 6);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('a hole to drain a bed by timer', () => {
  test('stands in the table and in the section, with its own bore', () => {
    const { system } = demoSystem('kitchen-frame');
    const { section, tables } = planOf(system);
    const rows = tables.find(({ key }) => key === 'holes')?.rows ?? [];
    const bore = system.beds[0]?.drainHole_mm;
    expect(rows.map(([hole, , , bore_mm, height_mm]) => [hole, bore_mm, height_mm])).toEqual([
      ['standpipeHole', system.beds[0]?.standpipeBore_mm, 0],
      ['drainHole', bore, 0],
    ]);
    expect(section.holes.find((hole) => hole.for === 'drain')?.bore_mm).toBe(bore);
  });
});
