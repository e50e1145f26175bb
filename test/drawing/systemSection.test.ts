import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Section } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import { placeMarks } from '../../src/drawing/marks.ts';
import { changed, usualScale } from '../../src/drawing/scales.ts';
import { seenFromAbove } from '../../src/drawing/seenFromAbove.ts';
import type { Shape } from '../../src/drawing/shape.ts';
import { levelKey } from '../../src/drawing/sides.ts';
import { type SystemRoom, systemSection } from '../../src/drawing/systemSection.ts';
import { content, demoSystem } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

/** Words for everything that a section can tell. */
function roomFor(section: Section): SystemRoom {
  const kinds = section.vessels.filter((one) => one.copy === 0);
  const levels = kinds.flatMap((one) => one.levels.map((level) => levelKey(one, level.key)));
  const heights = section.heights.map((_, i) => `height.${i}`);
  const marks = [
    ...section.way.map(({ key }) => [`station.${key}`, 46]),
    ...section.holes.map((hole) => [`hole.${hole.for}.${hole.index}`, 46]),
    ...kinds.map((one) => [`name.${one.role}.${one.index}`, 110]),
    ...kinds.map((one) => [`width.${one.role}.${one.index}`, 150]),
  ];
  return {
    ...{ width: 1900, height: 1200, left: 310, right: 350, unit_mm: 1, markHeight: 46 },
    scale: 'usual',
    labels: Object.fromEntries([...levels, ...heights].map((key) => [key, 44])),
    marks: Object.fromEntries(marks),
  };
}

function law(check: (section: Section, room: SystemRoom) => void): void {
  const one = (system: System) => {
    const { section } = planOf(system);
    check(section, roomFor(section));
  };
  for (const { system } of content.systems) one(system);
  fc.assert(fc.property(systems(), one), { numRuns: 120 });
}

