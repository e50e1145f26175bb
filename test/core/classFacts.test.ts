/** What the sheets of a whole class are told: times, materials, which parts have pages. Counts are worked by hand here. */
import { describe, expect, test } from 'vitest';
import { classFacts } from '../../src/core/plan/handoutFacts.ts';
import { levels } from '../../src/core/workshop/exercise.ts';
import { materials } from '../../src/core/workshop/materials.ts';
import { partsOf } from '../../src/core/workshop/parts.ts';
import { clockAt, programme } from '../../src/core/workshop/programme.ts';

const wish = {
  level: 'secondary',
  starts: '09:30',
  length_min: 150,
  people: 24,
  teams: 8,
  alone: 0,
  rota: null,
} as const;

describe('what lies ready', () => {
  test('is so many for each person, and so many for each team', () => {
    const counts = (of: Parameters<typeof materials>) =>
      Object.fromEntries(materials(...of).map(({ key, count }) => [key, count]));
    expect(counts(['secondary', 24, 8])).toEqual({
      pencil: 24,
      tape: 8,
      calculator: 8,
      container: 16,
      towel: 8,
    });
    expect(counts(['primary', 7, 3])).toEqual({ pencil: 7, tape: 3, container: 3, towel: 3 });
    // One bucket for two teams, rounded up.
    expect(counts(['adults', 10, 5])).toMatchObject({ pencil: 10, container: 10, bucket: 3 });
    expect(counts(['adults', 1, 1])).toMatchObject({ bucket: 1 });
  });

  test('holds nothing that makes a child carry water', () => {
    expect(materials('primary', 24, 8).map(({ key }) => key)).not.toContain('litreJug');
  });

  test('is enough for whoever has no team, too', () => {
    const tapes = (teams: number, alone: number) =>
      classFacts({ ...wish, teams, alone }).materials.find(({ key }) => key === 'tape')?.count;
    expect([tapes(8, 0), tapes(0, 24), tapes(7, 3)]).toEqual([8, 24, 10]);
  });
});

describe('the times of a class', () => {
  test('run from its beginning, each part when the one before it ends', () => {
    // By hand: 6, 10, 14, 22, 22, 12, 6 and 8 hundredths of 150 minutes, in steps of five.
    expect(classFacts(wish).times.map(({ key, at, takes_min }) => `${at} ${key} ${takes_min}`)).toEqual([
      '09:30 arrive 10',
      '09:40 safety 15',
      '09:55 example 20',
      '10:15 measure 35',
      '10:50 calculate 35',
      '11:25 compare 15',
      '11:40 next 10',
      '11:50 clear 10',
    ]);
  });

  test('go over the hour and over midnight', () => {
    expect([clockAt('09:30', 0), clockAt('09:59', 1), clockAt('09:30', 150)]).toEqual([
      '09:30',
      '10:00',
      '12:00',
    ]);
    expect([clockAt('23:30', 45), clockAt('00:00', 24 * 60)]).toEqual(['00:15', '00:00']);
  });

  test('say which part is too short for what it is there for', () => {
    const short = (...of: Parameters<typeof programme>) =>
      programme(...of).flatMap(({ key, time }) => (time === 'short' ? [key] : []));
    expect(short('secondary', 40)).toEqual(['measure', 'calculate']);
    expect(short('adults', 60)).toEqual(['measure', 'calculate']);
    // The class page tells these: `class.hows.length_min`.
    const enough = { primary: 55, secondary: 65, adults: 85 } as const;
    for (const level of levels)
      for (let length_min = 40; length_min <= 600; length_min += 1)
        expect(short(level, length_min).length > 0, `${level} ${length_min}`).toBe(
          length_min < enough[level],
        );
  });
});

test('whoever has no team has turns of the care, too', () => {
  const rota = { from: '2031-05-12', to: '2031-05-16', away: [], weekends: 'keeper' } as const;
  const of = (people: number, teams: number, alone: number) =>
    classFacts({ ...wish, people, teams, alone, rota }).rota.map(({ team }) => team);
  expect(of(9, 3, 0)).toEqual([0, 1, 2, 0, 1]);
  expect(of(11, 3, 2)).toEqual([0, 1, 2, 3, 0]);
  // Three twos.
  expect(of(6, 0, 6)).toEqual([0, 1, 2, 0, 1]);
  expect(of(0, 0, 0)).toEqual([]);
});

describe('a part of a workshop', () => {
  test('is printed where one of its sheets is wanted', () => {
    const all = ['contents', 'facilitator', 'rota', 'worksheet', 'key', 'plan'];
    expect(partsOf(all, 'none')).toEqual(['stack', 'answers', 'each']);
    expect(partsOf(['worksheet', 'plan'], 'none')).toEqual(['stack', 'each']);
    expect(partsOf(['facilitator'], 'none')).toEqual(['stack']);
    expect(partsOf(['key', 'contents'], 'none')).toEqual(['answers']);
  });

  test('is not printed for contents of nothing, or a rota without days', () => {
    expect(partsOf(['contents', 'rota'], 'none')).toEqual([]);
    expect(partsOf(['contents', 'rota'], 'rota')).toEqual(['stack']);
    expect(partsOf([], 'rota')).toEqual([]);
  });
});
