import { describe, expect, test } from 'vitest';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import { standpipeStep } from '../../src/core/hydraulics/standpipeStep.ts';
import { weirFlow_L_h } from '../../src/core/hydraulics/weir.ts';
import { workedOut } from './workedOut.ts';

function expectSame(ours: number, theirs: number, relative: number) {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.abs(theirs));
}

describe('a weir and a hole', () => {
  test('a weir twice as long passes twice as much, at four times the head eight times as much', () => {
    expectSame(weirFlow_L_h(400, 30, 0.6), 2 * weirFlow_L_h(200, 30, 0.6), 1e-12);
    expectSame(weirFlow_L_h(200, 120, 0.6), 8 * weirFlow_L_h(200, 30, 0.6), 1e-12);
  });

  test('a hole twice as wide passes four times as much, at four times the head twice as much', () => {
    expectSame(orificeFlow_L_h(40, 300, 0.6), 4 * orificeFlow_L_h(20, 300, 0.6), 1e-12);
    expectSame(orificeFlow_L_h(20, 1200, 0.6), 2 * orificeFlow_L_h(20, 300, 0.6), 1e-12);
  });
});

describe('at the edges', () => {
  test('no head, no flow; no flow, no head', () => {
    expect(weirFlow_L_h(100, 0, 0.6)).toBe(0);
    expect(orificeFlow_L_h(25, 0, 0.6)).toBe(0);
    expect(standpipeFlow_L_h(25, 0)).toBe(0);
    expect(standpipeHead_mm(25, 0)).toBe(0);
    expect(workedOut(standpipeStep(25, 0))).toBe(0);
  });

  test('a coefficient of 1 is the most there can be', () => {
    expect(weirFlow_L_h(100, 10, 1)).toBeGreaterThan(0);
    expect(orificeFlow_L_h(100, 10, 1)).toBeGreaterThan(0);
  });

  test.each<readonly [string, () => unknown]>([
    ['crest of nothing', () => weirFlow_L_h(0, 10, 0.6)],
    ['head below the crest', () => weirFlow_L_h(100, -1e-9, 0.6)],
    ['weir coefficient of 0', () => weirFlow_L_h(100, 10, 0)],
    ['weir coefficient just past 1', () => weirFlow_L_h(100, 10, 1.000001)],
    ['bore of nothing', () => orificeFlow_L_h(0, 10, 0.6)],
    ['head below the hole', () => orificeFlow_L_h(25, -1e-9, 0.6)],
    ['hole coefficient of 0', () => orificeFlow_L_h(25, 10, 0)],
    ['hole coefficient just past 1', () => orificeFlow_L_h(25, 10, 1.000001)],
    ['standpipe of no bore', () => standpipeHead_mm(0, 100)],
    ['flow that runs backwards', () => standpipeHead_mm(25, -1)],
    ['flow that is no number', () => standpipeHead_mm(25, Number.NaN)],
    ['lip under air', () => standpipeFlow_L_h(25, -1)],
  ])('refuses a %s', (_what, sum) => {
    expect(sum).toThrow(RangeError);
  });
});
