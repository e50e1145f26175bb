/** What planning again changed, told of seasons drawn at random. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { planChanges } from '../../src/core/turnover/planChanges.ts';
import type { TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { replans, turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { weekFrom } from '../../src/core/turnover/weeks.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const means = () => ({
  ...{ grows: fixedGrowth, solver },
  clock: clockFor(() => performance.now() / 1000, 0.5),
});

const drawn = tasks({ crops: 3, weeks: 16, places: 20, most: 6 })
  .map((task) => [...turnoverPlans(task, means())].at(-1) as TurnoverPlan)
  .filter(({ sowings }) => sowings.length > 2);

const nothing = { failed: [], partly: [], missed_weeks: [], wishes: null };

describe('what planning again changed', () => {
  test('is nothing between a plan and itself', () => {
    fc.assert(
      fc.property(drawn, fc.nat(16), (plan, now_week) => {
        const changes = planChanges(plan, plan, { now_week, ...nothing });
        const ahead = plan.sowings.filter(({ sow_d }) => weekFrom(plan.task, sow_d) >= now_week).length;
        expect(changes).toMatchObject({ moved: [], failed: [], totals: [] });
        expect(changes.ahead).toEqual({ same: ahead, fresh: 0, gone: 0 });
        expect(changes.stand).toBe(plan.sowings.length - ahead);
      }),
      { numRuns: 20 },
    );
  });

  test('counts every sowing of both plans once', () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 10 }), (plan, now_week) => {
        const old = plan.sowings.filter(({ sow_d }) => weekFrom(plan.task, sow_d) < now_week);
        const failed = old.slice(0, 1).map(({ id }) => id);
        const change = { ...nothing, now_week, failed, missed_weeks: [now_week - 1] };
        const next = [...replans(plan, change, means())].at(-1) as TurnoverPlan;
        const { stand, moved, ahead, totals, ...changes } = planChanges(plan, next, change);
        // One that was cut before it failed is there with its cuts.
        const cut = next.sowings.filter(({ id }) => failed.includes(id)).length;
        expect(stand + moved.length + cut + ahead.same + ahead.fresh).toBe(next.sowings.length);
        expect(ahead.same + ahead.gone).toBe(plan.sowings.length - old.length);
        expect(changes.failed.map(({ id }) => id)).toEqual(failed);
        for (const { crop, before, now } of totals) {
          expect(plan.crops.find((one) => one.crop === crop)?.totals.picked).toBe(before);
          expect(next.crops.find((one) => one.crop === crop)?.totals.picked).toBe(now);
        }
      }),
      { numRuns: 20 },
    );
  });
});
