/** Whoever works an exercise by hand rounds on the way; the fish that they count shall still be those of the answers. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { volume_L } from '../../src/core/geometry/container.ts';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import type { Asked, AskedStep } from '../../src/core/workshop/askedSteps.ts';
import { carriedOn, stepName } from '../../src/core/workshop/carriedOn.ts';
import { exercises, type Level, levels } from '../../src/core/workshop/exercise.ts';
import { steadyCounts } from '../../src/core/workshop/steadyCounts.ts';
import { exerciseSystem } from '../../src/schemas/people.ts';
import { content } from '../demoSystems.ts';

const facts = { ...content, bedName: 'Bed' };
const piByHand = 3.14;

type Hand = (value: number, step: AskedStep) => number;
const whole: Hand = (value, { gives }) => (gives.unit === 'L' ? Math.round(value) : value);
const wholeLow: Hand = (value, { gives }) => (gives.term === 'tankLow' ? Math.round(value) : value);
const tenth: Hand = (value, { gives }) => (gives.unit === 'kg' ? Math.round(value * 10) / 10 : value);
const shortPi: Hand = (value, { formula }) => (formula.includes('π') ? (value * piByHand) / Math.PI : value);
const hands: Readonly<Record<string, readonly Hand[]>> = {
  'whole litres': [whole],
  'whole litres of the lowest water only': [wholeLow],
  'tenths of a kilogram': [tenth],
  'whole litres and tenths of a kilogram': [whole, tenth],
  '3.14 for π': [shortPi],
  'all of them': [shortPi, whole, tenth],
};

/** Fish by the names of their steps, for somebody who rounds every result on the way and goes on with it. */
function fishOf(asked: readonly Asked[], ways: readonly Hand[]): readonly (readonly [string, number])[] {
  const written = new Map<string, number>();
  for (const { key, steps } of asked)
    for (const step of steps) {
      const name = stepName(key, step);
      const value = carriedOn(asked, written).get(name) ?? Number.NaN;
      written.set(
        name,
        ways.reduce((so, way) => way(so, step), value),
      );
    }
  return [...written].filter(([name]) => name.startsWith('fish') && !name.startsWith('fishByDensity-1'));
}

const anyExercise = fc.record({
  level: fc.constantFrom(...levels),
  seed: fc.integer({ min: 0, max: 9_999 }),
  index: fc.integer({ min: 0, max: 40 }),
});

function askedOf(exercise: { level: Level; seed: number; index: number }): readonly Asked[] {
  return handoutFacts(exerciseSystem(exercise, facts), exercise.level).asked;
}

test('the fish of an exercise do not hang on a digit that is rounded away by hand', () => {
  fc.assert(
    fc.property(anyExercise, (exercise) => {
      const asked = askedOf(exercise);
      const exact = fishOf(asked, []);
      for (const [how, ways] of Object.entries(hands)) expect(fishOf(asked, ways), how).toEqual(exact);
    }),
    { numRuns: 400 },
  );
});

const counted: readonly string[] = ['fish', 'plants'];

test('nothing that is counted hangs on a number that passes for right and is half a per cent off', () => {
  fc.assert(
    fc.property(anyExercise, (exercise) => {
      const asked = askedOf(exercise);
      const all = asked.flatMap(({ key, steps }) =>
        steps.map((step) => ({ name: stepName(key, step), unit: step.gives.unit })),
      );
      const countsOf = (written: ReadonlyMap<string, number>) => {
        const carried = carriedOn(asked, written);
        return all.filter(({ unit }) => counted.includes(unit)).map(({ name }) => carried.get(name));
      };
      const exact = carriedOn(asked, new Map());
      expect(countsOf(new Map()).length).toBeGreaterThan(2);
      for (const { name } of all.filter(({ unit }) => !counted.includes(unit)))
        for (const by of [0.995, 1.005]) {
          const off = new Map([[name, (exact.get(name) ?? Number.NaN) * by]]);
          expect(countsOf(off), `${name} × ${by}`).toEqual(countsOf(new Map()));
        }
    }),
    { numRuns: 400 },
  );
});

test('no fish hang on such a digit where a class is so large that its exercises come round again either', () => {
  const voids_frac = 0.5;
  const all = exercises('adults', 1, 1_200, voids_frac);
  expect(all).toHaveLength(1_200);
  expect(new Set(all).size).toBeLessThan(1_200);
  for (const { tank, full_mm, bed, waterLine_mm } of all) {
    const litres = { tank, full_L: volume_L(tank, full_mm), bed, wet_L: volume_L(bed, waterLine_mm) };
    expect(steadyCounts(litres, voids_frac)).toBe(true);
  }
});
