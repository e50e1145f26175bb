/** Planning again with other wishes, and after sowings that failed in part or after they were cut. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Change } from '../../src/core/turnover/change.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { lastPlaces, numbersOf } from '../../src/core/turnover/emptied.ts';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import { planChanges } from '../../src/core/turnover/planChanges.ts';
import type { Sowing, TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { replans, turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { plantUnit } from '../../src/core/turnover/units.ts';
import { weekFrom } from '../../src/core/turnover/weeks.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { cropOf, fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const means = () => ({
  ...{ grows: fixedGrowth, solver },
  clock: clockFor(() => performance.now() / 1000, 0.5),
});

const some = tasks({ crops: 4, weeks: 20, places: 30, most: 8 })
  .map((task) => [...turnoverPlans(task, means())].at(-1) as TurnoverPlan)
  .filter(({ sowings }) => sowings.length > 2);

const nothing = { failed: [], partly: [], missed_weeks: [], wishes: null };

function again(plan: TurnoverPlan, change: Partial<Change> & Pick<Change, 'now_week'>): TurnoverPlan {
  const next = [...replans(plan, { ...nothing, ...change }, means())].at(-1);
  if (next === undefined) throw new Error('no plan');
  expect(faultsIn(next)).toEqual([]);
  return next;
}

function sownWeek({ task }: TurnoverPlan, { sow_d }: Sowing): number {
  return weekFrom(task, sow_d);
}

function unitOf({ task }: TurnoverPlan, { crop }: Sowing): ReturnType<typeof plantUnit> {
  const wish = task.wishes.find((one) => one.crop.id === crop);
  if (wish === undefined) throw new Error(`no wish for ${crop}`);
  return plantUnit(wish.crop, task.place_mm, wish.unit);
}

/** The only sowing of its crop, week and bed. */
function alone({ sowings }: TurnoverPlan, { id }: Sowing): boolean {
  return sowings.filter((one) => one.id === id).length === 1;
}

describe('a sowing that failed in part', () => {
  test('keeps the places that hold plants, gives as much less, and leaves the others free from that week on', () => {
    let seen = 0;
    let reused = 0;
    fc.assert(
      fc.property(some, fc.nat(), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (plan, pick, share) => {
        const large = plan.sowings.filter(
          (one) => one.plants >= 2 * unitOf(plan, one).plants && alone(plan, one) && one.strips.length === 1,
        );
        const struck = large[pick % Math.max(1, large.length)];
        if (struck === undefined) return;
        const now_week = Math.max(sownWeek(plan, struck) + 1, struck.from_week);
        if (now_week >= struck.to_week) return;
        const unit = unitOf(plan, struck);
        const units = struck.plants / unit.plants;
        const left = Math.min(units - 1, Math.max(1, Math.floor(units * share)));
        const places = lastPlaces(struck, unit, left * unit.plants);
        const next = again(plan, { now_week, partly: [{ sowing: struck.id, places }] });
        const now = next.sowings.find(({ id }) => id === struck.id);
        const gone = new Set(places);
        const cutBefore = struck.picks.some(({ week }) => week < now_week);
        if (!cutBefore) {
          expect(now && numbersOf(now)).toEqual(numbersOf(struck).filter((place) => !gone.has(place)));
          expect(now?.plants).toBeCloseTo(left * unit.plants, 9);
          for (const [at, { amount, week }] of struck.picks.entries()) {
            expect(now?.picks[at]?.week).toBe(week);
            expect(now?.picks[at]?.amount).toBeCloseTo((amount * left) / units, 9);
          }
        }
        for (const one of plan.sowings.filter((of) => sownWeek(plan, of) < now_week && of.id !== struck.id))
          expect(next.sowings.find(({ id }) => id === one.id)?.strips).toEqual(one.strips);
        seen += 1;
        const isOnGone = (one: Sowing) =>
          one.bed === struck.bed &&
          one.id !== struck.id &&
          one.strips.some(
            ({ from_week, first, last }) =>
              now_week <= from_week &&
              from_week < struck.to_week &&
              places.some((at) => first <= at && at <= last),
          );
        if (next.sowings.some(isOnGone)) reused += 1;
      }),
      { numRuns: 60 },
    );
    expect(seen).toBeGreaterThan(20);
    expect(reused).toBeGreaterThan(2);
  });

  test('is told by itself, neither as standing nor as moved', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const struck = plan.sowings.find(
          (one) => one.plants >= 2 * unitOf(plan, one).plants && alone(plan, one),
        );
        if (struck === undefined) return;
        const now_week = sownWeek(plan, struck) + 1;
        const unit = unitOf(plan, struck);
        const places = lastPlaces(struck, unit, struck.plants - unit.plants);
        const change = { ...nothing, now_week, partly: [{ sowing: struck.id, places }] };
        const next = again(plan, change);
        const changes = planChanges(plan, next, change);
        expect(changes.partly.map(({ id }) => id)).toEqual([struck.id]);
        expect(changes.moved).toEqual([]);
        const { same, fresh } = changes.ahead;
        expect(changes.stand + 1 + same + fresh).toBe(next.sowings.length);
      }),
      { numRuns: 20 },
    );
  });

  test('of wide plants gives up whole plants, those with the highest numbers first', () => {
    const strips = [
      { first: 1, last: 8, from_week: 2, to_week: 6, restTo_week: 6 },
      { first: 9, last: 16, from_week: 2, to_week: 7, restTo_week: 7 },
    ];
    const sowing = { strips };
    const wide = { plants: 1, places: 4 };
    expect(lastPlaces(sowing, wide, 4)).toEqual([]);
    expect(lastPlaces(sowing, wide, 3)).toEqual([13, 14, 15, 16]);
    expect(lastPlaces(sowing, wide, 1)).toEqual([5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16]);
    // Four plants on each place: thirteen of sixty-four fill three places.
    const dense = { plants: 4, places: 1 };
    expect(lastPlaces(sowing, dense, 13)).toHaveLength(13);
  });
});

