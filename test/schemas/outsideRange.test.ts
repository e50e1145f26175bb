/** What lies outside of what a formula or a fish can bear: a field error or a note in the person's own words, never NaN. */
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { problemSentence } from '../../src/wording/problem.ts';
import { content, demoSystem, english } from '../demoSystems.ts';

type Raw = { [key: string]: unknown };
const ibc = demoSystem('hollow-lane-ibc');

/** The big tank with something changed, as it would be typed. */
function changed(change: (raw: Raw) => void): ReturnType<typeof toSystem> {
  const raw = structuredClone(ibc.raw) as Raw;
  change(raw);
  return toSystem(raw, content);
}

function put(raw: Raw, path: readonly (string | number)[], value: unknown): void {
  const group = path.slice(0, -1).reduce((at: Raw, key) => at[key] as Raw, raw);
  group[String(path.at(-1))] = value;
}

/** What a form says at the field, or what the notes of the plan say. */
function told(path: readonly (string | number)[], value: unknown): readonly string[] {
  const result = changed((raw) => put(raw, path, value));
  if ('problems' in result)
    return result.problems.map((one) => problemSentence(one, english, 'metric').replaceAll('\u00a0', ' '));
  return notes(planOf(result.system));
}

function notes(plan: Plan): readonly string[] {
  return Object.values(plan.figures)
    .flatMap((figure) => figure.notes)
    .map((note) => noteSentence(note, english, 'metric').replaceAll('\u00a0', ' '));
}

function finite(plan: Plan): boolean {
  return Object.values(plan.figures).every(({ value, low, high }) =>
    [value, low, high].every((one) => one === null || one === undefined || Number.isFinite(one)),
  );
}

describe('a figure outside its range', () => {
  test.each<[string, readonly (string | number)[], unknown, string]>([
    ['fish of 0 g', ['fish', 'massNow_g'], 0, 'must lie between 0.1'],
    ['pH 14', ['water', 'pH'], 14, 'must lie between 4'],
    ['no flow', ['pump', 'flow_L_h'], 0, 'must lie between 10'],
    ['a full line above the rim', ['tank', 'full_mm'], 800, 'but the rim is at 780 mm'],
    ['media above the rim', ['beds', 0, 'mediaDepth_mm'], 400, 'but the container is only 360 mm deep'],
    ['water of 60 degrees', ['water', 'now_degC'], 60, 'must lie between'],
    ['a date that is none', ['fish', 'weighed'], '2031-02-30', 'Write a date like 2031-04-30'],
    [
      'an absence that ends before it begins',
      ['absence'],
      { from: '2031-05-02', to: '2031-05-01' },
      'comes after the first',
    ],
    ['an absence of a season', ['absence'], { from: '2031-05-01', to: '2031-08-01' }, 'and 60 are the most'],
    ['a climate nobody knows', ['climate'], 'deBild', 'which is not known here'],
  ])('%s is told at its field', (_, path, value, words) => {
    const said = told(path, value);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(words);
  });

  test.each<[string, readonly (string | number)[], unknown, string]>([
    [
      'water of 45 degrees',
      ['water', 'now_degC'],
      45,
      '45 °C is outside the 0 to 40 °C for which oxygen is known',
    ],
    [
      'a pump curve that never reaches the bed',
      ['pump', 'curve'],
      [
        { flow_L_h: 0, head_m: 0.3 },
        { flow_L_h: 900, head_m: 0.1 },
      ],
      'Nothing will come out up there',
    ],
    ['a siphon that never breaks', ['beds', 0, 'standpipeBore_mm'], 12, 'will not take air and stop'],
  ])('%s is told in a note, and no figure of the plan is broken', (_, path, value, words) => {
    expect(told(path, value).join(' ')).toContain(words);
    const result = changed((raw) => put(raw, path, value));
    if ('problems' in result) throw new Error('it was to be taken');
    expect(finite(planOf(result.system))).toBe(true);
  });

  test('a bucket test that found no voids, or all of them, is told at its field', () => {
    const bucket = (water_L: number) => told(['beds', 0, 'bucketTest'], { media_L: 10, water_L });
    expect(bucket(0)[0]).toContain('must lie between');
    expect(bucket(12)[0]).toContain('but it holds only');
  });
});
