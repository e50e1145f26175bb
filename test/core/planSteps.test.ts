/** The card says the same number as the core: every printed step is read back from its words and digits. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { surfaceSteps } from '../../src/core/geometry/surfaceSteps.ts';
import { volumeStep } from '../../src/core/geometry/volumeStep.ts';
import type { Figure, Plan, Step } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { unitSuffixes } from '../../src/core/units.ts';
import { say } from '../../src/wording/catalogue.ts';
import { stepLine } from '../../src/wording/step.ts';
import { content, english } from '../demoSystems.ts';
import { type Language, readLine, type Span } from '../printedStep.ts';
import { systems } from '../systemArbitrary.ts';
import { containerAndShare, shapes } from './geometryArbitraries.ts';
import { workedOut } from './workedOut.ts';

const runs = { numRuns: 200 };

const language: Language = {
  names: Object.values(content.terms).map((term) => term.name),
  roundDown: say(english, 'words.roundDown'),
  leastOf: say(english, 'words.leastOf'),
};

function printed(step: Step): string {
  return stepLine(step, english, content.terms);
}

function agree({ worked, printed: told }: { readonly worked: Span; readonly printed: Span }): boolean {
  return worked.low <= told.high && told.low <= worked.high;
}

function expectTrueOnPaper(step: Step): void {
  const line = printed(step);
  const read = readLine(line, language);
  expect(agree(read), `${line}: comes to ${read.worked.low} to ${read.worked.high}`).toBe(true);
}

function stepsOf(plan: Plan): readonly Step[] {
  return Object.values(plan.figures).flatMap((figure) => figure.steps);
}

function isByHand(step: Step): boolean {
  return step.byHand === 'yes';
}

/** Steps with a formula that are left to the computer are worked out from their symbols. */
function expectTrueBySymbols(step: Step): void {
  const ours = workedOut(step);
  const within = 1e-8 * Math.abs(step.gives.value) + 1e-9;
  expect(Math.abs(ours - step.gives.value), `${step.formula} comes to ${ours}`).toBeLessThanOrEqual(within);
}

function isForTheComputer(step: Step): boolean {
  return step.kind === 'formula' && step.byHand === 'no';
}

const plans = content.systems.map(({ id, system }) => [id, planOf(system)] as const);

describe.each(plans)('the worked steps of %s', (_id, plan) => {
  test('come to the printed result with a pencil', () => {
    stepsOf(plan).filter(isByHand).forEach(expectTrueOnPaper);
  });

  test('come to their value where they are left to the computer', () => {
    stepsOf(plan).filter(isForTheComputer).forEach(expectTrueBySymbols);
  });
});

describe('the worked steps of any system', () => {
  test('come to the printed result with a pencil', () => {
    fc.assert(
      fc.property(systems(), (system) => stepsOf(planOf(system)).filter(isByHand).forEach(expectTrueOnPaper)),
      runs,
    );
  });

  test('come to their value where they are left to the computer', () => {
    fc.assert(
      fc.property(systems(), (system) => {
        stepsOf(planOf(system)).filter(isForTheComputer).forEach(expectTrueBySymbols);
      }),
      runs,
    );
  });
});

describe.each(shapes)('the worked steps of a %s of any size', (shape) => {
  test('come to the printed result with a pencil', () => {
    fc.assert(
      fc.property(containerAndShare(shape), ([container, share]) => {
        const depth_mm = container.depth_mm * Math.max(share, 0.02);
        [...surfaceSteps(container, depth_mm), volumeStep(container, depth_mm)]
          .filter(isByHand)
          .forEach(expectTrueOnPaper);
      }),
      runs,
    );
  });
});

/** Figures whose steps do not end in their own value, each with the reason. */
const otherEnding: Readonly<Record<string, string>> = {
  tankLow_mm: 'the level is searched for; its steps check that the water below it is the lowest volume',
  sumpLow_mm: 'the level is searched for; its steps check that the water below it is the lowest volume',
};

function law(check: (figure: Figure, plan: Plan) => void): void {
  const all = (plan: Plan): void => {
    for (const figure of Object.values(plan.figures)) check(figure, plan);
  };
  for (const [, plan] of plans) all(plan);
  fc.assert(
    fc.property(systems(), (system) => all(planOf(system))),
    runs,
  );
}

