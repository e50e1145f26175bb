/** Planning again where what stands leaves no place free, or no cells: nothing is told to be better than it is. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bedKinds } from '../../src/core/turnover/bedKinds.ts';
import { choicesOf } from '../../src/core/turnover/choices.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import { laidOut } from '../../src/core/turnover/laidOut.ts';
import { seasonOf } from '../../src/core/turnover/season.ts';
import type { Solver } from '../../src/core/turnover/solver.ts';
import type { Sown, SownPlan } from '../../src/core/turnover/sown.ts';
import { standing } from '../../src/core/turnover/standing.ts';
import type { Stage, TurnoverPlan, TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { draftPlan, replans } from '../../src/core/turnover/turnoverPlan.ts';
import { relaxedLines } from '../../src/sheets/relaxedWords.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { seasonInput, seasonPlan } from './seasons.ts';
import { cropOf, fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const inBed = { nursery: 0, bed: 14, stands: 0, cuts: 1, regrow: 0, spacing: 200, family: 'Asteraceae' };
const weeks = 14;
const week = (of: number, amount: number) =>
  Array.from({ length: weeks }, (_, at) => (at === of ? amount : 0));

/** Two places. Trays were sown for both: place 1 is taken in weeks 5 to 7, and place 2 from week 8 on. */
function planSoFar(wanted_week: number): SownPlan {
  const task: TurnoverTask = {
    ...seasonPlan('north-yard').task,
    ...{ weeks, nurseryCells: null, holidays: [], rest_d: 0, rotation: 'ignored' },
    beds: [{ name: 'Bed', mode: 'siphon', places: 2, area_m2: 0.08 }],
    wishes: [
      { crop: cropOf('slow', { ...inBed, nursery: 28, bed: 21 }), unit: 'head', perWeek: week(-1, 0) },
      { crop: cropOf('quick', inBed), unit: 'head', perWeek: week(wanted_week, 0.9) },
    ],
  };
  const day = (of: number) => task.firstMonday_d + 7 * of + task.workday;
  const sowing = (place: number, from_week: number, to_week: number): Sown => ({
    ...{ id: `slow-2031W03-${place}`, crop: 'slow', bed: 0, sow_d: day(1), plantOut_d: day(from_week) },
    ...{ ready_d: day(to_week), readyFrom_d: day(to_week), readyTo_d: day(to_week), mayBolt: 'no' },
    strips: [{ first: place, last: place, from_week, to_week, restTo_week: to_week - 1 }],
    picks: [{ week: to_week, day_d: day(to_week) }],
  });
  return { task, sowings: [sowing(1, 5, 8), sowing(2, 8, 11)], wasSown: [] };
}

const change = { now_week: 2, failed: [], partly: [], missed_weeks: [], wishes: null };

function again(wanted_week: number, more: Partial<TurnoverTask> = {}): TurnoverPlan {
  const so = planSoFar(wanted_week);
  const means = { grows: fixedGrowth, solver, clock: clockFor(() => performance.now() / 1000, 60) };
  return [...replans({ ...so, task: { ...so.task, ...more } }, change, means)].at(-1) as TurnoverPlan;
}

const quick = ({ sowings }: TurnoverPlan) => sowings.filter(({ crop }) => crop === 'quick');

/** Finds nothing: the plan stays what its first draft is. */
const idle: Solver = Object.assign(() => ({ values: null, bound: Number.NEGATIVE_INFINITY, prices: [] }), {
  trials: () => {},
});
const limits = { nurseryCells: 3, rotation: 'wanted' as const };

