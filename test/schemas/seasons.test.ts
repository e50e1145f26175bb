/** A season against itself: pulses and own months. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dateOf, dayNumber_d } from '../../src/core/calendar.ts';
import { problemSentence } from '../../src/wording/problem.ts';
import { toTurnover } from '../../src/schemas/toTurnover.ts';
import { grown } from '../../src/core/crops/growth.ts';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import { workdays } from '../../src/schemas/closedLists.ts';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import { mindLines } from '../../src/sheets/mindLines.ts';
import { content, seasonInput, words } from '../turnover/seasons.ts';

const facts = { crops: content.crops, climates: content.climates };

/** Eight weeks from Monday, the third of March 2031. */
const spring = {
  ...{ id: 'spring', name: 'Spring', climate: 'deBilt' },
  season: { from: '2031-03-03', to: '2031-04-27' },
  beds: [{ name: 'Bed', mode: 'siphon', length_mm: 2000, width_mm: 1000 }],
};

type Pulse = { readonly from: string; readonly to?: string };
type Demand = {
  readonly own?: readonly (Pulse & { readonly amount: number })[];
  readonly all?: readonly (Pulse & { readonly times: number })[];
  readonly more?: object;
};

function season({ own = [], all = [], more = {} }: Demand): unknown {
  const wishes = [{ crop: 'rocket', perWeek: 2, unit: 'bunch', pulses: own }];
  return { ...spring, wishes, pulses: all, ...more };
}

function perWeek(of: Demand): readonly number[] {
  const result = toTurnover(season(of), facts);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result.task.wishes[0]?.perWeek ?? [];
}

function told(raw: unknown): readonly string[] {
  const result = toTurnover(raw, facts);
  return 'problems' in result ? result.problems.map(({ place, code }) => `${place.join('.')} ${code}`) : [];
}

describe('what is wanted in a week', () => {
  test('is the usual amount, but in pulses of the crop the amount of the pulse', () => {
    expect(perWeek({})).toEqual([2, 2, 2, 2, 2, 2, 2, 2]);
    // A market on a Wednesday: its whole week counts.
    expect(perWeek({ own: [{ from: '2031-03-19', amount: 9 }] })).toEqual([2, 2, 9, 2, 2, 2, 2, 2]);
    expect(perWeek({ own: [{ from: '2031-03-16', to: '2031-03-24', amount: 0 }] })).toEqual([
      ...[2, 0, 0, 0, 2, 2, 2, 2],
    ]);
  });

  test('is so many times the usual in pulses of all crops; those of the crop go first', () => {
    const all = [{ from: '2031-03-10', to: '2031-03-30', times: 1.5 }];
    expect(perWeek({ all })).toEqual([2, 3, 3, 3, 2, 2, 2, 2]);
    expect(perWeek({ all, own: [{ from: '2031-03-20', amount: 9 }] })).toEqual([2, 3, 9, 3, 2, 2, 2, 2]);
  });

  test('is nothing where nobody is there, whatever a pulse says', () => {
    const more = { holidays: [{ name: 'Away', from: '2031-03-12', to: '2031-03-19' }] };
    const all = [{ from: '2031-03-10', times: 3 }];
    expect(perWeek({ all, more, own: [{ from: '2031-03-17', amount: 9 }] })).toEqual([
      ...[2, 0, 0, 2, 2, 2, 2, 2],
    ]);
  });

  test('that a holiday takes away is told with crop, day and holiday, on sheets and page', () => {
    const notes = (of: Demand): readonly string[] => {
      const result = toTurnover(season(of), facts);
      if ('problems' in result) throw new Error(JSON.stringify(result.problems));
      const plan = draftPlan(result.task, (crop, ...days) => grown(crop, result.task.place, ...days));
      return mindLines(seasonInput(plan)).filter((line) => line.includes('is left out'));
    };
    const more = { holidays: [{ name: 'Half term', from: '2031-03-12', to: '2031-03-19' }] };
    const line = (day: string): unknown =>
      expect.stringMatching(
        new RegExp(`^${content.crops['rocket']?.name}: in Half term, from ${day}.2031 on, the other`),
      );
    // Nobody is there up to the Wednesday of the week, and the market on its Friday is left out, too.
    expect(notes({ more, own: [{ from: '2031-03-21', amount: 9 }] })).toEqual([line('21.Mar')]);
    expect(notes({ more, own: [{ from: '2031-03-04', to: '2031-03-30', amount: 9 }] })).toEqual([
      line('10.Mar'),
    ]);
    expect(notes({ more, own: [{ from: '2031-03-24', amount: 9 }] })).toEqual([]);
    expect(notes({ more, own: [{ from: '2031-03-21', amount: 0 }] })).toEqual([]);
    expect(notes({ own: [{ from: '2031-03-21', amount: 9 }] })).toEqual([]);
    expect(notes({ more, all: [{ from: '2031-03-18', times: 2 }] })).toEqual([
      expect.stringMatching(/^In Half term, from 18.Mar.2031 on, the more or less of everything/),
    ]);
    expect(notes({ more, all: [{ from: '2031-03-18', times: 0 }] })).toEqual([]);
  });

  test('outside the days of a wish is that of a pulse, or nothing', () => {
    const wishes = [
      {
        ...{ crop: 'rocket', perWeek: 2, unit: 'bunch', from: '2031-03-17', to: '2031-04-06' },
        pulses: [{ from: '2031-03-05', amount: 5 }],
      },
    ];
    const all = [{ from: '2031-03-10', to: '2031-03-20', times: 2 }];
    expect(perWeek({ all, more: { wishes } })).toEqual([5, 0, 4, 2, 2, 0, 0, 0]);
  });
});

