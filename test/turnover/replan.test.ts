/** Planning again: a sowing that failed, a week that was missed, and nothing that stands is moved. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grown } from '../../src/core/crops/growth.ts';
import { bedKinds } from '../../src/core/turnover/bedKinds.ts';
import type { Change } from '../../src/core/turnover/change.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import type { Sowing, TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { standing } from '../../src/core/turnover/standing.ts';
import { replans, turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { seasonPlan } from './seasons.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const means = () => ({
  ...{ grows: fixedGrowth, solver },
  clock: clockFor(() => performance.now() / 1000, 1),
});

const some = tasks({ crops: 4, weeks: 20, places: 30, most: 8 })
  .map((task) => [...turnoverPlans(task, means())].at(-1) as TurnoverPlan)
  .filter(({ sowings }) => sowings.length > 2);

const nothing = { failed: [], partly: [], missed_weeks: [], wishes: null };

function again(plan: TurnoverPlan, change: Partial<Change> & Pick<Change, 'now_week'>): TurnoverPlan {
  const last = [...replans(plan, { ...nothing, ...change }, means())].at(-1);
  if (last === undefined) throw new Error('no plan');
  return last;
}

function sownBefore({ task, sowings }: TurnoverPlan, now: number): readonly Sowing[] {
  return sowings.filter(({ sow_d }) => sow_d < task.firstMonday_d + now * 7);
}

describe('planning again', () => {
  test('without any change leaves what was sown where it stands, and need be no worse', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 12 }), (plan, now) => {
        const next = again(plan, { now_week: now });
        for (const sowing of sownBefore(plan, now)) {
          const kept = next.sowings.find(({ id }) => id === sowing.id);
          expect(kept?.strips).toEqual(sowing.strips);
          expect(kept?.picks.map(({ week }) => week)).toEqual(sowing.picks.map(({ week }) => week));
        }
        expect(faultsIn(next)).toEqual([]);
        // Where it is proven, that is what it reaches; on a machine too slow for that it says how good it could be.
        expect(next.stages[0]?.bound).toBeLessThanOrEqual((plan.stages[0]?.value ?? 0) + 1e-6);
      }),
      { numRuns: 25 },
    );
  });

  test('drops a sowing that failed, and gives its places to others', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const failed = plan.sowings[0] as Sowing;
        const now = Math.floor((failed.sow_d - plan.task.firstMonday_d) / 7) + 1;
        const next = again(plan, { now_week: now, failed: [failed.id] });
        expect(next.sowings.map(({ id }) => id)).not.toContain(failed.id);
        for (const sowing of sownBefore(plan, now).filter(({ id }) => id !== failed.id))
          expect(next.sowings.find(({ id }) => id === sowing.id)?.strips).toEqual(sowing.strips);
        expect(faultsIn(next)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test('after a missed week does in the next one what was to be done, on the same places', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 12 }), (plan, missed) => {
        const next = again(plan, { now_week: missed + 1, missed_weeks: [missed] });
        expect(faultsIn(next)).toEqual([]);
        const weeks = next.sowings.flatMap(({ from_week, picks }) => [
          from_week,
          ...picks.map(({ week }) => week),
        ]);
        expect(weeks).not.toContain(missed);
        for (const { id, bed, strips } of next.sowings) {
          const before = plan.sowings.find((one) => one.id === id);
          if (before === undefined || before.sow_d >= plan.task.firstMonday_d + missed * 7) continue;
          expect(bed).toBe(before.bed);
          for (const strip of strips)
            expect(before.strips.some(({ first, last }) => first <= strip.first && strip.last <= last)).toBe(
              true,
            );
        }
      }),
      { numRuns: 25 },
    );
  });

  test('plants what was sown together on one day, though only some of its places are still taken', () => {
    const plan = seasonPlan('cape-school');
    const { id: crop } = plan.task.wishes[1]?.crop ?? { id: '' };
    const day = (week: number) => plan.task.firstMonday_d + 7 * week + plan.task.workday;
    const sowing = (id: string, sown: number, strips: Sowing['strips']): Sowing => {
      const { from_week = 0, to_week = 0 } = strips[0] ?? {};
      const picks = [{ week: to_week, day_d: day(to_week), amount: 1, mass_g: 1, lifts: 'all' as const }];
      const of = { ...(plan.sowings[0] as Sowing), id, crop, bed: 0, sow_d: day(sown), strips, picks };
      return { ...of, plantOut_d: day(from_week), from_week, to_week };
    };
    const strip = (first: number, from_week: number, to_week: number) => ({
      ...{ first, last: first + 1, from_week, to_week, restTo_week: to_week },
    });
    const sowings = [
      sowing('before', 0, [strip(1, 2, 6)]),
      sowing('next', 5, [strip(1, 7, 12), strip(5, 7, 12)]),
    ];
    const change = { ...nothing, now_week: 7, missed_weeks: [6] };
    const stands = standing({ ...plan, sowings }, change, bedKinds(plan.task));
    // Lifted in week 7, at rest in it, and free in week 8.
    expect(stands.map(({ run, batch }) => [run.first, batch.choice.from_week])).toEqual([
      ...[[0, 2]],
      ...[
        [0, 8],
        [4, 8],
      ],
    ]);
  });

  test('after a missed week does nothing in holidays either', () => {
    const plan = seasonPlan('cape-school');
    const ways = () => ({
      ...{ grows: grownIn(plan), solver },
      clock: clockFor(() => performance.now() / 1000, 0.2),
    });
    for (const missed of [9, 14, 20, 22]) {
      const change = { ...nothing, now_week: missed + 1, missed_weeks: [missed] };
      const next = [...replans(plan, change, ways())];
      expect(next.map((one) => faultsIn(one))).toEqual(next.map(() => []));
      expect(next.length).toBeGreaterThan(0);
    }
  });
});

function grownIn({ task }: TurnoverPlan): typeof fixedGrowth {
  return (crop, ...days) => grown(crop, task.place, ...days);
}
