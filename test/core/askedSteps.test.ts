import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { Quantity } from '../../src/core/plan/figure.ts';
import type { System } from '../../src/core/system.ts';
import type { Asked, AskedStep } from '../../src/core/workshop/askedSteps.ts';
import { carriedOn, stepName } from '../../src/core/workshop/carriedOn.ts';
import { levels } from '../../src/core/workshop/exercise.ts';
import { plainStep } from '../../src/core/workshop/plainStep.ts';
import { readContainers } from '../../src/schemas/containersText.ts';
import { exerciseSystem, ownSystem } from '../../src/schemas/people.ts';
import { content } from '../demoSystems.ts';
import { workedOut } from './workedOut.ts';

const facts = { ...content, bedName: 'Bed' };
const anyLevel = fc.constantFrom(...levels);

/** Containers of every shape that a roster knows, deep enough to hold water. */
const across = fc.integer({ min: 40, max: 200 });
const high = fc.integer({ min: 30, max: 120 });
const anyShape = fc.oneof(
  fc.tuple(fc.constantFrom('box', 'oval', 'trough'), across, across, high).map(([word, a, b, depth]) => {
    return `${word} ${Math.max(a, b) + 1} x ${Math.min(a, b)} x ${depth} cm`;
  }),
  fc.tuple(across, high).map(([diameter, depth]) => `drum ${diameter} x ${depth} cm`),
  fc.tuple(across, across, fc.integer({ min: 40, max: 90 })).map(([diameter, length, share]) => {
    return `lying drum ${diameter} x ${length} x ${Math.round((diameter * share) / 100)} cm`;
  }),
  fc.tuple(across, across, high).map(([top, floor, depth]) => `bucket ${top} x ${floor} x ${depth} cm`),
);

const anyOwn = fc.tuple(anyShape, anyShape).map(([tank, bed]): System | null => {
  const read = readContainers(`tank ${tank} + bed ${bed}`, []);
  if (!('containers' in read)) throw new Error(`tank ${tank} + bed ${bed}`);
  const own = ownSystem(read.containers, facts);
  // A tank too small for its bed is refused with a reason.
  return 'system' in own ? own.system : null;
});
const anyExercise = fc
  .tuple(anyLevel, fc.integer({ min: 0, max: 9_999 }), fc.integer({ min: 0, max: 40 }))
  .map(([level, seed, index]) => exerciseSystem({ level, seed, index }, facts));
const anyNamed = fc.constantFrom(...content.systems.map(({ system }) => system));
const anySystem = fc.oneof(anyOwn, anyExercise, anyNamed);

function eachSheet(check: (asked: readonly Asked[], system: System, level: string) => void): void {
  for (const level of levels)
    for (const { system } of content.systems) check(handoutFacts(system, level).asked, system, level);
  fc.assert(
    fc.property(anySystem, anyLevel, (system, level) => {
      if (system !== null) check(handoutFacts(system, level).asked, system, level);
    }),
    { numRuns: 400 },
  );
}

const isSame = (one: Quantity, other: Quantity): boolean =>
  one.unit === other.unit && Math.abs(one.value - other.value) <= 1e-9 * Math.abs(other.value);

/** `bed1`, `bed2`; the tank's figures have none. */
const vesselOf = (key: string): string => /^bed\d+/.exec(key)?.[0] ?? 'tank';

