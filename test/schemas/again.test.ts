/** What came differently in a season, from a form or a file, against the season and against its plan. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber_d } from '../../src/core/calendar.ts';
import { grown } from '../../src/core/crops/growth.ts';
import type { TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import { plantUnit } from '../../src/core/turnover/units.ts';
import { weekFrom } from '../../src/core/turnover/weeks.ts';
import { seasonPlan as planThrough } from '../../src/print/seasonPlan.ts';
import { readYaml } from '../../src/schemas/yamlFile.ts';
import { toChange } from '../../src/schemas/toChange.ts';
import { toTurnover } from '../../src/schemas/toTurnover.ts';
import type { TurnoverFile } from '../../src/schemas/turnoverFile.ts';
import { wishesJoined } from '../../src/schemas/wishesJoined.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { problemLine, problemSentence } from '../../src/wording/problem.ts';
import { content, words } from '../turnover/seasons.ts';
import { spring } from './spring.ts';

const facts = { crops: content.crops, climates: content.climates };
const north = content.turnovers.find(({ id }) => id === 'north-yard');
if (north === undefined) throw new Error('no north yard');
const file = north.raw;
/** However long a machine takes, the same one. */
const plan = draftPlan(north.task, (crop, ...days) => grown(crop, north.task.place, ...days));
const { task } = plan;

const change = (raw: unknown) => toChange(raw, { plan, file }, facts, ['again']);
const wrong = (raw: unknown): readonly string[] => {
  const result = change(raw);
  return 'problems' in result ? result.problems.map(({ place, code }) => `${place.join('.')} ${code}`) : [];
};
const changed = (raw: unknown) => {
  const result = change(raw);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result;
};

/** Sown before the fourth of May and lifted after it, one plant on each place, six and more of them. */
const open = plan.sowings.find(
  ({ sow_d, to_week, plants, strips, crop }) =>
    weekFrom(task, sow_d) < 16 &&
    to_week > 17 &&
    plants >= 3 &&
    strips.length === 1 &&
    unitOf(crop).plants === 1,
);
if (open === undefined) throw new Error('no such sowing');

function unitOf(crop: string): ReturnType<typeof plantUnit> {
  const wish = task.wishes.find((one) => one.crop.id === crop);
  if (wish === undefined) throw new Error(crop);
  return plantUnit(wish.crop, task.place_mm, wish.unit);
}

describe('what came differently', () => {
  test('leaves what was sown before the day: its own week as long as the day of work is still to come', () => {
    // Weeks from Monday the sixth of January 2031, work on Sundays.
    expect(task.firstMonday_d).toBe(dayNumber_d('2031-01-06'));
    const week = (from: string) => changed({ from }).change.now_week;
    expect([week('2031-05-04'), week('2031-05-05'), week('2031-05-11')]).toEqual([16, 17, 17]);
    expect([week('2031-01-06'), week('2031-12-28')]).toEqual([0, 50]);
  });

  test('holds failed sowings of this plan, and missed weeks by any of their days', () => {
    const raw = { from: '2031-05-04', failed: [open.id], missed: [{ on: '2031-04-30' }] };
    expect(changed(raw)).toEqual({
      change: { now_week: 16, failed: [open.id], partly: [], missed_weeks: [16], wishes: null },
      file,
    });
  });

  test('outside the season, or still to come, is told at its field, all at once', () => {
    expect(wrong({ from: '2031-01-05' })).toEqual(['again.from outsideSeason']);
    expect(wrong({ from: '2031-12-29' })).toEqual(['again.from outsideSeason']);
    expect(
      wrong({ from: '2031-05-04', missed: [{ on: '2030-05-04' }, { on: '2031-05-05' }, {}, { on: 'soon' }] }),
    ).toEqual([
      'again.missed.2.on missing',
      'again.missed.3.on notDate',
      'again.missed.0.on outsideSeason',
      'again.missed.1.on missedLater',
    ]);
  });
});

