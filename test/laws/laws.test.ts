/** Every law on 200 cases; `npm run prove` tries the same ones on 100,000. */
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { contentProblems } from '../demoSystems.ts';
import { type Broken, tried, withPlan } from './law.ts';
import { drawn, formulaLaws, lawNames, planLaws } from './laws.ts';

const seed = fc.readConfigureGlobal().seed ?? Math.trunc(Math.random() * 2 ** 31);
const runs = 200;

function told(broken: Broken | null): string {
  return broken === null
    ? ''
    : `${broken.why}\ncase ${broken.case}\nFC_SEED=${broken.seed}, path ${broken.path}`;
}

test('the content that laws borrow fish and media from has no problem', () => {
  expect(contentProblems).toEqual([]);
});

describe('formulas', () => {
  test.each(formulaLaws)('$name $of', (law) => {
    expect(told(law.tried({ runs, seed }))).toBe('');
  });
});

describe('whole plans', () => {
  test.each(planLaws)('$name', (law) => {
    expect(
      told(
        tried(
          fc.property(drawn, (one) => law.holds(withPlan(one))),
          { runs, seed },
        ),
      ),
    ).toBe('');
  });
});

test('there are more than 25 laws, and no two say the same', () => {
  expect(lawNames().length).toBeGreaterThan(25);
  const each = [...formulaLaws.map(({ name, of }) => `${name} ${of}`), ...planLaws.map(({ name }) => name)];
  expect(new Set(each).size).toBe(each.length);
});

afterAll(() => {
  const list = lawNames().map((name, i) => `${String(i + 1).padStart(4)}. ${name}`);
  process.stdout.write(`\n${list.length} laws, ${runs} cases each, seed ${seed}\n${list.join('\n')}\n`);
});
