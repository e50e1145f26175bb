/** A plan that an older page kept is worked with as one of today. */
import { describe, expect, test } from 'vitest';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import type { KeptHand } from '../../src/forms/season/hand.ts';
import { upToDate } from '../../src/forms/season/upToDate.ts';
import { fixedGrowth, tasks } from '../turnover/tasks.ts';
import fc from 'fast-check';

describe('a plan that an older page kept', () => {
  test('gives the same jobs, and no fault', () => {
    const small = tasks({ crops: 2, weeks: 10, places: 5, most: 2 });
    const [plan] = fc
      .sample(small, { seed: 7, numRuns: 40 })
      .map((task) => draftPlan(task, fixedGrowth))
      .filter(({ sowings }) => sowings.length > 2);
    if (plan === undefined) throw new Error('no plan');
    const { wasSown: _, ...older } = plan;
    const sowings = plan.sowings.map(({ ready_d: __, ...sowing }) => sowing);
    const changed = { gone: [], fresh: [] };
    const hand = { planned: { plan: { ...older, sowings }, changed }, held: 'yes' };
    const kept = { version: 1, hand, before: { hand, typed: {} } } as unknown as KeptHand;
    const { hand: now, before } = upToDate(kept);
    expect(now.planned.plan.sowings).toHaveLength(plan.sowings.length);
    expect(now.planned.plan.sowings.every(({ ready_d }) => Number.isInteger(ready_d))).toBe(true);
    expect(jobsOf(now.planned.plan)).toEqual(jobsOf(plan));
    expect(faultsIn(now.planned.plan)).toEqual([]);
    expect(now.planned.changed).toEqual({ ...changed, partly: [] });
    expect(before?.hand).toEqual(now);
  });
});
