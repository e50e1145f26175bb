/** When seeds come up, and when frosts end and begin. */
import { describe, expect, test } from 'vitest';
import { emergence } from '../../src/core/crops/emergence.ts';
import { frostChances } from '../../src/core/crops/frostDates.ts';
import { content } from '../demoSystems.ts';

describe('seedlings', () => {
  // Ranges of another document: FAO Technical Paper 589 (2014), appendix 1, as reprinted; a day either way.
  test.each([
    ['lettuce', 13, 21, 3, 7],
    ['cucumber', 20, 30, 3, 7],
    ['pepper', 22, 30, 8, 12],
  ] as const)(
    'of %s are up within the days that growers of another handbook see',
    (seed, from, to, least, most) => {
      for (const soil_degC of [from, (from + to) / 2, to]) {
        expect(emergence(seed, soil_degC), `${soil_degC}`).toBeGreaterThanOrEqual(least - 1);
        expect(emergence(seed, soil_degC), `${soil_degC}`).toBeLessThanOrEqual(most + 1);
      }
    },
  );

  test('of onion are up within two weeks at 12.8 degrees', () => {
    // Smith and others, Green onion production in California, UC ANR 7243: seventy percent in up to two weeks.
    expect(emergence('onion', 12.8)).toBeLessThanOrEqual(14);
    expect(emergence('onion', 12.8)).toBeGreaterThan(7);
  });

  test('come up no slower where it is warmer, up to 25 degrees', () => {
    for (const seed of ['lettuce', 'onion', 'spinach'] as const) {
      const days = Array.from({ length: 26 }, (_, soil_degC) => emergence(seed, soil_degC) ?? Number.NaN);
      expect(days.every((one, i) => i === 0 || one <= (days[i - 1] ?? 0))).toBe(true);
    }
  });

  test('are not promised where none came up or nobody tried, at the edges of the table', () => {
    expect(emergence('celery', 20)).toBe(7);
    expect(emergence('celery', 20.1)).toBeNull();
    expect(emergence('lettuce', 35)).toBeNull();
    expect(emergence('parsley', 5)).toBeNull();
    expect(emergence('onion', 35)).toBe(13);
    expect(emergence('onion', 35.1)).toBeNull();
    expect(emergence('onion', -0.1)).toBeNull();
  });
});

describe('frosts', () => {
  const nights = (id: string): readonly number[] => content.climates[id]?.min_degC ?? [];
  const dates = (of: ReturnType<typeof frostChances>) =>
    [of.ninetyPercent, of.half, of.tenPercent].map((one) => {
      if (one.state !== 'dates') throw new Error(one.state);
      return one;
    });

  test('end later and begin sooner for whoever wants to be surer', () => {
    for (const id of ['helsinki', 'warsaw', 'deBilt']) {
      const [often, half, seldom] = dates(frostChances(nights(id)));
      expect([often?.last_d, half?.last_d, seldom?.last_d]).toEqual(
        [often?.last_d, half?.last_d, seldom?.last_d].sort((a, b) => (a ?? 0) - (b ?? 0)),
      );
      expect(half?.first_d).toBeLessThan(often?.first_d ?? 0);
      expect(seldom?.first_d).toBeLessThan(half?.first_d ?? 0);
    }
  });

  test('fall half a year later in the other half of the world', () => {
    const north = nights('warsaw');
    const south = [...north.slice(6), ...north.slice(0, 6)];
    const [, up] = dates(frostChances(north));
    const [, down] = dates(frostChances(south));
    const apart_d = (((down?.last_d ?? 0) - (up?.last_d ?? 0) + 365) % 365) - 182.5;
    expect(Math.abs(apart_d)).toBeLessThanOrEqual(2);
  });

  test('have no date in the tropics, nor where it freezes all year', () => {
    expect(frostChances(nights('bangkok')).tenPercent).toEqual({ state: 'never' });
    expect(frostChances(Array.from({ length: 12 }, () => -3)).ninetyPercent).toEqual({ state: 'allYear' });
  });

  test('come in few years only where winters are mild', () => {
    const mild = frostChances([6, 6, 7, 9, 11, 13, 15, 15, 13, 11, 8, 6.5]);
    expect(mild.half).toEqual({ state: 'never' });
    expect(mild.tenPercent.state).toBe('dates');
  });
});
