/** Wishes about places that were given up: every one is known, no other is, and whoever reads a plan is told. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { bedKinds, clearedOf } from '../../src/core/turnover/bedKinds.ts';
import { numbersOf } from '../../src/core/turnover/emptied.ts';
import type { Sowing, Strip, TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import type { Solver } from '../../src/core/turnover/solver.ts';
import { draftPlan, replans } from '../../src/core/turnover/turnoverPlan.ts';
import { plantUnit } from '../../src/core/turnover/units.ts';
import { mindLines } from '../../src/sheets/mindLines.ts';
import { relaxedLines } from '../../src/sheets/relaxedWords.ts';
import { weeksText } from '../../src/sheets/weeksText.ts';
import { seasonInput, seasonPlan } from './seasons.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const drawn = tasks({ crops: 4, weeks: 20, places: 16, most: 6 }).map((task) => draftPlan(task, fixedGrowth));

type Stands = { readonly sowing: Sowing; readonly strip: Strip };

function strips({ sowings }: TurnoverPlan): readonly Stands[] {
  return sowings.flatMap((sowing) => sowing.strips.map((strip) => ({ sowing, strip })));
}

function familyOf({ task }: TurnoverPlan, { crop }: Sowing): string {
  return task.wishes.find((wish) => wish.crop.id === crop)?.crop.family ?? '';
}

/** "crop bed week" of what is planted straight after its own family, found place by place. */
function afterItself(plan: TurnoverPlan): ReadonlySet<string> {
  const all = [...strips(plan)].sort((a, b) => a.strip.from_week - b.strip.from_week);
  const found = new Set<string>();
  for (const { sowing, strip } of all)
    for (const place of numbersOf({ strips: [strip] })) {
      const before = all.findLast(
        (one) =>
          one.sowing.bed === sowing.bed &&
          one.strip.from_week < strip.from_week &&
          numbersOf({ strips: [one.strip] }).includes(place),
      );
      if (before && familyOf(plan, before.sowing) === familyOf(plan, sowing))
        found.add(`${sowing.crop} ${sowing.bed} ${strip.from_week}`);
    }
  return found;
}

/** "bed week" in which more than a third is lifted. */
function clearedTooMuch(plan: TurnoverPlan): ReadonlySet<string> {
  const { task } = plan;
  const widest = Math.max(
    1,
    ...task.wishes.map(({ crop, unit }) => plantUnit(crop, task.place_mm, unit).places),
  );
  const lifted = new Map<string, number>();
  for (const { sowing, strip } of strips(plan)) {
    const key = `${sowing.bed} ${strip.to_week}`;
    lifted.set(key, (lifted.get(key) ?? 0) + strip.last - strip.first + 1);
  }
  const most = (key: string) =>
    clearedOf(task.beds[Number(key.split(' ')[0])] ?? ({ places: 0 } as never), widest);
  return new Set([...lifted].filter(([key, places]) => places > most(key)).map(([key]) => key));
}

/** "crop bed week" of what was sown together and does not stand side by side, in one bed or in two. */
function standsApart(plan: TurnoverPlan): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { crop, from_week, sow_d } of plan.sowings) {
    const together = plan.sowings.filter(
      (one) => one.crop === crop && one.sow_d === sow_d && one.from_week === from_week,
    );
    const kinds = bedKinds(plan.task).map(({ beds }) => together.filter(({ bed }) => beds.includes(bed)));
    for (const some of kinds) {
      const numbers = some.flatMap((one) => numbersOf(one).map((place) => 1000 * one.bed + place));
      const isApart = Math.max(...numbers) - Math.min(...numbers) >= numbers.length;
      if (isApart) for (const { bed } of some) found.add(`${crop} ${bed} ${from_week}`);
    }
  }
  return found;
}

/** Finds nothing: the plan stays what its first draft is. */
const idle: Solver = Object.assign(() => ({ values: null, bound: Number.NEGATIVE_INFINITY, prices: [] }), {
  trials: () => {},
});

/** A week in which nothing was done, so that the lifting of two weeks falls into one. */
function afterMissed(plan: TurnoverPlan, missed: number): TurnoverPlan {
  const change = { failed: [], partly: [], missed_weeks: [missed], wishes: null, now_week: missed + 1 };
  const means = { grows: fixedGrowth, solver: idle, clock: clockFor(() => 0, 1) };
  return [...replans(plan, change, means)].at(-1) as TurnoverPlan;
}