function pointsOf({ d }: Shape): readonly (readonly [number, number])[] {
  return [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

type Rect = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

function rectOf(one: { at: readonly [number, number]; width: number; height: number }): Rect {
  const [x, y] = one.at;
  const [a, b] = [one.width / 2, one.height / 2];
  return { left: x - a, right: x + a, top: y - b, bottom: y + b };
}

function overlap(a: Rect, b: Rect): number {
  return Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  );
}

function overlaps(all: readonly Rect[]): number {
  return all.flatMap((a, i) => all.slice(i + 1).filter((b) => overlap(a, b) > 1e-6)).length;
}

describe('the section for builders, of any system', () => {
  test('has no label and no mark on another, and none outside its room', () => {
    law((section, room) => {
      const drawn = systemSection(section, room);
      const labels = drawn.labels.map(({ key, side, top }): Rect => {
        const left = side === 'left' ? 0 : room.width - room.right;
        return { left, right: left + room[side], top, bottom: top + (room.labels[key] ?? 0) };
      });
      const all = [...labels, ...drawn.marks.map(rectOf)];
      expect(overlaps(all)).toBe(0);
      for (const rect of all) {
        expect(rect.left).toBeGreaterThanOrEqual(-1e-6);
        expect(rect.right).toBeLessThanOrEqual(room.width + 1e-6);
        expect(rect.top).toBeGreaterThanOrEqual(-1e-6);
        expect(rect.bottom).toBeLessThanOrEqual(drawn.height + 1e-6);
      }
    });
  });

  test('stays in the room that the sheet gives it, and takes no more height than that', () => {
    law((section, room) => {
      const drawn = systemSection(section, room);
      expect(drawn.height).toBeLessThanOrEqual(room.height + 1e-6);
      for (const [x, y] of drawn.shapes.flatMap(pointsOf)) {
        expect(x).toBeGreaterThanOrEqual(-1);
        expect(x).toBeLessThanOrEqual(room.width + 1);
        expect(y).toBeGreaterThanOrEqual(-1);
        expect(y).toBeLessThanOrEqual(drawn.height + 1);
      }
    });
  });

  test('numbers every station of the water', () => {
    law((section, room) => {
      const keys = systemSection(section, room).marks.map(({ key }) => key);
      for (const { key } of section.way) expect(keys).toContain(`station.${key}`);
    });
  });

  test('tells every water line of tank and sump, however many beds there are', () => {
    law((section, room) => {
      const keys = systemSection(section, room).labels.map(({ key }) => key);
      for (const vessel of section.vessels.filter(({ role, copy }) => role !== 'bed' && copy === 0)) {
        for (const level of vessel.levels) expect(keys).toContain(levelKey(vessel, level.key));
      }
    });
  });

  test('draws a wall of so many millimetres so many times smaller, at the scale that it names', () => {
    for (const { system } of content.systems) {
      const { section } = planOf(system);
      const drawn = systemSection(section, roomFor(section));
      const [tank] = section.vessels;
      const rim = Math.max(...(tank?.outline ?? []).map(([, y]) => y));
      const floor = Math.min(...(tank?.outline ?? []).map(([, y]) => y));
      const walls = drawn.shapes.filter(({ paint }) => paint.width === 7 && !paint.fill).map(pointsOf);
      const heights = walls.map(
        (points) => Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y)),
      );
      const nearest = Math.min(...heights.map((one) => Math.abs(one - ((rim - floor) * 10) / drawn.oneTo)));
      // Points are rounded to a hundredth of a millimetre of paper.
      expect(nearest, system.id).toBeLessThan(0.2);
      expect(drawn.bar.length, system.id).toBeCloseTo((drawn.bar.real_mm * 10) / drawn.oneTo, 6);
    }
  });

  test('draws every water line of the tank at its own height, each in its own pattern', () => {
    const { section } = planOf(demoSystem('drum-corner').system);
    const drawn = systemSection(section, roomFor(section));
    const lines = drawn.shapes.filter(({ d, paint }) => paint.stroke === 'black' && /^M[^L]+L[^L]+$/.test(d));
    const tank = section.vessels.find(({ role }) => role === 'tank');
    const patterns = (tank?.levels ?? []).map((level) => {
      const length = ((level.right_mm - level.left_mm) * 10) / drawn.oneTo - 6;
      const own = lines.filter((shape) => {
        const [a, b] = pointsOf(shape);
        return a && b && Math.abs(b[0] - a[0] - length) < 0.3 && shape.paint.width !== 1;
      });
      expect(own.length, level.key).toBeGreaterThan(0);
      return own.map(({ paint }) => JSON.stringify(paint.dash ?? []));
    });
    expect(new Set(patterns.flat()).size).toBe(tank?.levels.length);
    const full = tank?.levels.find(({ key }) => key === 'full');
    const low = tank?.levels.find(({ key }) => key === 'low');
    const ys = lines.flatMap(pointsOf).map(([, y]) => y);
    const fall = (((full?.y_mm ?? 0) - (low?.y_mm ?? 0)) * 10) / drawn.oneTo;
    expect(ys.some((y) => ys.some((other) => Math.abs(other - y - fall) < 0.2))).toBe(true);
  });
});

describe('marks in a drawing', () => {
  const box = { width: 400, height: 300 };
  const wish = (key: string, x: number, y: number) =>
    ({ key, at: [x, y], of: null, width: 40, height: 40, goes: 'around' }) as const;

  test('stand where they wish to where nothing is in the way', () => {
    expect(placeMarks([wish('a', 100, 100)], box, [])[0]?.at).toEqual([100, 100]);
  });

  test('give way to each other, to walls first and to water lines if they can', () => {
    const two = placeMarks([wish('a', 100, 100), wish('b', 105, 100)], box, []);
    expect(two).toHaveLength(2);
    expect(overlaps(two.map(rectOf))).toBe(0);
    const wall = [[100, 0], [100, 300], 'hard'] as const;
    const [moved] = placeMarks([wish('a', 100, 100)], box, [wall]);
    expect(Math.abs((moved?.at[0] ?? 100) - 100)).toBeGreaterThanOrEqual(20);
  });

  test('are left out, never laid on others, where the box is full', () => {
    const many = Array.from({ length: 200 }, (_, i) => wish(String(i), 200, 150));
    const placed = placeMarks(many, box, []);
    expect(placed.length).toBeGreaterThan(20);
    expect(placed.length).toBeLessThan(200);
    expect(overlaps(placed.map(rectOf))).toBe(0);
  });
});