describe('a sowing that finds no place which stays free for it', () => {
  test('is left out and named, and its plan is not said to be the best', () => {
    // In weeks 7 and 8 there is always one free place, but never the same.
    const plan = again(9);
    expect(quick(plan)).toEqual([]);
    expect(plan.short.map((one) => one.week)).toEqual([9]);
    expect(plan.relaxed).toEqual([{ wish: 'everySowing', crop: 'quick', bed: null, week: 7 }]);
    expect(plan.stages.map(({ state }) => state)).toEqual(Array.from({ length: 4 }, () => 'unplaced'));
    expect(plan.stages[0]?.value).toBeGreaterThan(0);
    const { isoWeek } = plan.calendar[7] ?? {};
    expect(relaxedLines(seasonInput(plan))).toEqual([
      `Left out, or fewer planted, as no places stay free for it long enough and what stands is not moved: quick in week ${isoWeek}.`,
    ]);
  });

  test('is no matter of a week later', () => {
    const plan = again(10);
    expect(quick(plan)).toHaveLength(1);
    expect([plan.short, plan.relaxed]).toEqual([[], []]);
    expect(plan.stages.map(({ state }) => state)).toEqual(Array.from({ length: 4 }, () => 'proven'));
  });

  test('never makes a later stage hand out less than the one before', () => {
    const { task, ...so } = planSoFar(9);
    const kinds = bedKinds(task);
    const stands = standing({ task, ...so }, change, kinds);
    const free = choicesOf(task, kinds, fixedGrowth);
    const fixed = stands.map(({ batch }) => ({ choice: batch.choice, units: batch.units }));
    const season = seasonOf(task, kinds, free, fixed);
    const counts = season.choices.map((choice) => season.fixed.get(choice) ?? 1);
    const fewer = season.choices.map((choice) => season.fixed.get(choice) ?? 0);
    const stage = (value: number): readonly Stage[] => [
      { name: 'demand', state: 'gap', value, bound: 0, gap_frac: 1 },
    ];
    const staged = (of: readonly number[], stagesOf: (counts: readonly number[]) => readonly Stage[]) => ({
      ...{ counts: of, stages: stage(0), stagesOf },
    });
    const before = laidOut(
      season,
      staged(fewer, () => stage(1)),
      stands,
      null,
    );
    expect(before.counts).toEqual(fewer);
    // The stage's own plan comes to more that is missing than that of before, and then to less.
    const own = (missing: number) =>
      laidOut(
        season,
        staged(counts, (of) => stage(of === before.counts ? 1 : missing)),
        stands,
        before,
      );
    expect([own(2).stages, own(2).relaxed]).toEqual([stage(1), []]);
    expect(own(0.5).stages).toEqual(stage(0.5));
    expect(own(0.5).relaxed.map(({ wish }) => wish)).toEqual(['everySowing']);
  });
});

describe('seedlings that were sown already', () => {
  test('in more cells than there are stay, and are told', () => {
    const plan = again(12, { nurseryCells: 2 });
    expect(plan.planted.map(({ cells }) => cells).slice(1, 8)).toEqual([3, 3, 3, 3, 2, 2, 2]);
    const told = plan.relaxed.filter(({ wish }) => wish === 'cells');
    expect(told).toEqual([1, 2, 3, 4].map((at) => ({ wish: 'cells', crop: 'slow', bed: null, week: at })));
    expect(relaxedLines(seasonInput(plan))[0]).toMatch(
      /^More cells are taken than you have, by what was sown already: slow in weeks \d+–\d+\. Find/,
    );
    expect(again(12, { nurseryCells: 3 }).relaxed).toEqual([]);
  });

  test('by another plan may pass every limit, and all of it is told', () => {
    const seen = new Map<string, number>();
    const small = tasks({ crops: 4, weeks: 16, places: 12, most: 6 });
    fc.assert(
      fc.property(small, fc.integer({ min: 1, max: 10 }), fc.nat(3), (task, now_week, ago) => {
        const free = { ...task, nurseryCells: null, rotation: 'ignored' as const };
        const kept = { ...draftPlan(free, fixedGrowth), task: { ...free, ...limits } };
        const missed_weeks = [Math.max(0, now_week - ago)];
        const means = { grows: fixedGrowth, solver: idle, clock: clockFor(() => 0, 1) };
        for (const next of replans(kept, { ...change, now_week, missed_weeks }, means)) {
          expect(faultsIn(next)).toEqual([]);
          for (const { wish } of next.relaxed) seen.set(wish, (seen.get(wish) ?? 0) + 1);
        }
      }),
      { numRuns: 100 },
    );
    for (const wish of ['cells', 'family', 'clearing'])
      expect([wish, (seen.get(wish) ?? 0) > 10]).toEqual([wish, true]);
  });
});
