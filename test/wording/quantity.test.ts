import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/core/plan/planOf.ts';
import {
  amount,
  amountParts,
  grouped,
  precise,
  range,
  type Side,
  spoonfuls,
  type UnitSystem,
} from '../../src/wording/quantity.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { english } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

const metric = (value: number, unit: string, side: Side = 'nearest') =>
  amount(value, unit, side, 'metric').replace('\u00a0', ' ');
const us = (value: number, unit: string, side: Side = 'nearest') =>
  amount(value, unit, side, 'us').replace('\u00a0', ' ');

test('digits of a long whole number stand in threes, decimals together', () => {
  const spaced = (text: string) => grouped(text).replaceAll('\u00a0', ' ');
  expect(spaced(' × l ÷ 1000000 + ')).toBe(' × l ÷ 1 000 000 + ');
  expect(spaced('12345.678901')).toBe('12 345.678901');
  expect(spaced('9999 0.0050402 273.15')).toBe('9999 0.0050402 273.15');
});

describe('an amount', () => {
  test('stands with its unit, bound to it by a space that does not break', () => {
    expect(amount(565, 'L', 'down', 'metric')).toBe('565\u00a0L');
    expect(metric(25.4, 'mm')).toBe('25 mm');
    expect(metric(21.6, 'g_d', 'down')).toBe('21 g');
    expect(metric(5.46, 'g_d', 'down')).toBe('5.4 g');
    expect(metric(0.02, 'kg_L')).toBe('0.02 kg/L');
    expect(metric(0.276, 'mg_L', 'down')).toBe('0.27 mg/L');
    expect(metric(0.015, 'frac')).toBe('1.5 %');
    expect(metric(6.84, 'pH')).toBe('6.8');
  });

  test('is told in US units where people there use them', () => {
    // 1 US gallon is 3.785411784 L, 1 inch 25.4 mm, 1 pound 453.59237 g: exact by definition (NIST Handbook 44, appendix C).
    expect(us(3.785411784 * 150, 'L', 'down')).toBe('150 gal');
    expect(us(254, 'mm')).toBe('10 in');
    expect(us(0.45359237 * 4, 'kg')).toBe('4 lb');
    expect(us(3.785411784 * 240, 'L_h')).toBe('240 gal/h');
    expect(us(20, 'degC')).toBe('68 °F');
    expect(us(-40, 'degC')).toBe('−40 °F');
  });

  test('of feed stays in grams, for the kitchen scale', () => {
    expect(us(21.6, 'g_d', 'down')).toBe('21 g');
  });

  test('is rounded to the side that does no harm', () => {
    expect(metric(564.99, 'L', 'down')).toBe('564 L');
    expect(metric(564.01, 'L', 'up')).toBe('565 L');
    expect(metric(564.5, 'L', 'nearest')).toBe('565 L');
  });

  test('of a unit that nobody knows is our own mistake', () => {
    expect(() => amount(1, 'firkin', 'down', 'metric')).toThrow('firkin');
  });
});

describe('a range', () => {
  const said = (low: number, high: number, unit: string, side: Parameters<typeof range>[2] = 'nearest') =>
    range({ low, high }, unit, side, 'metric', 'to').replaceAll('\u00a0', ' ');

  test('names its unit once', () => {
    expect(said(20, 28, 'degC')).toBe('20 to 28 °C');
    expect(said(6, 8.5, 'pH')).toBe('6 to 8.5');
  });

  test('is one number where both ends print alike', () => {
    expect(said(120.2, 120.4, 'L')).toBe('120 L');
  });

  test('rounds both ends to the same side', () => {
    expect(said(105.9, 135.9, 'L', 'down')).toBe('105 to 135 L');
    expect(said(105.1, 135.1, 'L', 'up')).toBe('106 to 136 L');
  });

  test('rounds each end to its own side where it has one', () => {
    expect(said(20.4, 28.6, 'degC', { low: 'up', high: 'down' })).toBe('21 to 28 °C');
  });
});

describe('spoonfuls', () => {
  test('are quarters, rounded down', () => {
    expect([4.8, 0.5, 1, 2.26, 0.99].map(spoonfuls)).toEqual(['4¾', '½', '1', '2¼', '¾']);
  });

  test('below a quarter are to be weighed instead', () => {
    expect([0, 0.1, 0.2499].map(spoonfuls)).toEqual([null, null, null]);
  });

  test('let the last digit decide nothing', () => {
    expect(spoonfuls(0.9999999999)).toBe('1');
    expect(spoonfuls(0.2499999999)).toBe('¼');
  });

  test('never tell more than there is', () => {
    const worth = { '': 0, '¼': 0.25, '½': 0.5, '¾': 0.75 };
    fc.assert(
      fc.property(fc.double({ min: 0.25, max: 400, noNaN: true }), (value) => {
        const text = spoonfuls(value) ?? '';
        const part = /[¼½¾]?$/.exec(text)?.[0] as keyof typeof worth;
        const told = Number(text.slice(0, text.length - part.length)) + worth[part];
        expect(told).toBeLessThanOrEqual(value * (1 + 1e-8));
        expect(value - told).toBeLessThan(0.25);
      }),
    );
  });
});

