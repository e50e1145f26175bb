/** What is drawn to be written on: empty graphs, and the strip that is held into the tank. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DipMark, dipPieces } from '../../src/drawing/dipPieces.ts';
import { plotGrid } from '../../src/drawing/plotGrid.ts';
import { plotRange } from '../../src/drawing/plotRange.ts';

describe('an empty graph', () => {
  test('runs in round steps from nothing to twice a limit, and round the good of a range', () => {
    const none = { low: null, high: null };
    expect(plotRange({ goodFrom: null, goodTo: 1, ...none })).toEqual({ low: 0, high: 2, step: 0.5 });
    expect(plotRange({ goodFrom: 6, goodTo: 8.5, ...none })).toEqual({ low: 4, high: 10, step: 1 });
    expect(plotRange({ goodFrom: 22, goodTo: 30, low: 14, high: 36 })).toEqual({
      low: 10,
      high: 40,
      step: 5,
    });
  });

  test('always shows the whole good range and something beyond it, in six parts at most', () => {
    const good = fc.tuple(
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.double({ min: 0.1, max: 50, noNaN: true }),
    );
    fc.assert(
      fc.property(good, ([goodFrom, more]) => {
        const goodTo = goodFrom + more;
        const range = plotRange({ goodFrom, goodTo, low: null, high: null });
        expect(range.low).toBeLessThanOrEqual(goodFrom);
        expect(range.high).toBeGreaterThan(goodTo);
        expect((range.high - range.low) / range.step).toBeLessThanOrEqual(6 + 1e-9);
      }),
    );
  });

  test('is hatched above the most and nowhere else, and has a column a day', () => {
    const grid = plotGrid(
      { low: 0, high: 2, step: 0.5, goodFrom: null, goodTo: 1 },
      { left: 100, width: 310, height: 200 },
    );
    const [hatch] = grid.shapes;
    const heights = [...(hatch?.d ?? '').matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(Math.max(...heights)).toBe(100);
    expect(Math.min(...heights)).toBe(0);
    expect(grid.columns).toHaveLength(31);
    expect(grid.columns[0]).toBe(105);
    expect(grid.ticks.map(({ y }) => y)).toEqual([200, 150, 100, 50, 0]);
  });
});

describe('a dip strip', () => {
  const named = (height_mm: number, kind: DipMark['kind']): DipMark => ({ kind, text: kind, height_mm });

  test('is cut into pieces that lap over by ten millimetres and reach the rim', () => {
    const pieces = dipPieces([], 500);
    expect(pieces.map(({ height }) => height)).toEqual([1600, 1700, 1700, 300]);
    expect(pieces.map(({ foot }) => foot)).toEqual(['floor', 'joint', 'joint', 'joint']);
  });

  test('names all lines that matter, however close they lie, and no name lies on another', () => {
    const heights = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 30, max: 130, noNaN: true })));
    fc.assert(
      fc.property(heights, ([full = 0, low = 0, quarter = 0]) => {
        const marks = [named(full, 'fullLine'), named(low, 'lowLine'), named(quarter, 'quarterLine')];
        const labels = dipPieces(marks, 150)[0]?.labels ?? [];
        expect(labels.map(({ text }) => text).sort()).toEqual(['fullLine', 'lowLine', 'quarterLine']);
        const tops = [...labels].sort((a, b) => a.top - b.top);
        for (const [index, label] of tops.entries()) {
          const next = tops[index + 1];
          if (next) expect(label.top + label.height).toBeLessThanOrEqual(next.top + 1e-9);
          expect(label.top).toBeGreaterThanOrEqual(0);
          expect(label.top + label.height).toBeLessThanOrEqual(1500);
        }
      }),
    );
  });
});