describe('a sowing that failed in part', () => {
  const [strip] = open.strips;
  const { first, last } = strip ?? { first: 0, last: 0 };
  const part = (more: object) => ({ from: '2031-05-04', partly: [{ sowing: open.id, ...more }] });

  test('is told by the plants that are left or by the empty places', () => {
    expect(changed(part({ plants: open.plants - 1 })).change.partly).toEqual([
      { sowing: open.id, places: [last] },
    ]);
    expect(changed(part({ empty: ` ${first} , ${first}-${first + 1}` })).change.partly).toEqual([
      { sowing: open.id, places: [first, first + 1] },
    ]);
  });

  test('that cannot be so is told at its field', () => {
    expect(wrong(part({}))).toEqual(['again.partly.0.plants partlyOne']);
    expect(wrong(part({ plants: 2, empty: '3' }))).toEqual(['again.partly.0.plants partlyOne']);
    expect(wrong(part({ plants: open.plants }))).toEqual(['again.partly.0.plants outOfRange']);
    expect(wrong(part({ plants: 0 }))).toEqual(['again.partly.0.plants outOfRange']);
    expect(wrong(part({ empty: '3 and 4' }))).toEqual(['again.partly.0.empty placesForm']);
    expect(wrong(part({ empty: `${last + 1}` }))).toEqual(['again.partly.0.empty placesOther']);
    expect(wrong(part({ empty: `${first}-${last}` }))).toEqual(['again.partly.0.empty partlyAll']);
  });

  test('or in whole stands on that day, and is told once', () => {
    const late = plan.sowings.find(({ sow_d }) => weekFrom(task, sow_d) >= 20)?.id ?? '';
    const failed = [open.id, late, 'rocket-1999W01-1', 'the lettuce'];
    const partly = [
      { sowing: open.id, plants: 1 },
      { sowing: late, plants: 1 },
    ];
    expect(wrong({ from: '2031-05-04', failed, partly })).toEqual([
      'again.failed.3 sowingName',
      'again.partly.0.sowing sowingTwice',
      'again.partly.1.sowing sowingTwice',
    ]);
    const found = wrong({ from: '2031-05-04', failed: failed.slice(0, 3) });
    expect(found).toEqual(['again.failed.1 sowingAway', 'again.failed.2 sowingUnknown']);
  });

  test('of a wide crop loses whole plants', () => {
    const chard = { ...open, id: 'wide-2031W10-1', strips: [{ ...strip, first: 1, last: 8 }] } as typeof open;
    const wide = { ...task.wishes[0], crop: { ...task.wishes[0]?.crop, id: 'wide', spacing_mm: 400 } };
    const sowing = { ...chard, crop: 'wide', plants: 2 };
    const wider = { ...plan, task: { ...task, wishes: [wide] }, sowings: [sowing] } as unknown as typeof plan;
    const of = (empty: string) =>
      toChange(
        { from: '2031-05-04', partly: [{ sowing: sowing.id, empty }] },
        { plan: wider, file },
        facts,
        [],
      );
    expect(of('1-4')).toMatchObject({ change: { partly: [{ places: [1, 2, 3, 4] }] } });
    expect(of('1-3')).toMatchObject({ problems: [{ code: 'partlyWide', max: 4 }] });
  });

  test('has a sentence for whoever reads a form or a file', () => {
    const told = (raw: unknown) => {
      const result = change(raw);
      const problems = 'problems' in result ? result.problems : [];
      return problems.map((one) => [
        problemSentence(one, words.catalogue),
        problemLine(one, words.catalogue),
      ]);
    };
    expect(told(part({ empty: `${last + 1}` }))).toEqual([
      [
        `The empty places: on "${last + 1}" this sowing does not stand. It stands on ${first}-${last}.`,
        `again.partly[0].empty: on "${last + 1}" this sowing does not stand. It stands on ${first}-${last}.`,
      ],
    ]);
    expect(told(part({ plants: open.plants + 5 })).flat()[0]).toContain(`1 and ${open.plants - 1}`);
    const [[, line = ''] = []] = told({ from: '2031-05-04', failed: [open.id.replace(/.$/, '7')] });
    expect(line).toContain(`Did you mean "${open.id}"?`);
  });
});

type Wishes = TurnoverFile['wishes'];