describe('every worksheet', () => {
  test('can be worked from what stands on it', () => {
    eachSheet((asked) => {
      const results: { readonly key: string; readonly step: AskedStep }[] = [];
      for (const { key, steps } of asked) {
        const measures = asked
          .filter((one) => vesselOf(one.key) === vesselOf(key))
          .flatMap((one) => one.measures);
        for (const step of steps) {
          for (const symbol of step.symbols) {
            const from = step.from[symbol.sign];
            const where = `${key}: ${symbol.term} ${symbol.value}`;
            if (from?.is === 'measure')
              expect(
                measures.some((one) => one.term === symbol.term && isSame(one, symbol)),
                where,
              ).toBe(true);
            else if (from?.is === 'result')
              expect(
                results.some((one) => one.key === from.key && isSame(one.step.gives, symbol)),
                where,
              ).toBe(true);
            else expect(from, where).toEqual({ is: 'told' });
          }
          results.push({ key, step });
        }
      }
    });
  });

  test('tells no number that it asks for', () => {
    eachSheet((asked) => {
      const steps = asked.flatMap((one) => one.steps);
      const answers = new Set(steps.filter(({ way }) => way !== 'given').map(({ gives }) => gives.term));
      for (const { symbols, from } of steps)
        for (const { sign, term } of symbols)
          if (from[sign]?.is === 'told') expect(answers.has(term), term).toBe(false);
    });
  });

  test('gives what its steps come to when somebody works them with what it says', () => {
    eachSheet((asked) => {
      for (const { steps } of asked)
        for (const step of steps)
          if (step.way === 'worked' && !/min|floor/.test(step.formula))
            expect(Math.abs(workedOut(step) / step.gives.value - 1)).toBeLessThan(1e-9);
    });
  });

  test('gives what its steps come to when the page that checks work goes on with its numbers', () => {
    eachSheet((asked) => {
      const carried = carriedOn(asked, new Map());
      for (const { key, steps } of asked)
        for (const step of steps) expect(carried.get(stepName(key, step))).toBeCloseTo(step.gives.value, 8);
    });
  });

  test('has no litres in it that are none', () => {
    eachSheet((asked) => {
      for (const { steps } of asked)
        for (const { symbols } of steps)
          for (const { unit, value, term } of symbols)
            if (unit === 'L') expect(Math.abs(value), term).toBeGreaterThan(1e-6);
    });
  });

  test('ends its fish with the number of the plan to take home, or asks for none', () => {
    eachSheet((asked, system) => {
      const fish = asked.filter(({ key }) => key.startsWith('fish'));
      const planned = planOf(system).figures['fishPlanned']?.value;
      if (planned === null) expect(fish).toEqual([]);
      else {
        expect(fish.at(-1)?.key).toBe('fishPlanned');
        expect(fish.at(-1)?.steps.at(-1)?.gives.value).toBe(planned);
      }
    });
  });

  test('for children has lengths in decimetres only, and neither π nor a slope', () => {
    eachSheet((asked, _, level) => {
      if (level !== 'primary') return;
      for (const { steps, measures } of asked) {
        for (const { unit } of [...measures, ...steps.flatMap(({ symbols, gives }) => [...symbols, gives])])
          expect(unit).not.toBe('mm');
        for (const { formula } of steps) expect(formula).not.toMatch(/π|sqrt|acos|\^|1000000/);
      }
    });
  });
});

test('no fish number of an exercise for children is above its plan', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 9_999 }), fc.integer({ min: 0, max: 60 }), (seed, index) => {
      const system = exerciseSystem({ level: 'primary', seed, index }, facts);
      const planned = planOf(system).figures['fishPlanned']?.value ?? 0;
      const fish = handoutFacts(system, 'primary').asked.filter(({ key }) => key.startsWith('fish'));
      expect(fish).toHaveLength(2);
      for (const { steps } of fish) expect(steps.at(-1)?.gives.value).toBe(planned);
    }),
    { numRuns: 60 },
  );
});

test('the sum of equal beds names each of them once', () => {
  const stair = content.systems.find(({ id }) => id === 'stair-wall');
  if (stair === undefined) throw new Error('no stair-wall');
  const { asked } = handoutFacts(stair.system, 'secondary');
  const [sum] = asked.find(({ key }) => key === 'wetMedia_L')?.steps ?? [];
  const beds = Object.values(sum?.from ?? {}).map((from) => (from.is === 'result' ? from.key : from.is));
  expect(beds).toEqual(['bed1.wetMedia_L', 'bed2.wetMedia_L', 'bed3.wetMedia_L']);
});

describe('a plain step', () => {
  const quantity = (sign: string, value: number, unit: Quantity['unit'] = 'L'): Quantity => {
    return { sign, term: sign, value, unit };
  };
  const of = (formula: string, symbols: readonly Quantity[], value = 0): AskedStep['formula'] =>
    plainStep({
      ...{ kind: 'formula', gives: quantity('x', value), formula, symbols },
      ...{ byHand: 'yes', source: 'geometry' },
    }).formula;

  test('has no factor of one and no term of nothing', () => {
    const [one, none] = [quantity('N', 1, 'ratio'), quantity('D', 0)];
    const [w, e] = [quantity('W', 135), quantity('e', 0.45, 'frac')];
    expect(of('N × floor(W ÷ e)', [one, w, e])).toBe('floor(W ÷ e)');
    expect(of('W × N ÷ e', [w, one, e])).toBe('W ÷ e');
    expect(of('(W − D) × e', [w, none, e])).toBe('W × e');
    expect(of('W − D', [w, none])).toBe('W');
  });

  test('keeps what divides, what is taken from nothing, and lengths of one', () => {
    const [one, none] = [quantity('N', 1, 'ratio'), quantity('D', 0)];
    const w = quantity('W', 135);
    expect(of('W ÷ N × D', [w, one, none])).toBe('W ÷ N × D');
    expect(of('D − W', [none, w])).toBe('D − W');
    expect(of('l × W', [quantity('l', 1, 'mm'), w])).toBe('l × W');
    expect(of('min(N; D)', [one, none])).toBe('min(N; D)');
  });
});
