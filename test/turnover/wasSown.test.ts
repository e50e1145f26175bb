/** What was sown is told as it was sown, whatever has become of it since. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Change } from '../../src/core/turnover/change.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { lastPlaces, numbersOf } from '../../src/core/turnover/emptied.ts';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import type { Solver } from '../../src/core/turnover/solver.ts';
import type { SownPlan } from '../../src/core/turnover/sown.ts';
import type { TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { draftPlan, replans } from '../../src/core/turnover/turnoverPlan.ts';
import { plantUnit } from '../../src/core/turnover/units.ts';
import { weekFrom } from '../../src/core/turnover/weeks.ts';
import { planText } from '../../src/schemas/planFile.ts';
import { toSown } from '../../src/schemas/toSown.ts';
import { planTable } from '../../src/wording/turnoverFiles.ts';
import { words } from './seasons.ts';
import { fixedGrowth, tasks } from './tasks.ts';

/** Finds nothing: the plan stays what its first draft is. */
const idle: Solver = Object.assign(() => ({ values: null, bound: Number.NEGATIVE_INFINITY, prices: [] }), {
  trials: () => {},
});

const drawn = tasks({ crops: 4, weeks: 20, places: 30, most: 8 })
  .map((task) => draftPlan(task, fixedGrowth))
  .filter(({ sowings }) => sowings.length > 2);

function again(plan: SownPlan, change: Partial<Change> & Pick<Change, 'now_week'>): TurnoverPlan {
  const whole = { failed: [], partly: [], missed_weeks: [], wishes: null, ...change };
  const next = [...replans(plan, whole, { grows: fixedGrowth, solver: idle, clock: clockFor(() => 0, 1) })];
  const last = next.at(-1);
  if (last === undefined) throw new Error('no plan');
  expect(faultsIn(last)).toEqual([]);
  return last;
}

/** Sowings before a week: day, seeds, plants and places. */
function sownJobs(plan: TurnoverPlan, before_week: number): readonly unknown[] {
  return jobsOf(plan)
    .filter(({ kind, week }) => (kind === 'sowInTray' || kind === 'sowInBed') && week < before_week)
    .map(({ id, date, seeds, plants, strips }) => ({
      id,
      date,
      seeds,
      plants,
      places: numbersOf({ strips }),
    }));
}

/** The first sowing that is not all lifted, in two: what fails of it, all or some. */
function struckIn(plan: TurnoverPlan, now_week: number, how: 'all' | 'some'): Partial<Change> {
  const open = plan.sowings.filter(
    (one) => weekFrom(plan.task, one.sow_d) < now_week && now_week <= one.to_week,
  );
  const wish = (crop: string) => plan.task.wishes.find((one) => one.crop.id === crop);
  for (const one of open) {
    const of = wish(one.crop);
    if (of === undefined) continue;
    if (how === 'all') return { failed: [one.id] };
    const unit = plantUnit(of.crop, plan.task.place_mm, of.unit);
    const places = lastPlaces(one, unit, one.plants - unit.plants);
    if (one.plants > unit.plants) return { partly: [{ sowing: one.id, places }] };
  }
  return {};
}

const how = fc.constantFrom('all' as const, 'some' as const);

describe('what was sown', () => {
  test('keeps its seeds, plants and places when it fails, also the second time, also from a kept plan', () => {
    let seen = 0;
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 12 }), how, how, (plan, now_week, one, other) => {
        const first = again(plan, { now_week, ...struckIn(plan, now_week, one) });
        expect(sownJobs(first, now_week)).toEqual(sownJobs(plan, now_week));
        seen += first.wasSown.length;
        const back = toSown(JSON.parse(planText(first)), plan.task);
        if ('problems' in back) throw new Error(JSON.stringify(back.problems));
        const change = { now_week: now_week + 1, ...struckIn(first, now_week + 1, other) };
        for (const kept of [first, back])
          expect(sownJobs(again(kept, change), now_week + 1)).toEqual(sownJobs(first, now_week + 1));
      }),
      { numRuns: 60 },
    );
    expect(seen).toBeGreaterThan(20);
  });

  test('keeps them when a week is missed, but for what was to be sown in it', () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 12 }), (plan, missed) => {
        const next = again(plan, { now_week: missed + 1, missed_weeks: [missed] });
        expect(sownJobs(next, missed + 1)).toEqual(sownJobs(plan, missed));
      }),
      { numRuns: 40 },
    );
  });

  test('is counted on the tag of what is left, and in the table', () => {
    const said = { catalogue: words.catalogue, units: 'metric' } as const;
    const bought = (plan: TurnoverPlan, before: string) =>
      planTable(plan, jobsOf(plan), said)
        .split('\r\n')
        .map((row) => row.replace(/"[^"]*"/g, '').split(','))
        .filter(([date = '']) => date < before)
        .reduce((sum, row) => sum + Number(row[6] ?? 0), 0);
    let seen = 0;
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 12 }), how, (plan, now_week, struck) => {
        const change = struckIn(plan, now_week, struck);
        const next = again(plan, { now_week, ...change });
        const monday = plan.calendar[now_week]?.monday ?? '9999';
        expect(bought(next, monday)).toBe(bought(plan, monday));
        for (const { sowing } of change.partly ?? []) {
          const of = (one: TurnoverPlan) => one.sowings.find(({ id }) => id === sowing);
          seen += 1;
          expect(of(next)?.seeds ?? of(plan)?.seeds).toBe(of(plan)?.seeds);
        }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(5);
  });
});