function taskWith(wishes: Wishes): TurnoverTask {
  const result = toTurnover({ ...file, wishes }, facts);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result.task;
}

describe('other wishes from a week on', () => {
  const day = fc.integer({ min: 0, max: 350 }).map((after) => dateAfter('2031-01-06', after));
  const wish = fc
    .record({
      crop: fc.constantFrom('lettuceHead', 'rocket', 'basil', 'chard', 'radish'),
      perWeek: fc.integer({ min: 0, max: 40 }),
      unit: fc.constantFrom('own' as const, 'kg' as const),
      days: fc.option(fc.tuple(day, day), { nil: null }),
      pulse: fc.option(fc.tuple(day, day, fc.integer({ min: 0, max: 90 })), { nil: null }),
    })
    .map(({ crop, perWeek, unit, days, pulse }): Wishes[number] => {
      const [from = '', to = ''] = [...(days ?? [])].sort();
      const [first = '', last = ''] = pulse === null ? [] : [pulse[0], pulse[1]].sort();
      const own = content.crops[crop]?.portion?.unit ?? 'kg';
      return {
        ...{ crop, perWeek, unit: unit === 'kg' ? 'kg' : own, ...(days ? { from, to } : {}) },
        pulses: pulse === null ? [] : [{ from: first, to: last, amount: pulse[2] }],
      };
    });
  const list = fc.uniqueArray(wish, { minLength: 1, maxLength: 5, selector: ({ crop }) => crop });

  test('are one list with those before: each week wants what its own list wants', () => {
    fc.assert(
      fc.property(list, list, fc.integer({ min: 0, max: 50 }), (before, next, week) => {
        const old = taskWith(before);
        const fresh = taskWith(next);
        const joined = taskWith(wishesJoined({ file: { ...file, wishes: before }, task: old }, next, week));
        const names = new Set([...old.wishes, ...fresh.wishes].map(({ crop }) => crop.id));
        expect(joined.wishes.map(({ crop }) => crop.id).sort()).toEqual([...names].sort());
        for (const { crop, unit, perWeek } of joined.wishes) {
          const was = old.wishes.find((one) => one.crop.id === crop.id);
          const now = fresh.wishes.find((one) => one.crop.id === crop.id);
          const ofUnit = (of: typeof unit) => plantUnit(crop, old.place_mm, of).amount;
          const times = was === undefined ? 1 : ofUnit(unit) / ofUnit(was.unit);
          for (const [at, amount] of perWeek.entries()) {
            const wanted = at < week ? (was?.perWeek[at] ?? 0) * times : (now?.perWeek[at] ?? 0);
            expect(amount).toBeCloseTo(wanted, 9);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('are those of the plan and of the file from then on; what stays as it was is told as it was', () => {
    const wishes = file.wishes.map((one, at) => (at === 0 ? { ...one, perWeek: one.perWeek + 5 } : one));
    const raw = { from: '2031-05-04', wishesFrom: '2031-07-02', wishes: wishes.slice(0, -1) };
    const { change: got, file: next } = changed(raw);
    expect(next.wishes.slice(1, -1)).toEqual(file.wishes.slice(1, -1));
    expect(next.wishes[0]).toMatchObject({ perWeek: (file.wishes[0]?.perWeek ?? 0) + 5, from: '2031-06-30' });
    expect(next.wishes.at(-1)).toMatchObject({ crop: file.wishes.at(-1)?.crop, to: '2031-06-29' });
    expect(got.wishes).toEqual(taskWith(next.wishes).wishes);
  });

  test('are checked as those of the season', () => {
    const one = { crop: 'rocket', perWeek: 2, unit: 'bunch' };
    const odd = [
      { ...one, crop: 'rokket' },
      { ...one, unit: 'head' },
      one,
      one,
      { ...one, crop: 'basil', perWeek: -1 },
    ];
    expect(wrong({ from: '2031-05-04', wishes: odd, wishesFrom: '2031-05-03' })).toEqual([
      'again.wishes.4.perWeek outOfRange',
      'again.wishesFrom wishesEarly',
      'again.wishes.0.crop reference',
      'again.wishes.1.unit notAllowed',
      'again.wishes.2.crop sameCrop',
      'again.wishes.3.crop sameCrop',
    ]);
    expect(wrong({ from: '2031-05-04', wishes: [] })).toEqual(['again.wishes tooFew']);
    // A day without wishes would change nothing, and say nothing.
    expect(wrong({ from: '2031-05-04', wishesFrom: '2031-07-01' })).toEqual(['again.wishes missing']);
  });
});

function dateAfter(from: string, days: number): string {
  return new Date(Date.parse(`${from}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

describe('a file of a season that is planned again', () => {
  const read = (again: string) => {
    const yaml = readYaml(`${spring}${again}`, 'content/turnovers/spring.yaml');
    if ('problems' in yaml) throw new Error(JSON.stringify(yaml.problems));
    const result = toTurnover(yaml.raw, facts);
    return { result, lines: 'problems' in result ? result.problems.map(yaml.locate) : [] };
  };
  const through = async (again: string, most_s = 2) => {
    const { result } = read(again);
    if ('problems' in result) throw new Error(JSON.stringify(result.problems));
    return planThrough(result, await nodeSolver(), words.catalogue, most_s);
  };

  test('gives the plan of its rest, each time after the other, by the wishes of then', async () => {
    const before = await through('  []');
    const struck = before.sowings.find(
      ({ crop, plants, to_week }) => crop === 'lettuceHead' && plants > 1 && to_week > 12,
    );
    const next = await through(`
  - from: '2031-05-05'
    wishes: [{ crop: lettuceHead, perWeek: 2, unit: head }, { crop: rocket, perWeek: 1, unit: bunch }]
  - from: '2031-05-12'
    wishes: [{ crop: rocket, perWeek: 1, unit: bunch }]
`);
    expect(struck).toBeDefined();
    expect(next.task.wishes.map(({ crop }) => crop.id)).toEqual(['lettuceHead', 'radish', 'rocket']);
    const sown = (of: typeof next, crop: string) =>
      of.sowings.filter((one) => one.crop === crop).map(({ dates }) => dates.sown);
    const early = (dates: readonly string[], until: string) => dates.filter((one) => one < until);
    expect(early(sown(next, 'radish'), '2031-05-05')).toEqual(early(sown(before, 'radish'), '2031-05-05'));
    expect(sown(next, 'radish').every((one) => one < '2031-05-05')).toBe(true);
    expect(sown(next, 'lettuceHead').every((one) => one < '2031-05-12')).toBe(true);
    expect(sown(next, 'rocket').length).toBeGreaterThan(0);
  }, 60_000);

  test('says at line and column what cannot be, and of a sowing that is not there which could be meant', async () => {
    const { lines } = read(`
  - from: '2031-05-05'
    failed: [rocket]
  - from: '2031-04-05'
    missed: [{ on: '2031-06-01' }]
`);
    expect(lines.map((one) => problemLine(one, words.catalogue).replace(/: .*/, ''))).toEqual([
      'content/turnovers/spring.yaml:11:14 again[0].failed[0]',
      'content/turnovers/spring.yaml:12:11 again[1].from',
      'content/turnovers/spring.yaml:13:20 again[1].missed[0].on',
    ]);
    await expect(through(`  - { from: '2031-05-05', failed: [lettuceHead-2031W11-9] }`, 1)).rejects.toThrow(
      /again\[0\]\.failed\[0\]: got "lettuceHead-2031W11-9", but no such sowing stands in the plan on "?2031-05-05"?\. Did you mean "lettuceHead-2031W\d\d-1"/,
    );
  }, 60_000);

  test('says that what was sown may differ where the plan of before was not proven best', async () => {
    const again = `  - { from: '2031-05-05' }`;
    const codes = (of: Awaited<ReturnType<typeof through>>) => of.notes.map(({ code }) => code);
    const hasty = await through(again, 0.01);
    expect(codes(hasty)).toContain('planRecalled');
    expect(codes(await through('  []', 0.01))).not.toContain('planRecalled');
  }, 60_000);
});
