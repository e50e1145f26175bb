/** When frosts end and begin. */
import { describe, expect, test } from 'vitest';
import { frostChances } from '../../src/core/crops/frostDates.ts';
import { content } from '../demoSystems.ts';

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
