/** The plan on somebody's wall, kept as a file: planned again from it, nothing that stands can come out otherwise. */
import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { dateOf } from '../../src/core/calendar.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import type { Solver } from '../../src/core/turnover/solver.ts';
import type { TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { draftPlan, replans } from '../../src/core/turnover/turnoverPlan.ts';
import { seasonPlan as planThrough } from '../../src/print/seasonPlan.ts';
import { planText } from '../../src/schemas/planFile.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { toSown } from '../../src/schemas/toSown.ts';
import { toTurnover } from '../../src/schemas/toTurnover.ts';
import { readYaml, type YamlFile } from '../../src/schemas/yamlFile.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { content, words } from '../turnover/seasons.ts';
import { fixedGrowth, tasks } from '../turnover/tasks.ts';
import { spring } from './spring.ts';

const facts = { crops: content.crops, climates: content.climates };

const yamlOf = (text: string, file: string): YamlFile => {
  const yaml = readYaml(text, file);
  if ('problems' in yaml) throw new Error(JSON.stringify(yaml.problems));
  return yaml;
};
const read = (again: string, plans: Readonly<Record<string, string>> = {}) => {
  const yaml = yamlOf(`${spring}${again}`, 'content/turnovers/spring.yaml');
  const result = toTurnover(yaml.raw, facts, (name) => {
    const text = plans[name];
    return text === undefined ? 'missing' : yamlOf(text, `content/turnovers/${name}`);
  });
  const lines = 'problems' in result ? result.problems.map((one) => (one.at ? one : yaml.locate(one))) : [];
  return { result, lines: lines.map((one) => problemLine(one, words.catalogue)) };
};
const solver = await nodeSolver();
/** Finds nothing: a plan stays what its first draft is. */
const idle: Solver = Object.assign(() => ({ values: null, bound: Number.NEGATIVE_INFINITY, prices: [] }), {
  trials: () => {},
});
/** All is proven long before the time is over, so that no machine is too slow for the same plan. */
const through = (again: string, plans: Readonly<Record<string, string>> = {}, most_s = 60): TurnoverPlan => {
  const { result } = read(again, plans);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return planThrough(result, solver, words.catalogue, most_s);
};

/** The draft, as a plan on the wall that a slower machine or an older Bedfirst has made. */
const wall = through('  []', {}, 0);
const kept = planText(wall);
const earlier = ({ sowings }: TurnoverPlan, day: string) =>
  sowings
    .filter(({ dates }) => dates.sown < day)
    .map(({ id, dates, strips, picks }) => ({ id, dates, strips, picks }));

describe('a kept plan', () => {
  test('holds all that planning again needs', () => {
    const back = toSown(yamlOf(kept, 'plan.json').raw, wall.task);
    if ('problems' in back) throw new Error(JSON.stringify(back.problems));
    expect(back.sowings.length).toBeGreaterThan(10);
    expect(wall.sowings).toMatchObject(back.sowings);
    expect(JSON.parse(kept).season).toBe('spring');
  });

  test('is read again whatever the plan is, also after weeks that were missed', () => {
    const drawn = fc.tuple(
      tasks({ crops: 4, weeks: 20, places: 12, most: 6 }),
      fc.uniqueArray(fc.integer({ min: 1, max: 17 }), { maxLength: 4 }),
    );
    let sowings = 0;
    fc.assert(
      fc.property(drawn, ([task, missed_weeks]) => {
        const change = { failed: [], partly: [], missed_weeks, wishes: null, now_week: 18 };
        const means = { grows: fixedGrowth, solver: idle, clock: clockFor(() => 0, 1) };
        const plan = draftPlan(task, fixedGrowth);
        for (const one of [plan, ...[...replans(plan, change, means)].slice(-1)]) {
          expect(toSown(JSON.parse(planText(one)), task)).not.toHaveProperty('problems');
          sowings += one.sowings.length;
        }
      }),
      { numRuns: 60 },
    );
    expect(sowings).toBeGreaterThan(500);
  });

  test('is what stands, however the plan would come out anew', () => {
    const from = '2031-05-05';
    const next = through(`  - { from: '${from}', plan: wall.json }`, { 'wall.json': kept });
    const anew = through(`  - { from: '${from}' }`);
    expect(earlier(next, from)).toEqual(earlier(wall, from));
    expect(earlier(anew, from)).not.toEqual(earlier(wall, from));
    expect(next.notes.map(({ code }) => code)).not.toContain('planRecalled');
  }, 60_000);

  test('of a season that is planned again once more takes the place of all before it', () => {
    const first = `  - { from: '2031-04-07', wishes: [{ crop: rocket, perWeek: 2, unit: bunch }] }`;
    const second = through(first);
    const next = through(`${first}\n  - { from: '2031-05-05', plan: second.json }`, {
      'second.json': planText(second),
    });
    expect(earlier(next, '2031-05-05')).toEqual(earlier(second, '2031-05-05'));
    // The rocket of the second plan is known; by the first alone there would be lettuce sown in May.
    expect(next.sowings.filter(({ crop }) => crop === 'lettuceHead')).toEqual(
      second.sowings.filter(({ crop }) => crop === 'lettuceHead'),
    );
  }, 60_000);

  test('may be kept under the name of the one before, which is over', () => {
    const [failed = ''] = wall.sowings.filter(({ dates }) => dates.sown < '2031-04-07').map(({ id }) => id);
    const first = `  - { from: '2031-04-07', plan: wall.json, failed: [${failed}] }`;
    const second = through(first, { 'wall.json': kept });
    const both = `${first}\n  - { from: '2031-05-05', plan: wall.json }`;
    const plans = { 'wall.json': planText(second) };
    expect(read(both, plans).lines).toEqual([]);
    expect(earlier(through(both, plans), '2031-05-05')).toEqual(earlier(second, '2031-05-05'));
  }, 60_000);

  test('knows its sowings before anything is printed', () => {
    const lines = read(`  - { from: '2031-05-05', plan: wall.json, failed: [radish-2031W10-7] }`, {
      'wall.json': kept,
    }).lines;
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(
      /^content\/turnovers\/spring\.yaml:9:\d+ again\[0\]\.failed\[0\]: got "radish-2031W10-7", but no such sowing/,
    );
  });
});

describe('a kept plan that cannot be used', () => {
  const again = `  - { from: '2031-05-05', plan: wall.json }`;
  const linesOf = (text: string) => read(again, { 'wall.json': text }).lines;
  const changed = (change: (plan: Kept) => void): readonly string[] => {
    const plan = JSON.parse(kept) as Kept;
    change(plan);
    return linesOf(JSON.stringify(plan, null, 1));
  };
  type Kept = {
    season: string;
    firstMonday: string;
    beds: { places: number }[];
    sowings: {
      id: string;
      crop: string;
      bed: number;
      sown: string;
      planted?: string;
      readyTo: string;
      strips: { first: number; last: number; to_week: number }[];
      picks: { on: string }[];
    }[];
  };
  const none = { id: '', crop: '', bed: 0, sown: '', readyTo: '', strips: [], picks: [] };
  const sowing = (plan: Kept, at: number): Kept['sowings'][number] => plan.sowings[at] ?? none;
  const strip = (plan: Kept, at: number) => sowing(plan, at).strips[0] ?? { first: 0, last: 0, to_week: 0 };

  test('is missing, or lies elsewhere', () => {
    expect(read(again).lines).toEqual([
      expect.stringMatching(
        /^content\/turnovers\/spring\.yaml:9:\d+ again\[0\]\.plan: "wall\.json" is not there/,
      ),
    ]);
    expect(read(`  - { from: '2031-05-05', plan: ../wall.json }`).lines).toEqual([
      expect.stringMatching(
        /:9:\d+ again\[0\]\.plan: got "\.\.\/wall\.json", expected the name of a file beside/,
      ),
    ]);
  });

  test('is one of another season: of other weeks and beds, all told at once', () => {
    const lines = changed((plan) => {
      plan.season = 'autumn';
      plan.firstMonday = '2030-03-04';
      for (const bed of plan.beds) bed.places += 1;
    });
    expect(lines.map((line) => line.replace(/: .*/, ''))).toEqual([
      'content/turnovers/wall.json:2:12 season',
      'content/turnovers/wall.json:3:17 firstMonday',
      expect.stringMatching(/^content\/turnovers\/wall\.json:6:\d+ beds$/),
    ]);
    expect(lines[1]).toContain('got "2030-03-04", but the season has 2031-03-03.');
  });

  test('has a crop, a bed and places that there are not', () => {
    const lines = changed((plan) => {
      sowing(plan, 0).crop = 'radis';
      sowing(plan, 1).bed = 9;
      strip(plan, 2).last = 5000;
      strip(plan, 3).to_week = 0;
    });
    expect(lines).toEqual([
      expect.stringMatching(/sowings\[0\]\.crop: got "radis", .* Did you mean "radish"/),
      expect.stringMatching(/sowings\[1\]\.bed: got 9, expected a number from 1 to 1/),
      expect.stringMatching(/sowings\[2\]\.strips\[0\]\.last: got 5000, expected a number from \d+ to 50/),
      expect.stringMatching(/sowings\[3\]\.strips\[0\]\.to_week: got 0, expected a number from \d+ to 20/),
    ]);
  });

  test('does not fit the season as it is now: a rest, a holiday, a plant on a part of its places', () => {
    const lines = (to: readonly [string, string], text = kept) => {
      const yaml = yamlOf(`${spring}${again}`.replace(...to), 'content/turnovers/spring.yaml');
      const result = toTurnover(yaml.raw, facts, () => yamlOf(text, 'content/turnovers/wall.json'));
      return 'problems' in result ? result.problems.map((one) => problemLine(one, words.catalogue)) : [];
    };
    expect(lines(['wishes:', 'rest_d: 60\nwishes:'])).toEqual([
      expect.stringMatching(/strips: where ".*" is planted another sowing still stands, or the place rests/),
    ]);
    const [sown = ''] = wall.sowings.map(({ dates }) => dates.sown);
    const holidays = `holidays: [{ name: Away, from: '${sown}', to: '${sown}' }]\nwishes:`;
    expect(lines(['wishes:', holidays])[0]).toContain(
      `sown: got "${sown}", but the season has a holiday then`,
    );
    // Lettuce on four places each.
    const wide = lines(
      ['wishes:', 'place_mm: 100\nwishes:'],
      kept.replace('"place_mm": 200', '"place_mm": 100').replace('"places":50', '"places":215'),
    );
    expect(
      wide.some((line) => /strips: these are \d+ places, but a plant of this crop stands on \d/.test(line)),
    ).toBe(true);
  });

  test('has two crops on one place at a time', () => {
    const lines = changed((plan) => {
      const [one] = plan.sowings;
      if (one) plan.sowings.push({ ...structuredClone(one), id: 'radish-2031W10-2' });
    });
    expect(lines).toEqual([
      expect.stringMatching(/sowings\[\d+\]\.strips: where ".*" is planted another sowing still stands/),
    ]);
  });

  test('tells other days than weeks, days in no order, and one name twice', () => {
    const at = wall.sowings.findIndex(({ plantOut_d }) => plantOut_d !== null);
    const { dates } = wall.sowings[at] ?? {};
    const told = changed((plan) => {
      const of = sowing(plan, at);
      of.planted = '2031-07-19';
      of.picks = of.picks.map((pick) => ({ ...pick, on: '2031-07-26' }));
      of.readyTo = '2031-03-01';
      sowing(plan, at + 1).sown = '2030-03-08';
      const last = plan.sowings.length - 1;
      sowing(plan, last).id = sowing(plan, last - 1).id;
      for (const one of sowing(plan, last - 1).strips) one.to_week = 21;
    });
    expect(told.filter((line) => line.includes(`sowings[${at}]`))).toEqual([
      expect.stringMatching(/readyTo: got "2031-03-01", but the first day is/),
      expect.stringContaining(
        `planted: got "2031-07-19", but the number of the week that goes with it is that of ${dates?.planted}.`,
      ),
      expect.stringContaining('picks[0].on: got "2031-07-26", but the number of the week'),
    ]);
    expect(told.filter((line) => line.includes(`sowings[${at + 1}]`))).toEqual([
      expect.stringMatching(/sown: got "2030-03-08", which is not in the season/),
    ]);
    expect(told.slice(-2)).toEqual([
      expect.stringMatching(/to_week: got 21, expected a number from \d+ to 20/),
      expect.stringMatching(/id: another sowing is called ".*", too/),
    ]);
    const early = changed((plan) => {
      sowing(plan, at).planted = '2031-01-04';
    });
    expect(early.map((line) => /planted: .*/.exec(line)?.[0])).toEqual([
      expect.stringContaining('but the first day is'),
      expect.stringContaining('the number of the week'),
    ]);
  });

  test('has a week too few, a word for a day, a key that nobody knows', () => {
    expect(
      linesOf(kept.replace('"weeks": 21', '"weeks": 0').replace('"sown":"2031', '"sown":"soon')),
    ).toHaveLength(2);
    expect(linesOf(kept.replace('"season"', '"saison"'))[0]).toMatch(/wall\.json:2:3 saison/);
  });
});

describe('in a content folder', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'bedfirst-kept-'));
  afterAll(() => rm(folder, { recursive: true }));
  const dir = join(folder, 'content');
  await cp('content', dir, { recursive: true });
  const put = (name: string, text: string) => writeFile(join(dir, 'turnovers', name), text);
  const linesOf = async () => {
    const { problems } = await readContent(dir);
    return problems.map((one) => problemLine(one, words.catalogue));
  };

  test('it lies beside the season, and is no season itself', async () => {
    await put('spring.yaml', `${spring}  - { from: '2031-05-05', plan: wall.json }`);
    expect(await linesOf()).toEqual([
      expect.stringMatching(/^content\/turnovers\/spring\.yaml:9:\d+ .* is not there/),
    ]);
    await put('wall.json', '{ "season": ');
    const broken = await linesOf();
    expect(broken.length).toBeGreaterThan(0);
    expect(broken.every((line) => line.startsWith('content/turnovers/wall.json:1:'))).toBe(true);
    await put('wall.json', kept);
    await put('unused.json', '{');
    const { content: found, problems } = await readContent(dir);
    expect(problems).toEqual([]);
    const again = found.turnovers.find(({ id }) => id === 'spring')?.again;
    expect(again?.[0]?.before?.sowings.map(({ sow_d }) => dateOf(sow_d))).toEqual(
      wall.sowings.map(({ dates }) => dates.sown),
    );
  }, 60_000);
});