describe('the steps of a figure', () => {
  test('end in its value', () => {
    law((figure) => {
      const last = figure.steps.at(-1)?.gives;
      if (last === undefined || otherEnding[figure.key] !== undefined) return;
      expect(last.value, figure.key).toBeCloseTo(figure.value ?? Number.NaN, 9);
      expect(last.unit, figure.key).toBe(figure.unit);
    });
  });

  test('are there for every figure that has a value, but for what was counted', () => {
    law((figure) => {
      if (figure.value === null) expect(figure.steps, figure.key).toEqual([]);
      else if (figure.steps.length === 0)
        expect(['fishPresent', 'waterMoved_L'], figure.key).toContain(figure.key);
    });
  });

  test('of a level that is searched for end in the volume at that level', () => {
    law((figure, plan) => {
      if (otherEnding[figure.key] === undefined) return;
      const volume = plan.figures[figure.key.replace('_mm', '_L')]?.value ?? Number.NaN;
      expect(figure.steps.at(-1)?.gives.value, figure.key).toBeCloseTo(volume, 6);
    });
  });

  test('hand their results on unchanged: what one step gives, the next one takes', () => {
    law((figure) => {
      figure.steps.forEach((step, i) => {
        for (const symbol of step.symbols) {
          const before = figure.steps.slice(0, i).findLast((one) => one.gives.term === symbol.term);
          if (before) expect(symbol.value, `${figure.key}: ${symbol.term}`).toBe(before.gives.value);
        }
      });
    });
  });

  test('use no sign for two things', () => {
    law((figure) => {
      for (const step of figure.steps) {
        const signs = step.symbols.map((symbol) => symbol.sign);
        expect(new Set(signs).size, `${figure.key}: ${step.formula}`).toBe(signs.length);
        const used = step.formula.match(/[A-Za-z][A-Za-z0-9]*/g)?.filter((one) => !functions.has(one)) ?? [];
        if (step.formula !== '') expect([...new Set(used)].sort(), step.formula).toEqual([...signs].sort());
      }
    });
  });

  test('mean by a term what the figure of that name says', () => {
    law((figure, plan) => {
      for (const symbol of figure.steps.flatMap((step) => step.symbols)) {
        const named = Object.values(plan.figures).filter((one) => bareKey(one.key) === symbol.term);
        if (named.length === 0) continue;
        const values = named.flatMap((one) => [one.value, one.low, one.high]);
        expect(values, `${figure.key} takes ${symbol.term} as ${symbol.value}`).toContain(symbol.value);
      }
    });
  });
});

const functions = new Set(['floor', 'min', 'sqrt', 'acos']);

function bareKey(key: string): string {
  const suffix = [...unitSuffixes].sort((a, b) => b.length - a.length).find((one) => key.endsWith(`_${one}`));
  return key.replace(/^bed\d+\./, '').slice(0, suffix ? -suffix.length - 1 : undefined);
}

describe('reading a step from paper', () => {
  const lines = plans.flatMap(([, plan]) => stepsOf(plan).filter(isByHand)).map(printed);

  test('finds something to read', () => {
    expect(lines.length).toBeGreaterThan(200);
  });

  test('allows no more than the digits on the paper', () => {
    const widths = lines.map((line) => {
      const { worked, printed: told } = readLine(line, language);
      return (worked.high - worked.low) / Math.max(Math.abs(told.high), 1e-9);
    });
    const narrow = widths.filter((width) => width <= 0.002);
    expect(narrow.length / widths.length).toBeGreaterThan(0.9);
  });

  test('refuses a result that is off by one in a hundred', () => {
    const isOff = (line: string): boolean => {
      const { worked, printed: told } = readLine(line, language);
      const middle = (told.low + told.high) / 2;
      const by = Math.max(Math.abs(middle) * 0.01, 1.5);
      return !agree({ worked, printed: { low: told.low + by, high: told.high + by } });
    };
    const missed = lines.filter((line) => !isOff(line));
    // A small difference of two large numbers is only as good as their last digits.
    expect(missed.filter((line) => !line.includes('−') && !line.includes(language.roundDown))).toEqual([]);
  });

  test('keeps the order of school', () => {
    const read = (line: string) => readLine(line, language).worked;
    expect(read('2 + 3 × 4^2 ÷ (7 − 1) = 10')).toEqual({ low: 10, high: 10 });
    expect(read(`${language.leastOf}(7; 3; 5) = 3`)).toEqual({ low: 3, high: 3 });
    expect(read(`${language.roundDown}(7 ÷ 2) = 3`)).toEqual({ low: 3, high: 3 });
    expect(read('√(16) − −2 = 6')).toEqual({ low: 6, high: 6 });
    expect(() => read('2 + gravel 3 = 5')).toThrow('cannot read');
    expect(() => read('2 + (3 = 5')).toThrow('expected');
  });

  test('takes a number with a name or unit for all numbers that are printed like it', () => {
    const { worked } = readLine('wet media 300\u00a0L ÷ 25 = 12', language);
    expect(worked.low).toBeCloseTo(299.995 / 25, 9);
    expect(worked.high).toBeCloseTo(300.005 / 25, 9);
  });
});