describe('the view from above, of any system', () => {
  const room = { width: 1900, height: 520, words: { width: 440, height: 86 } };

  test('has no outline and no words on others, and nothing outside its own size', () => {
    law((section) => {
      const drawn = seenFromAbove(section.above, room);
      const words = drawn.words.map(({ left, top }): Rect => {
        return { left, top, right: left + room.words.width, bottom: top + room.words.height };
      });
      const rims = drawn.shapes.filter(({ paint }) => paint.dash === undefined).map(boundsOf);
      expect(words).toHaveLength(section.above.length);
      expect(rims).toHaveLength(section.above.length);
      expect(overlaps([...words, ...rims])).toBe(0);
      for (const rect of [...words, ...drawn.shapes.map(boundsOf)]) {
        expect(rect.left).toBeGreaterThanOrEqual(0);
        expect(rect.right).toBeLessThanOrEqual(room.width + 1);
        expect(rect.top).toBeGreaterThanOrEqual(0);
        expect(rect.bottom).toBeLessThanOrEqual(drawn.height + 1);
      }
    });
  });

  test('is at one scale for all, the one that it names', () => {
    law((section) => {
      const drawn = seenFromAbove(section.above, room);
      const rims = drawn.shapes.filter(({ paint }) => paint.dash === undefined).map(boundsOf);
      section.above.forEach(({ rim }, i) => {
        const xs = rim.map(([x]) => x);
        const wide = Math.max(...xs) - Math.min(...xs);
        const { left = 0, right = 0 } = rims[i] ?? {};
        expect(Math.abs(right - left - (wide * 10) / drawn.oneTo)).toBeLessThan(0.3);
      });
    });
  });
});

function boundsOf(shape: Shape): Rect {
  const points = pointsOf(shape);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

describe('a usual scale', () => {
  test('is the largest of its kind that fits', () => {
    const fitting = (wide: number) => usualScale({ wide, high: 1 }, { width: 1000, height: 1000 }).oneTo;
    expect([900, 1000, 1001, 1100, 1600, 2100, 4900, 9000].map(fitting)).toEqual(
      [10, 10, 12, 12, 20, 25, 50, 100].map((one) => one),
    );
  });

  test('never makes a thing larger than its room', () => {
    const size = fc.double({ min: 1, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(size, size, (wide, high) => {
        const { perReal } = usualScale({ wide, high }, { width: 1000, height: 700 });
        expect(wide * perReal).toBeLessThanOrEqual(1000 * (1 + 1e-6));
        expect(high * perReal).toBeLessThanOrEqual(700 * (1 + 1e-6));
        // And none of its kind is left out that would fit: two neighbours are no further apart than a third.
        expect(Math.max((wide * perReal) / 1000, (high * perReal) / 700)).toBeGreaterThan(0.66);
      }),
    );
  });
});

test('shapes that are enlarged and moved keep their form, their lines and dashes growing with them', () => {
  const shape: Shape = { d: 'M0 0L10 -5Z', paint: { stroke: 'black', width: 3, dash: [4, 2] } };
  expect(changed([shape], { times: 2, right: 100, down: 1 })).toEqual([
    { d: 'M100 1L120 -9Z', paint: { stroke: 'black', width: 6, dash: [8, 4] } },
  ]);
});
