import { describe, expect, test } from 'vitest';
import { ration_g_d } from '../../src/core/stocking/feed.ts';
import { densityCap_kg_L, wholeCount } from '../../src/core/stocking/limits.ts';

describe('a whole count', () => {
  test('rounds down what does not make a whole one', () => {
    expect(wholeCount(299.99, 25)).toBe(11);
    expect(wholeCount(324.9, 25)).toBe(12);
  });

  test('lets the last digit of a measured volume decide nothing', () => {
    expect(wholeCount(299.9999999, 25)).toBe(12);
    expect(wholeCount(300, 25)).toBe(12);
    expect(wholeCount(0.1 + 0.2, 0.1)).toBe(3);
  });
});

describe('fish mass in a tank', () => {
  test('is 20 kg in 1,000 L and half of that in a small tank', () => {
    // Somerville et al. 2014, FAO 589, p. 109 and p. 125, as quoted with the page.
    expect(densityCap_kg_L(1000) * 1000).toBe(20);
    expect(densityCap_kg_L(400) * 400).toBe(4);
  });
});

describe('feed of a day', () => {
  test('is count times mass times ration', () => {
    expect(ration_g_d(12, 180, 0.01)).toBeCloseTo(21.6, 12);
  });
});

describe('at the edges', () => {
  test('nothing makes no fish and no feed', () => {
    expect(wholeCount(0, 25)).toBe(0);
    expect(ration_g_d(0, 180, 0.01)).toBe(0);
  });

  test('the density steps at 500 L, to within the last digit', () => {
    expect(densityCap_kg_L(499.99)).toBe(0.01);
    expect(densityCap_kg_L(499.9999999999)).toBe(0.02);
    expect(densityCap_kg_L(500)).toBe(0.02);
  });

  test('our own mistakes are refused loudly', () => {
    expect(() => wholeCount(-1, 25)).toThrow(RangeError);
    expect(() => wholeCount(Number.NaN, 25)).toThrow(RangeError);
    expect(() => wholeCount(300, 0)).toThrow(RangeError);
    expect(() => densityCap_kg_L(0)).toThrow(RangeError);
    expect(() => ration_g_d(-1, 100, 0.01)).toThrow(RangeError);
    expect(() => ration_g_d(1, 0, 0.01)).toThrow(RangeError);
    expect(() => ration_g_d(1, 100, 0.21)).toThrow(RangeError);
  });
});
