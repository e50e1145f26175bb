/** What the page that checks work says of answers; what is right is worked by hand here, or stands on the sheet of answers. */
import { describe, expect, test } from 'vitest';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import type { AskedStep } from '../../src/core/workshop/askedSteps.ts';
import { stepName } from '../../src/core/workshop/carriedOn.ts';
import { levels } from '../../src/core/workshop/exercise.ts';
import { sheetOfContainers, verdictsOf } from '../../src/forms/check/checkWork.ts';
import { verdictText } from '../../src/forms/check/verdictText.ts';
import { exerciseSystem } from '../../src/schemas/people.ts';
import { resultText } from '../../src/sheets/handouts/handoutLine.ts';
import { content, english } from '../demoSystems.ts';

const facts = { ...content, bedName: 'Bed' };
const words = { catalogue: english, terms: content.terms };

/** What is said of answers, by the names of their steps. */
function saidOf(cell: string, typed: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const sheet = sheetOfContainers(cell, 'secondary', facts);
  if (sheet.kind !== 'facts') throw new Error(JSON.stringify(sheet));
  const verdicts = verdictsOf(sheet.facts.asked, typed);
  const said = sheet.facts.asked.flatMap(({ key, steps }) =>
    steps.flatMap((step) => {
      const name = stepName(key, step);
      return name in typed ? [[name, verdictText(verdicts.get(name) ?? 'empty', step, words)]] : [];
    }),
  );
  return Object.fromEntries(said);
}

/** 120 L of wet media; 576 L at the full line; 54 L moved, so 522 L at the lowest; 4, 26 and 20 fish. */
const own = 'tank box 120 x 80 x 70 cm + bed box 100 x 60 x 30 cm';
const right = 'Right.';
const carried = 'Worked right, from a number before it that differs.';

describe('an answer', () => {
  test('that follows from a wrong one is told so, and one that is wrong in itself too', () => {
    expect(
      saidOf(own, {
        'bed1.wetMedia_L-1': '120',
        // One decimetre too much: 120 × 80 × 70 cm is 672 L, less 54 L 618 L, for 20 L a fish 30 fish.
        'tankFull_L-1': '672',
        'tankLow_L-1': '54',
        'tankLow_L-2': '618',
        'fishByBed-1': '5',
        'fishByTank-1': '30',
        'fishByDensity-1': '12.36 kg',
        'fishByDensity-2': '25',
        'fishPlanned-1': '5',
      }),
    ).toEqual({
      'bed1.wetMedia_L-1': right,
      'tankFull_L-1': 'Look at this step again: length × width × water depth ÷ 1 000 000.',
      'tankLow_L-1': right,
      'tankLow_L-2': carried,
      'fishByBed-1': 'Look at this step again: rounded down (wet media ÷ media for one fish).',
      'fishByTank-1': carried,
      'fishByDensity-1': carried,
      // 12.36 kg of fish of 500 g are 24.
      'fishByDensity-2':
        'Look at this step again: rounded down (most fish mass × 1000 ÷ mass of a grown fish).',
      'fishPlanned-1': carried,
    });
  });

  test('is followed over steps for which nothing was written', () => {
    // 672 L less 54 L are 618 L; 12.36 kg; 24 fish.
    expect(saidOf(own, { 'tankFull_L-1': '672', 'fishByDensity-2': '24' })['fishByDensity-2']).toBe(carried);
    expect(saidOf(own, { 'tankFull_L-1': '672', 'fishByDensity-2': '23' })['fishByDensity-2']).toContain(
      'again',
    );
  });

  test('that a rounded number before it leads to is no mistake of its step', () => {
    // 750 L less 0.45 × 144 L are 685.2 L, and 13.704 kg: 27 fish.
    const cell = 'tank box 100 x 100 x 85 cm + bed box 120 x 60 x 30 cm';
    expect(saidOf(cell, { 'fishByDensity-1': '13.704', 'fishByDensity-2': '27' })).toMatchObject({
      'fishByDensity-2': right,
    });
    // 34.26 fish by the tank: whoever rounds 685.2 to 688 is within half a per cent, and still gets 34.
    expect(saidOf(cell, { 'tankLow_L-2': '688', 'fishByTank-1': '34' })).toMatchObject({
      'tankLow_L-2': right,
      'fishByTank-1': right,
    });
    // 797.7 L: 15.954 kg are 31 fish, but 16 kg 32.
    const drawn = 'tank box 115 x 100 x 85 cm + bed box 120 x 60 x 30 cm';
    const said = saidOf(drawn, { 'fishByDensity-1': '16', 'fishByDensity-2': '32', 'fishPlanned-1': '5' });
    expect(said).toEqual({
      'fishByDensity-1': right,
      'fishByDensity-2':
        'Right for the rounded number before it. With all its digits it comes to something else: round at the end.',
      'fishPlanned-1': right,
    });
  });

  test('follows from nothing where a number before it is 0 and it is divided by that', () => {
    const { asked } = handoutFacts(exerciseSystem({ level: 'adults', seed: 5, index: 3 }, facts), 'adults');
    const verdicts = verdictsOf(asked, { 'tankFull_L-1': '0', 'turnover-1': '77777' });
    expect([verdicts.get('tankFull_L-1'), verdicts.get('turnover-1')]).toEqual(['wrong', 'wrong']);
  });

  test('by a rule is told the rule', () => {
    const small = 'tank box 100 x 60 x 60 cm + bed box 100 x 60 x 30 cm';
    expect(saidOf(small, { 'fishByTank-1': '13' })['fishByTank-1']).toBe(
      'Look at this step again: Under 500\u00a0L at the full line: no table-size fish.',
    );
    expect(saidOf(small, { 'fishByTank-1': '0' })['fishByTank-1']).toBe(right);
  });
});