describe('a number of a worked step', () => {
  test('has five digits that count', () => {
    expect([300, 1234.567, 0.0123456789, 9.80665, 123456.7].map((value) => precise(value))).toEqual([
      '300',
      '1234.6',
      '0.012346',
      '9.8067',
      '123457',
    ]);
  });

  test('is near its value by half of the last digit', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e9, noNaN: true }), (value) => {
        expect(Math.abs(Number(precise(value)) - value)).toBeLessThanOrEqual(
          Math.max(0.5, value * 5.0001e-5),
        );
      }),
    );
  });

  test('has a true minus, and none before nothing', () => {
    expect(precise(-5)).toBe('−5');
    expect(precise(-1e-12)).toBe('0');
    expect(precise(-0)).toBe('0');
  });
});

/** The printed number, back in the core's unit. */
function readBack(text: string, unit: string, units: UnitSystem): number {
  const number = Number(text.replace('−', '-'));
  if (units === 'metric') return unit === 'frac' ? number / 100 : number;
  const per: Readonly<Record<string, number>> = {
    mm: 25.4,
    L: 3.785411784,
    L_d: 3.785411784,
    L_h: 3.785411784,
    kg: 0.45359237,
    frac: 0.01,
    m: 0.3048,
    m2: 0.3048 ** 2,
    kg_m2: 0.45359237 / 0.3048 ** 2,
  };
  if (unit === 'degC') return ((number - 32) * 5) / 9;
  return number * (per[unit] ?? 1);
}

describe('every figure of any system', () => {
  const law = (check: (value: number, unit: string, side: Side, units: UnitSystem) => void) =>
    fc.assert(
      fc.property(systems(), fc.constantFrom<UnitSystem>('metric', 'us'), (system, units) => {
        for (const { value, unit, safeSide } of Object.values(planOf(system).figures)) {
          if (value !== null) check(value, unit, safeSide, units);
        }
      }),
      { numRuns: 200 },
    );

  test('prints no more than there is where less is safe, and no less where more is safe', () => {
    law((value, unit, side, units) => {
      const told = readBack(amountParts(value, unit, side, units).number, unit, units);
      const slack = 2e-8 * Math.max(1, Math.abs(value));
      if (side === 'down') expect(told, `${value} ${unit} in ${units}`).toBeLessThanOrEqual(value + slack);
      if (side === 'up') expect(told, `${value} ${unit} in ${units}`).toBeGreaterThanOrEqual(value - slack);
    });
  });

  test('prints a plain number, without exponent, hyphen or a minus before nothing', () => {
    law((value, unit, side, units) => {
      expect(amountParts(value, unit, side, units).number).toMatch(/^(?!−0$)−?\d+(\.\d*[1-9])?$/);
    });
  });

  test('stays what it is in the plan, whatever units the reader has', () => {
    fc.assert(
      fc.property(systems(), (system) => {
        const plan = planOf(system);
        for (const units of ['us', 'metric'] as const) {
          for (const figure of Object.values(plan.figures)) {
            if (figure.value !== null) amount(figure.value, figure.unit, figure.safeSide, units);
            for (const note of figure.notes) noteSentence(note, english, units);
          }
        }
        expect(plan).toEqual(planOf(system));
      }),
      { numRuns: 50 },
    );
  });
});

describe('at the edges', () => {
  test('a hair below a whole number is that number', () => {
    expect(metric(299.9999999999, 'L', 'down')).toBe('300 L');
    expect(metric(300.0000000001, 'L', 'up')).toBe('300 L');
    expect(metric(299.999, 'L', 'down')).toBe('299 L');
  });

  test('nothing is 0, never −0', () => {
    for (const side of ['down', 'up', 'nearest'] as const) {
      expect(metric(0, 'L', side)).toBe('0 L');
      expect(metric(-1e-12, 'mm', side)).toBe('0 mm');
    }
    expect(metric(-0.4, 'mm', 'nearest')).toBe('0 mm');
    expect(metric(-0.4, 'mm', 'up')).toBe('0 mm');
  });

  test('below nothing down is further down', () => {
    expect(metric(-0.4, 'mm', 'down')).toBe('−1 mm');
    expect(us(-1.4, 'degC', 'down')).toBe('29 °F');
  });

  test('the digit after the point goes at ten, on the side where it was rounded', () => {
    expect(metric(9.96, 'L', 'down')).toBe('9.9 L');
    expect(metric(9.96, 'L', 'up')).toBe('10 L');
    expect(metric(10.04, 'L', 'up')).toBe('11 L');
  });
});