/** A crop that is cut every week, three times, in a bed of its own. */
function cutPlan(): TurnoverPlan {
  const crop = cropOf('cut', {
    ...{ nursery: 0, bed: 21, stands: 0, cuts: 3, regrow: 7, spacing: 200, family: 'Asteraceae' },
  });
  const perWeek = Array.from({ length: 12 }, (_, week) => (week >= 4 ? 2 : 0));
  const [task] = fc.sample(tasks({ crops: 1, weeks: 12, places: 8, most: 2 }), { numRuns: 1, seed: 7 });
  if (task === undefined) throw new Error('no task');
  const beds = [{ name: 'Bed', mode: 'siphon' as const, places: 8, area_m2: 0.32 }];
  const whole = { ...task, weeks: 12, beds, holidays: [], nurseryCells: null, rest_d: 0 };
  const of = { ...whole, wishes: [{ crop, unit: 'head' as const, perWeek }] };
  return [...turnoverPlans(of, means())].at(-1) as TurnoverPlan;
}

describe('a sowing that failed after it was cut', () => {
  test('counts with what was cut of it, and its places are free after its last cut', () => {
    const plan = cutPlan();
    const struck = plan.sowings.find(({ picks }) => picks.length === 3);
    if (struck === undefined) throw new Error('nothing was cut three times');
    const [first] = struck.picks;
    const now_week = (first?.week ?? 0) + 1;
    const next = again(plan, { now_week, failed: [struck.id] });
    const now = next.sowings.find(({ id }) => id === struck.id);
    expect(now?.picks.map(({ week, amount }) => [week, amount])).toEqual([[first?.week, first?.amount]]);
    expect(now?.to_week).toBe(first?.week);
    const cut = (of: TurnoverPlan) => of.crops[0]?.picked.slice(0, now_week);
    expect(cut(next)).toEqual(cut(plan));
    expect(planChanges(plan, next, { ...nothing, now_week, failed: [struck.id] }).moved).toEqual([]);
  });
});

describe('other wishes from a week on', () => {
  const fresh = cropOf('fresh', {
    ...{ nursery: 0, bed: 14, stands: 7, cuts: 1, regrow: 7, spacing: 200, family: 'Fabaceae' },
  });

  test('move nothing that stands, sow nothing more of what is not wanted, and are met where there is room', () => {
    let met = 0;
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 8 }), (plan, now_week) => {
        const { task } = plan;
        const upTo = (perWeek: readonly number[]) =>
          perWeek.map((amount, week) => (week < now_week ? amount : 0));
        const only = Array.from({ length: task.weeks }, (_, week) => (week < now_week ? 0 : 1));
        const wishes = [
          ...task.wishes.map((wish) => ({ ...wish, perWeek: upTo(wish.perWeek) })),
          { crop: fresh, unit: 'head' as const, perWeek: only },
        ];
        const next = again(plan, { now_week, wishes });
        for (const one of plan.sowings.filter((of) => sownWeek(plan, of) < now_week)) {
          const now = next.sowings.find(({ id }) => id === one.id);
          expect(now?.strips).toEqual(one.strips);
          expect(now?.picks).toEqual(one.picks);
        }
        const ahead = next.sowings.filter((one) => sownWeek(next, one) >= now_week);
        expect(ahead.every(({ crop }) => crop === 'fresh')).toBe(true);
        if (ahead.length > 0) met += 1;
        const short = next.short.filter(({ crop }) => crop === 'fresh');
        // Before it can be ready it is said to be late, not out of season.
        expect(short.filter(({ week }) => week <= now_week + 1).every(({ why }) => why !== 'season')).toBe(
          true,
        );
      }),
      { numRuns: 40 },
    );
    expect(met).toBeGreaterThan(15);
  });

  test('that are those of before change nothing', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 8 }), (plan, now_week) => {
        const one = again(plan, { now_week, wishes: plan.task.wishes });
        const other = again(plan, { now_week });
        expect(one.crops.map(({ totals }) => totals.wanted)).toEqual(
          other.crops.map(({ totals }) => totals.wanted),
        );
        expect(one.task).toEqual(plan.task);
      }),
      { numRuns: 10 },
    );
  });
});
