import { describe, expect, test } from 'vitest';
import { tanAtUnionised_mg_L, unionised_frac } from '../../src/core/water/ammonia.ts';
import { codesOf, figureOf, plain, planned, tableFish, valueIn } from './plainSystems.ts';

describe('the most ammonia that a test may show', () => {
  const limit = (change: Parameters<typeof planned>[0]) => valueIn(planned(change), 'tanMax_mg_L');

  test('is the common limit in neutral water, though this kind stands more', () => {
    expect(limit({})).toBe(1);
  });

  test('is the limit of the kind where that is lower', () => {
    const limits = { ...tableFish.species.limits, tanMax_mg_L: 0.5 };
    expect(limit({ fish: { ...tableFish, species: { ...tableFish.species, limits } } })).toBe(0.5);
  });

  test('falls with the pH, at the warm end of the good range', () => {
    // At pH 8.5 and 28 °C: pKa = 0.09018 + 2729.92 ÷ 301.15 = 9.1552, so 18.12 % are poisonous; 0.05 ÷ 0.1812.
    expect(limit({ water: { pH: 8.5, now_degC: 20 } })).toBeCloseTo(0.276, 3);
    expect(codesOf(planned({ water: { pH: 8.5, now_degC: 20 } }), 'tanMax_mg_L')).toEqual(['tanAtPH']);
  });

  test('counts with the water’s own warmth where it is warmer still', () => {
    const warm = limit({ water: { pH: 8.5, now_degC: 33 } }) ?? Number.NaN;
    expect(warm).toBeLessThan(limit({ water: { pH: 8.5, now_degC: 28 } }) ?? Number.NaN);
  });

  test('takes the highest pH the fish stand where none was measured', () => {
    const plan = planned({ water: { pH: null, now_degC: null } });
    expect(codesOf(plan, 'tanMax_mg_L')).toEqual(['tanAtWorstPH']);
    expect(figureOf(plan, 'tanMax_mg_L').notes[0]?.numbers).toEqual({ pH: 8, water_degC: 28 });
  });
});

describe('water to add and to change', () => {
  test('is one to three in a hundred lost in a day, and more is a leak', () => {
    // Somerville et al. 2014, FAO 589, section 3.4, p. 29, as quoted.
    expect(figureOf(planned({}), 'topUpLimit_L_d')).toMatchObject({ value: 21, low: 7, high: 21 });
  });

  test('is a quarter or a tenth of all water, not of the tank alone', () => {
    // Common practice, no source.
    const plan = planned({
      beds: [{ ...plain.beds[0], mode: 'constantFlood' } as (typeof plain.beds)[number]],
    });
    expect(valueIn(plan, 'waterChange_L')).toBe(205);
    expect(valueIn(plan, 'smallChange_L')).toBe(82);
  });
});

describe('at the edges', () => {
  test('the share is worked out up to the ends of its range and not beyond', () => {
    expect(unionised_frac(4, 0)).toBeGreaterThan(0);
    expect(unionised_frac(11, 50)).toBeLessThan(1);
    expect(() => unionised_frac(3.99, 20)).toThrow(RangeError);
    expect(() => unionised_frac(11.01, 20)).toThrow(RangeError);
    expect(() => unionised_frac(7, -0.1)).toThrow(RangeError);
    expect(() => unionised_frac(7, 50.1)).toThrow(RangeError);
    expect(() => unionised_frac(Number.NaN, 20)).toThrow(RangeError);
    expect(() => tanAtUnionised_mg_L(0, 7, 20)).toThrow(RangeError);
  });

  test('water below freezing is no reason to stop: the warm end of the fish counts', () => {
    expect(valueIn(planned({ water: { pH: 7, now_degC: -2 } }), 'tanMax_mg_L')).toBe(1);
  });
});