describe('pulses', () => {
  test('at the edges of the season are in it, just past them they are told', () => {
    expect(told(season({ own: [{ from: '2031-03-03', amount: 1 }] }))).toEqual([]);
    expect(told(season({ own: [{ from: '2031-04-27', amount: 1 }] }))).toEqual([]);
    expect(told(season({ own: [{ from: '2031-03-02', amount: 1 }] }))).toEqual([
      'wishes.0.pulses.0.from outsideSeason',
    ]);
    expect(told(season({ all: [{ from: '2031-04-28', times: 1 }] }))).toEqual([
      'pulses.0.from outsideSeason',
    ]);
    // Begins before the season and reaches into it.
    expect(told(season({ all: [{ from: '2031-02-20', to: '2031-03-04', times: 1 }] }))).toEqual([]);
  });

  test('that tell a week twice, or end before they begin, are told all at once', () => {
    const own = [
      { from: '2031-03-10', to: '2031-03-18', amount: 1 },
      { from: '2031-03-23', amount: 2 },
      { from: '2031-03-24', amount: 3 },
    ];
    const all = [
      { from: '2031-04-10', to: '2031-04-09', times: 2 },
      { from: '2031-03-31', times: 2 },
      { from: '2031-04-06', times: 3 },
    ];
    expect(told(season({ own, all }))).toEqual([
      ...['wishes.0.pulses.1.from weekTwice', 'pulses.0.to dayOrder', 'pulses.2.from weekTwice'],
    ]);
  });
});

describe('a wish', () => {
  const wished = (dates: object) =>
    told({ ...spring, wishes: [{ crop: 'rocket', perWeek: 2, unit: 'bunch', ...dates }] });

  test('that lies beside the season is told, one that reaches into it is not', () => {
    expect(wished({ from: '2032-03-10' })).toEqual(['wishes.0.from outsideSeason']);
    expect(wished({ from: '2031-04-28' })).toEqual(['wishes.0.from outsideSeason']);
    expect(wished({ to: '2031-03-02' })).toEqual(['wishes.0.to outsideSeason']);
    expect(wished({ from: '2030-01-01', to: '2031-03-03' })).toEqual([]);
    expect(wished({ from: '2031-04-27' })).toEqual([]);
  });
});