test('every key is right, as it stands there, with its words behind it, or with a decimal comma', () => {
  let count = 0;
  for (const level of levels)
    for (let index = 0; index < 30; index += 1) {
      const { asked } = handoutFacts(exerciseSystem({ level, seed: index * 331, index }, facts), level);
      const key = asked.flatMap(({ key: of, steps }) =>
        steps.map((step) => [stepName(of, step), resultText(step, 4)] as const),
      );
      for (const written of [(text: string) => text, (text: string) => text.replace('.', ',')])
        for (const behind of ['', ' fish', ' times an hour']) {
          const typed = key.map(([name, text]) => [name, written(text) + behind]);
          const verdicts = verdictsOf(asked, Object.fromEntries(typed));
          for (const [name, verdict] of verdicts) expect(verdict, `${level} ${index} ${name}`).toBe('right');
          count += verdicts.size;
        }
    }
  expect(count).toBeGreaterThan(4_000);
});

test('an answer is judged as closely as its sheet prints it', () => {
  const judged = (value: number, unit: 'L' | 'fish' | 'ratio', term: string, text: string) => {
    const gives = { sign: 'x', term, value, unit };
    const step: AskedStep = {
      ...{ number: 1, gives, formula: 'a', symbols: [{ ...gives, sign: 'a' }], source: 'geometry' },
      kind: 'formula',
      byHand: 'yes',
      way: 'worked',
      from: { a: { is: 'measure' } },
    };
    return verdictsOf([{ key: 'x', measures: [], steps: [step] }], { 'x-1': text }).get('x-1');
  };
  expect(judged(12, 'fish', 'fishByBed', '12')).toBe('right');
  expect(judged(12, 'fish', 'fishByBed', '11')).toBe('wrong');
  expect(judged(135.2, 'L', 'waterVolume', '135 L')).toBe('right');
  expect(judged(135.2, 'L', 'waterVolume', '137')).toBe('wrong');
  expect(judged(0.87523, 'ratio', 'turnover', '0.88')).toBe('right');
  expect(judged(0.87523, 'ratio', 'turnover', '0.8')).toBe('wrong');
  // One of both can be meant.
  expect(judged(1200, 'L', 'waterVolume', '1,200')).toBe('right');
  expect(judged(1.2, 'L', 'waterVolume', '1,200')).toBe('right');
  expect(judged(1.2, 'L', 'waterVolume', 'a lot')).toBe('notNumber');
  expect(judged(1.2, 'L', 'waterVolume', '  ')).toBe('empty');
});
