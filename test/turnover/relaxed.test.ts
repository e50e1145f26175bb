/** Wishes about places that were given up: every one is known, no other is, and whoever reads a plan is told. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { clearedOf } from '../../src/core/turnover/bedKinds.ts';
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
  test.each([
    ['', drawn],
    [
      ' when a week was missed',
      fc.tuple(drawn, fc.integer({ min: 2, max: 12 })).map((of) => afterMissed(...of)),
    ],
  ])('are those that the plan breaks, and no others%s', (_, plans) => {
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
      { numRuns: 150 },
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
});
