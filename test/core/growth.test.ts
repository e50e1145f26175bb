import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dateOf, dayNumber_d, dayOf } from '../../src/core/calendar.ts';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { countedWarmth_degC, massAfter_g, warmthTo_degC_d } from '../../src/core/stocking/growth.ts';
import type { System } from '../../src/core/system.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { demoSystem, english } from '../demoSystems.ts';

const masses = fc.double({ min: 0.5, max: 5000, noNaN: true });
const coefficients = fc.double({ min: 0.05, max: 5, noNaN: true });
const warmths = fc.double({ min: 0, max: 20_000, noNaN: true });

describe('growth by warmth', () => {
  test('there and back is the same mass', () => {
    fc.assert(
      fc.property(masses, masses, coefficients, (from_g, to_g, by) => {
        fc.pre(from_g <= to_g);
        const again_g = massAfter_g(from_g, by, warmthTo_degC_d(from_g, to_g, by));
        expect(again_g / to_g).toBeCloseTo(1, 9);
      }),
    );
  });

  test('warmth in two parts is warmth in one, and more warmth is never a lighter fish', () => {
    fc.assert(
      fc.property(masses, coefficients, warmths, warmths, (mass_g, by, one, two) => {
        const parts_g = massAfter_g(massAfter_g(mass_g, by, one), by, two);
        const whole_g = massAfter_g(mass_g, by, one + two);
        expect(parts_g / whole_g).toBeCloseTo(1, 9);
        expect(whole_g).toBeGreaterThanOrEqual(massAfter_g(mass_g, by, one) * (1 - 1e-12));
      }),
    );
  });

  test('refuses what is no fish and no warmth', () => {
    expect(() => massAfter_g(0, 1, 1)).toThrow(RangeError);
    expect(() => massAfter_g(1, Number.NaN, 1)).toThrow(RangeError);
    expect(() => warmthTo_degC_d(1, 2, 0)).toThrow(RangeError);
    expect(() => countedWarmth_degC(100, 20, 30)).toThrow(RangeError);
  });
});

describe('days of the calendar', () => {
  test('run from one to the next, there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (number) => {
        const iso = dateOf(number);
        expect(dayOf(iso), iso).not.toBeNull();
        expect(dayNumber_d(iso)).toBe(number);
        // The platform's own calendar is the judge.
        expect(new Date(number * 86_400_000).toISOString().slice(0, 10)).toBe(iso);
      }),
    );
  });

  test('that are none are refused', () => {
    for (const wrong of ['2031-02-29', '2031-13-01', '2031-04-31', '2031-4-3', 'soon', '']) {
      expect(dayOf(wrong), wrong).toBeNull();
    }
    expect(dayOf('2032-02-29')).toEqual({ year: 2032, month: 2, day: 29 });
  });
});

const ibc = demoSystem('hollow-lane-ibc').system;
const trout = demoSystem('old-tank-as-sump').system;

function figure(plan: Plan, key: string) {
  const found = plan.figures[key];
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

function withFish(system: System, change: Partial<NonNullable<System['fish']>>): System {
  if (system.fish === null) throw new Error('no fish');
  return { ...system, fish: { ...system.fish, ...change } };
}

const said = (plan: Plan, key: string): readonly string[] =>
  figure(plan, key).notes.map((note) => noteSentence(note, english, 'metric').replaceAll('\u00a0', ' '));

describe('when the fish are grown', () => {
  test('is a range of weeks, the late end first on paper, told as weeks of the calendar', () => {
    const plan = planOf(ibc);
    const { low, high, value, safeSide } = figure(plan, 'harvestWeeks');
    expect(safeSide).toBe('up');
    expect(value).toBe(high);
    expect(low).toBeLessThan(Number(high));
    expect(said(plan, 'harvestWeeks')[0]).toBe(
      'The first about the week of 4 Jan 2027, the last about the week of 22 Feb 2027. Weigh a sample; a hungry, crowded or cold fish takes longer.',
    );
  });

  test('follows the seasons of the place where there is one: in winter trout in cold air stand still', () => {
    const months = planOf(trout).tables.find((one) => one.key === 'fishMonths')?.rows ?? [];
    const at = (label: string) => months.find((row) => row[0] === label);
    expect(at('2026-12')?.[3]).toBe(at('2027-01')?.[3]);
    expect(Number(at('2027-06')?.[3])).toBeGreaterThan(Number(at('2027-05')?.[3]));
  });

  test('is not told for a kind whose growth nobody has printed: those are weighed', () => {
    const plan = planOf(demoSystem('bent-fork-stock-tank').system);
    expect(figure(plan, 'harvestWeeks').value).toBeNull();
    expect(said(plan, 'harvestWeeks')[0]).toContain('Weigh ten fish every two weeks');
  });

  test('is never, in water too cold, and no date pretends', () => {
    const plan = planOf({ ...ibc, water: { ...ibc.water, now_degC: 18 } });
    expect(figure(plan, 'harvestWeeks').value).toBeNull();
    expect(said(plan, 'harvestWeeks')[0]).toContain('not grown within three years');
  });

  test('is never in water in which they are not fed, whatever warmth their growth was measured in', () => {
    const cold = planOf({ ...trout, climate: null, water: { ...trout.water, now_degC: 9 } });
    expect(trout.fish?.species.growth?.from_degC).toBeLessThan(9);
    expect(trout.fish?.species.noFeedBelow_degC).toBeGreaterThan(9);
    expect(figure(cold, 'harvestWeeks').value).toBeNull();
  });

  test('is now, for fish that are grown', () => {
    expect(figure(planOf(withFish(ibc, { massNow_g: 500 })), 'harvestWeeks').value).toBe(0);
  });
});

describe('the month when the feed first meets a limit', () => {
  test('comes no later with more fish', () => {
    const months = [6, 12, 24, 48].map(
      (present) => figure(planOf(withFish(ibc, { present })), 'feedLimitMonths').value ?? Infinity,
    );
    expect(months).toEqual([...months].sort((a, b) => b - a));
    expect(new Set(months).size).toBeGreaterThan(1);
  });

  test('names the limit', () => {
    expect(said(planOf(ibc), 'feedLimitMonths')[0]).toContain('more than leafy beds of this size take up');
    expect(said(planOf(withFish(ibc, { present: 2 })), 'feedLimitMonths')[0]).toContain('No limit');
  });
});

describe('a kind that does not stand the seasons of the place', () => {
  test('is told so before anybody reads a date: tilapia outdoors where winters are cold', () => {
    const outdoors = { ...ibc, climate: demoSystem('old-tank-as-sump').system.climate ?? null };
    expect(said(planOf(outdoors), 'harvestWeeks').join(' ')).toContain('these fish die below 14 °C');
    expect(said(planOf(outdoors), 'feedLimitMonths')[0]).toContain('colder than these fish live in');
  });

  test('gets no feed in water in which somebody is to be called', () => {
    const months = planOf(trout).tables.find((one) => one.key === 'fishMonths')?.rows ?? [];
    const july = months.find((row) => row[0] === '2027-07');
    expect(july?.slice(5)).toEqual([0, 0, 'meetsHeat']);
    expect(said(planOf(trout), 'harvestWeeks').join(' ')).toContain('above 17 °C these fish get no feed');
  });
});
