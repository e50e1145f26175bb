import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import { band } from '../../src/drawing/band.ts';
import { spanAt } from '../../src/drawing/fills.ts';
import { extentOf, fitInto, roundLength_mm } from '../../src/drawing/fit.ts';
import { pushApart } from '../../src/drawing/labels.ts';
import { type Room, sectionDrawing } from '../../src/drawing/sectionDrawing.ts';
import type { Shape } from '../../src/drawing/shape.ts';
import { content } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

/** Every point that a path goes through. */
function pointsOf({ d }: Shape): readonly (readonly [number, number])[] {
  return [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe('labels that are pushed apart', () => {
  const wish = fc.record({
    middle: fc.double({ min: 0, max: 1000, noNaN: true }),
    height: fc.double({ min: 1, max: 80, noNaN: true }),
  });
  const wishes = fc.array(wish, { maxLength: 12 }).map((all) => [...all].sort((a, b) => a.middle - b.middle));
  type Wishes = readonly { readonly middle: number; readonly height: number }[];

  const law = (check: (all: Wishes, tops: readonly number[]) => void, bottom = 1000) =>
    fc.assert(
      fc.property(wishes, (all) => check(all, pushApart(all, 0, bottom))),
      { numRuns: 300 },
    );
  const heightOf = (all: Wishes): number => all.reduce((sum, one) => sum + one.height, 0);

  test('are as many as there were', () => {
    law((all, tops) => {
      expect(tops).toHaveLength(all.length);
    });
  });

  test('never overlap and keep their order', () => {
    law((all, tops) => {
      tops.slice(1).forEach((top, i) => {
        expect(top).toBeGreaterThanOrEqual((tops[i] ?? 0) + (all[i]?.height ?? 0) - 1e-9);
      });
    });
  });

  test('stay between top and bottom where they fit', () => {
    law((all, tops) => {
      if (heightOf(all) > 400) return;
      tops.forEach((top, i) => {
        expect(top).toBeGreaterThanOrEqual(-1e-9);
        expect(top + (all[i]?.height ?? 0)).toBeLessThanOrEqual(400 + 1e-9);
      });
    }, 400);
  });

  test('stand where they wish to, where none is in another’s way', () => {
    const apart = fc
      .array(
        fc.tuple(fc.double({ min: 0, max: 40, noNaN: true }), fc.double({ min: 1, max: 40, noNaN: true })),
        { maxLength: 12 },
      )
      .map((gaps) => {
        let at = 0;
        return gaps.map(([gap, height]) => {
          const middle = at + gap + height / 2;
          at += gap + height;
          return { middle, height };
        });
      });
    fc.assert(
      fc.property(apart, (all) => {
        pushApart(all, 0, 1000).forEach((top, i) => {
          expect(top).toBeCloseTo((all[i]?.middle ?? 0) - (all[i]?.height ?? 0) / 2, 6);
        });
      }),
    );
  });

  test('share the way: two that want the same place move by as much', () => {
    expect(
      pushApart(
        [
          { middle: 50, height: 20 },
          { middle: 50, height: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([30, 50]);
  });

  test('share the way where they overlap by little', () => {
    const close = [
      { middle: 50, height: 20 },
      { middle: 66, height: 20 },
    ];
    expect(pushApart(close, 0, 100)).toEqual([38, 58]);
  });

  test('are packed from the top where there are too many', () => {
    const many = Array.from({ length: 4 }, () => ({ middle: 90, height: 30 }));
    expect(pushApart(many, 0, 100)).toEqual([0, 30, 60, 90]);
  });
});

describe('a band', () => {
  const limits = { actBelow: 10, goodFrom: 20, goodTo: 28, actAbove: 36 };

  test('puts its limits in their order, to scale, with equal ends', () => {
    const { ticks } = band(limits, 1000, 40);
    expect(ticks.map((tick) => tick.limit)).toEqual([0, 1, 2, 3]);
    const xs = ticks.map((tick) => tick.x);
    expect(xs[0]).toBeCloseTo(1000 - (xs[3] ?? 0), 9);
    // Wide enough to be seen, hatched, from a step away.
    expect(xs[0]).toBeGreaterThan(100);
    expect(((xs[1] ?? 0) - (xs[0] ?? 0)) / ((xs[2] ?? 0) - (xs[1] ?? 0))).toBeCloseTo(10 / 8, 9);
  });

  test('names limits that coincide only once', () => {
    expect(band({ ...limits, goodFrom: 10 }, 1000, 40).ticks.map((tick) => tick.limit)).toEqual([0, 2, 3]);
  });

  test('stays in its box, but for the feet of its ticks', () => {
    const limit = fc.double({ min: -5, max: 40, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(limit, limit, limit, limit), fc.integer({ min: 300, max: 2000 }), (all, width) => {
        const [actBelow = 0, goodFrom = 0, goodTo = 0, actAbove = 0] = [...all].sort((a, b) => a - b);
        fc.pre(actAbove - actBelow > 0.1);
        for (const shape of band({ actBelow, goodFrom, goodTo, actAbove }, width, 40).shapes) {
          for (const [x, y] of pointsOf(shape)) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(width);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(49);
          }
        }
      }),
    );
  });

  test('carries no meaning by colour: only black and white', () => {
    const colours = band(limits, 1000, 40).shapes.flatMap(({ paint }) => [paint.fill, paint.stroke]);
    expect(colours.filter((one) => one !== undefined && one !== 'black' && one !== 'white')).toEqual([]);
  });
});

describe('the scale', () => {
  test('is the same along and up, and fits the box', () => {
    const extent = { left: -100, right: 1900, bottom: -50, top: 950 };
    const at = fitInto(extent, { width: 500, height: 400 });
    expect((at.x(1900) - at.x(-100)) / 2000).toBeCloseTo(at.scale, 9);
    expect((at.y(-50) - at.y(950)) / 1000).toBeCloseTo(at.scale, 9);
    const xs = [at.x(-100), at.x(1900)];
    const ys = [at.y(950), at.y(-50)];
    expect(Math.min(...xs, ...ys)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...xs)).toBeLessThanOrEqual(500);
    expect(Math.max(...ys)).toBeLessThanOrEqual(400);
    // No smaller than it has to be: but for a little air it is as wide as the box.
    expect((xs[1] ?? 0) - (xs[0] ?? 0)).toBeGreaterThan(470);
  });

  test('of the bar is round in the reader’s unit, and the longest that has room', () => {
    expect([999, 1000, 499, 150, 3].map((most) => roundLength_mm(most, 1))).toEqual([500, 1000, 200, 100, 2]);
    expect(roundLength_mm(300, 25.4)).toBeCloseTo(254, 9);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), (most) => {
        expect(roundLength_mm(most, 1)).toBeLessThanOrEqual(most * (1 + 1e-9));
        expect(roundLength_mm(most, 1) * 2.5 * (1 + 1e-9)).toBeGreaterThanOrEqual(most);
      }),
    );
  });
});

describe('the section of any system', () => {
  const labelHeights = (beds: number): Room['labelHeights'] => ({
    'tank.full': 40,
    'tank.low': 40,
    'tank.blocked': 40,
    'sump.full': 40,
    'sump.low': 40,
    'sump.blocked': 40,
    ...Object.fromEntries(Array.from({ length: beds }, (_, i) => [`bed.${i}`, 80])),
  });
  const roomFor = (beds: number): Room => ({
    width: 1800,
    height: 900,
    labelWidth: 410,
    unit_mm: 1,
    labelHeights: labelHeights(beds),
  });
  /** Half a line's width may stand over the edge. */
  const edge = 10;

  const law = (check: (drawing: ReturnType<typeof sectionDrawing>, beds: number) => void) => {
    const one = (system: (typeof content.systems)[number]['system']) => {
      const room = roomFor(system.beds.length);
      check(sectionDrawing(planOf(system).section, room), system.beds.length);
    };
    for (const { system } of content.systems) one(system);
    fc.assert(fc.property(systems(), one), { numRuns: 200 });
  };

  test('stays in the room that the sheet gives it', () => {
    law((drawing) => {
      for (const shape of drawing.shapes) {
        for (const [x, y] of pointsOf(shape)) {
          expect(x, shape.d.slice(0, 80)).toBeGreaterThanOrEqual(-edge);
          expect(x, shape.d.slice(0, 80)).toBeLessThanOrEqual(drawing.width + edge);
          expect(y, shape.d.slice(0, 80)).toBeGreaterThanOrEqual(-edge);
          expect(y, shape.d.slice(0, 80)).toBeLessThanOrEqual(drawing.height + edge);
        }
      }
    });
  });

  test('holds only numbers that a printer can read', () => {
    law((drawing) => {
      for (const { d } of drawing.shapes) expect(d).toMatch(/^([MLZ]|-?\d+(\.\d+)?|\s)+$/);
    });
  });

  test('labels the tank and every bed once, one below the other', () => {
    law((drawing, beds) => {
      const keys = drawing.labels.map((label) => label.key);
      expect(new Set(keys).size).toBe(keys.length);
      expect(keys).toContain('tank.full');
      for (let i = 0; i < beds; i++) expect(keys).toContain(`bed.${i}`);
      const tops = drawing.labels.map((label) => label.top);
      expect([...tops].sort((a, b) => a - b)).toEqual(tops);
    });
  });

  test('has a scale bar as long as it says', () => {
    fc.assert(
      fc.property(systems(), (system) => {
        const { section } = planOf(system);
        const room = roomFor(system.beds.length);
        const { bar } = sectionDrawing(section, room);
        const extent = extentOf(section);
        const scale = Math.min((room.width - room.labelWidth - 60) / (extent.right - extent.left), 10);
        expect(bar.length / bar.real_mm).toBeLessThanOrEqual(scale * (1 + 1e-9));
        expect(bar.length).toBeGreaterThan(0);
      }),
      { numRuns: 50 },
    );
  });

  test('numbers its beds as soon as there are two', () => {
    law((drawing, beds) => {
      expect(new Set(drawing.tags.map((tag) => tag.text)).size).toBe(beds < 2 ? 0 : beds);
    });
  });
});

describe('the inside of a vessel at a height', () => {
  const tub = [
    [0, 500],
    [100, 0],
    [900, 0],
    [1000, 500],
  ] as const;

  test('lies between its walls', () => {
    expect(spanAt(tub, 250)).toEqual([50, 950]);
    expect(spanAt(tub, 0)).toEqual([100, 900]);
  });

  test('is nowhere above the rim and below the floor', () => {
    expect(spanAt(tub, 501)).toBeNull();
    expect(spanAt(tub, -1)).toBeNull();
  });
});

describe('a tank that is sunk into the ground up to its rim', () => {
  test('lies below the floor, and both stay in the drawing', () => {
    const sunk = { ...content.systems[0]?.system, id: 'sunk', name: 'Sunk', place: '' } as System;
    const tank = { ...sunk.tank, above_mm: -sunk.tank.container.depth_mm - 400 };
    const { section } = planOf({ ...sunk, tank, beds: [], pump: null, sump: null });
    expect(extentOf(section).top).toBe(0);
  });
});
