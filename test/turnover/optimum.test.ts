/** The plan is the best there is: against all plans of small seasons, one by one. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bedKinds } from '../../src/core/turnover/bedKinds.ts';
import { choicesOf } from '../../src/core/turnover/choices.ts';
import { type Season, seasonOf } from '../../src/core/turnover/season.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { stagesOf } from '../../src/core/turnover/stages.ts';
import type { TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { bestOf, plansIn } from './bruteForce.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const now_s = () => performance.now() / 1000;

function seasonFor(task: TurnoverTask): Season {
  const kinds = bedKinds(task);
  return seasonOf(task, kinds, choicesOf(task, kinds, fixedGrowth), []);
}

/** Few enough plans to look at each, and more than one. */
const small = tasks({ crops: 2, weeks: 6, places: 4, most: 3 })
  .map(seasonFor)
  .filter((season) => plansIn(season) > 3 && plansIn(season) < 4_000);

describe('a plan', () => {
  test('is as good as the best of all plans, stage by stage', () => {
    let looked = 0;
    fc.assert(
      fc.property(small, (season) => {
        const last = [...stagesOf(season, solver, clockFor(now_s, 20))].at(-1);
        const found = last?.stages.map(({ value }) => value) ?? [];
        for (const [at, value] of bestOf(season).entries()) expect(found[at]).toBeCloseTo(value, 5);
        for (const stage of last?.stages ?? []) expect(stage.state).toBe('proven');
        looked += 1;
      }),
      { numRuns: 500 },
    );
    expect(looked).toBeGreaterThanOrEqual(500);
  });
});