describe('wishes that were given up', () => {
  test('are told of what was sown together and stands apart, and of nothing else', () => {
    let batches = 0;
    fc.assert(
      fc.property(drawn, (plan) => {
        const of = plan.relaxed.filter(({ wish }) => wish === 'oneStrip');
        const told = new Set(of.map(({ crop, bed, week }) => `${crop} ${bed} ${week}`));
        expect(told).toEqual(standsApart(plan));
        batches += plan.sowings.filter(
          (one) => new Set(one.strips.map(({ to_week }) => to_week)).size > 1 && told.size > 0,
        ).length;
      }),
      { numRuns: 150 },
    );
    expect(batches).toBeGreaterThan(10);
  });

  test('a wide plant lets more be lifted only where it may stand', () => {
    const [task] = fc.sample(tasks({ crops: 1, weeks: 20, places: 16, most: 6 }), { seed: 1, numRuns: 1 });
    const [wish] = task?.wishes ?? [];
    if (task === undefined || wish === undefined) throw new Error('no task');
    const wide = { ...wish, crop: { ...wish.crop, id: 'wide', spacing_mm: 600, stays: 'long' as const } };
    const modes = ['siphon', 'constantFlood'] as const;
    const beds = modes.map((mode) => ({ name: mode, mode, places: 12, area_m2: 0.48 }));
    const kinds = bedKinds({ ...task, beds, wishes: [wish, wide] });
    expect(kinds.map(({ clearing }) => clearing)).toEqual([9, 4]);
  });

  test.each([
    ['', 150, drawn],
    [
      ' when a week was missed',
      50,
      fc.tuple(drawn, fc.integer({ min: 2, max: 12 })).map((of) => afterMissed(...of)),
    ],
  ])('are those that the plan breaks, and no others%s', (_, numRuns, plans) => {
    let seen = 0;
    fc.assert(
      fc.property(plans, (plan) => {
        const of = (wish: string) => plan.relaxed.filter((one) => one.wish === wish);
        const families = of('family').map(({ crop, bed, week }) => `${crop} ${bed} ${week}`);
        const wanted = plan.task.rotation === 'wanted' ? afterItself(plan) : new Set();
        expect(new Set(families)).toEqual(wanted);
        expect(new Set(of('clearing').map(({ bed, week }) => `${bed} ${week}`))).toEqual(
          clearedTooMuch(plan),
        );
        seen += plan.relaxed.length;
      }),
      { numRuns },
    );
    expect(seen).toBeGreaterThan(100);
  });

  test('are told with crop and weeks on job list and page', () => {
    const plan = seasonPlan('cape-school');
    const input = seasonInput(plan);
    const lines = relaxedLines(input);
    expect(new Set(plan.relaxed.map(({ wish }) => wish)).size).toBe(lines.length);
    expect(lines.length).toBeGreaterThan(1);
    expect(mindLines(input)).toEqual(expect.arrayContaining([...lines]));
    for (const { crop, week } of plan.relaxed) {
      const name = plan.task.wishes.find((wish) => wish.crop.id === crop)?.crop.name;
      expect(lines.some((line) => line.includes(`${name} in week`))).toBe(true);
      expect(plan.calendar[week]).toBeDefined();
    }
    const none = { ...input, plan: { ...plan, relaxed: [] } };
    expect(relaxedLines(none)).toEqual([]);
    const one = { wish: 'clearing', crop: 'mizuna', bed: 0, week: 3 } as const;
    expect(relaxedLines({ ...input, plan: { ...plan, relaxed: [one] } })).toEqual([
      'More than a third of a bed is lifted in one week: Mizuna in week 6. Test ammonia and nitrite in the days after.',
    ]);
  });

  test('have their weeks by the calendar, in runs, also over new year', () => {
    const calendar = [51, 52, 1, 2, 3].map((isoWeek) => ({ isoWeek }));
    const input = seasonInput(seasonPlan('cape-school'));
    const short = { ...input, plan: { ...input.plan, calendar } as unknown as TurnoverPlan };
    expect(weeksText(short, [4, 0, 1, 1, 2])).toBe('weeks 51–1, 3');
    expect(weeksText(short, [1])).toBe('week 52');
  });

  test('have their years where a season is so long that a number comes twice', () => {
    const input = seasonInput(seasonPlan('cape-school'));
    const weeks = Array.from({ length: 54 }, (_, at) => ({
      isoYear: at < 50 ? 2031 : 2032,
      isoWeek: at < 50 ? at + 3 : at - 49,
    }));
    const long = { ...input, plan: { ...input.plan, calendar: weeks } as unknown as TurnoverPlan };
    expect(weeksText(long, [0, 49, 50, 52])).toBe('weeks 2031-W03, 2031-W52–2032-W01, 2032-W03');
    expect(weeksText(long, [52])).toBe('week 2032-W03');
  });
});