describe('a season', () => {
  const within = (from: string, to: string, workday: string, own: Demand['own'] = []) =>
    season({ own, more: { season: { from, to }, workday } });

  test('has nothing to be done before its first day or after its last, and every week of work between', () => {
    const day = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(day, day, fc.constantFrom(...workdays), (before, after, workday) => {
        const [from, to] = [dayNumber_d('2031-05-05') + before, dayNumber_d('2031-08-04') + after];
        const result = toTurnover(within(dateOf(from), dateOf(to), workday), facts);
        if ('problems' in result) throw new Error(JSON.stringify(result.problems));
        const { task } = result;
        const plan = draftPlan(task, (crop, ...days) => grown(crop, task.place, ...days));
        const days = jobsOf(plan).map(({ day_d }) => day_d);
        expect(days.length).toBeGreaterThan(5);
        expect(Math.min(...days)).toBeGreaterThanOrEqual(from);
        expect(Math.max(...days)).toBeLessThanOrEqual(to);
        const all = Array.from({ length: to - from + 1 }, (_, at) => from + at);
        const workable = all.filter((one) => (one - task.firstMonday_d - task.workday) % 7 === 0);
        expect(task.weeks).toBe(workable.length);
      }),
      { numRuns: 60 },
    );
  });

  test('without a day of work in it is told', () => {
    expect(told(within('2031-03-05', '2031-03-07', 'saturday'))).toEqual(['season.to seasonNoWorkday']);
    expect(told(within('2031-03-05', '2031-03-07', 'friday'))).toEqual([]);
    expect(told(within('2031-03-07', '2031-03-05', 'saturday'))).toEqual(['season.to dayOrder']);
  });

  test('tells which amounts are left out where it begins or ends between two days of work', () => {
    const away = (from: string, to: string, day: string) => {
      const result = toTurnover(within(from, to, 'wednesday', [{ from: day, amount: 9 }]), facts);
      if ('problems' in result) throw new Error(JSON.stringify(result.problems));
      return result.task.wishes[0]?.pulsesAway;
    };
    expect(away('2031-03-03', '2031-06-10', '2031-06-09')).toEqual([{ day: '2031-06-09', holiday: null }]);
    expect(away('2031-03-03', '2031-06-11', '2031-06-09')).toEqual([]);
    expect(away('2031-03-06', '2031-06-11', '2031-03-08')).toEqual([{ day: '2031-03-08', holiday: null }]);
    expect(away('2031-03-05', '2031-06-11', '2031-03-08')).toEqual([]);
    const result = toTurnover(
      within('2031-03-03', '2031-06-10', 'wednesday', [{ from: '2031-06-09', amount: 9 }]),
      facts,
    );
    if ('problems' in result) throw new Error(JSON.stringify(result.problems));
    const { task } = result;
    const lines = mindLines(
      seasonInput(draftPlan(task, (crop, ...days) => grown(crop, task.place, ...days))),
    );
    expect(lines).toContainEqual(
      expect.stringMatching(
        /^Rocket: the other amount that you asked for from 9.Jun.2031 on is left out where/,
      ),
    );
  });
});

describe('beds', () => {
  test('with one name are told, as nobody would know which of them is meant', () => {
    const bed = { mode: 'siphon', length_mm: 2000, width_mm: 1000 };
    const beds = ['Bed', 'Other', 'Bed '].map((name) => ({ ...bed, name }));
    expect(told(season({ more: { beds } }))).toEqual(['beds.2.name sameBed']);
    expect(told(season({ more: { beds: beds.slice(0, 2) } }))).toEqual([]);
  });
});

describe('own months', () => {
  const even = (value: number) => Array.from({ length: 12 }, () => value);

  test('with a night above the mean of its month are told, equal ones are not', () => {
    const own = { name: 'Glasshouse', latitude: 52, mean_degC: even(15), night_degC: even(15) };
    expect(told(season({ more: { own } }))).toEqual([]);
    const night_degC = own.night_degC.map((value, month) => (month === 6 ? value + 0.1 : value));
    expect(told(season({ more: { own: { ...own, night_degC } } }))).toEqual([
      'own.night_degC.6 nightAboveMean',
    ]);
  });

  test('are told with their month', () => {
    const raw = season({ more: { water_degC: even(15).map((value, at) => (at === 2 ? 'cold' : value)) } });
    const result = toTurnover(raw, facts);
    const [problem] = 'problems' in result ? result.problems : [];
    expect(problem && problemSentence(problem, words.catalogue, 'us')).toMatch(/Mar is "cold".*°F/);
  });
});
