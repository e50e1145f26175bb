/** Looking first where the best plan is likely to be misses nothing: against the same programmes solved as they stand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gapOf, same } from '../../src/core/turnover/aim.ts';
import { bedKinds } from '../../src/core/turnover/bedKinds.ts';
import { choicesOf } from '../../src/core/turnover/choices.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { daysAim } from '../../src/core/turnover/daysAim.ts';
import { demandAim } from '../../src/core/turnover/demandAim.ts';
import { better, costing, type Desk } from '../../src/core/turnover/desk.ts';
import { idleAim } from '../../src/core/turnover/idleAim.ts';
import { levelAim } from '../../src/core/turnover/levelAim.ts';
import { modelOf } from '../../src/core/turnover/model.ts';
import { type Season, seasonOf } from '../../src/core/turnover/season.ts';
import { stagesOf } from '../../src/core/turnover/stages.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();

/** Too many plans to look at each. */
const seasons = tasks({ crops: 3, weeks: 14, places: 10, most: 4 })
  .map((task): Season => {
    const kinds = bedKinds(task);
    return seasonOf(task, kinds, choicesOf(task, kinds, fixedGrowth), []);
  })
  .filter(({ choices }) => 12 < choices.length && choices.length < 60);

/** Values of the stages, each solved at once, with nothing known but what the ones before have reached. */
function plainly(season: Season): readonly number[] {
  const model = modelOf(season);
  const desk: Desk = { season, model, columns: model.columns, rows: [...model.rows], aims: [], kept: [] };
  return [demandAim, levelAim, daysAim, idleAim].map((aimOf) => {
    const aim = aimOf(desk);
    desk.columns = [...desk.columns, ...aim.columns];
    desk.rows.push(...aim.rows);
    desk.aims.push(aim);
    const programme = { columns: costing(desk.columns, aim), rows: desk.rows };
    const { values } = solver(programme, { start: null, most_s: 20, gap: gapOf(aim) });
    const none = season.choices.map(() => 0);
    const worst = {
      ...aim,
      value: (counts: readonly number[]) => (counts === none ? 1e9 : aim.value(counts)),
    };
    const value = aim.value(better(desk, worst, none, values));
    const upper = value - aim.offset + same;
    desk.rows.push({ lower: Number.NEGATIVE_INFINITY, upper, entries: aim.entries });
    return value;
  });
}

describe('a search that is narrowed', () => {
  test('finds plans as good as one that is not', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const stages = [
          ...stagesOf(
            season,
            solver,
            clockFor(() => performance.now() / 1000, 40),
          ),
        ].at(-1)?.stages;
        const plain = plainly(season);
        for (const [at, { value, state }] of (stages ?? []).entries()) {
          expect(state).toBe('proven');
          expect(value).toBeCloseTo(plain[at] ?? Number.NaN, 4);
        }
      }),
      { numRuns: 60 },
    );
  });
});
