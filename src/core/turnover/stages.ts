/** The stages of a plan, each no worse than the one before. */
import type { Aim } from './aim.ts';
import type { Counts } from './counts.ts';
import { daysAim } from './daysAim.ts';
import { demandAim } from './demandAim.ts';
import { aimed, better, type Desk, same, valuesOf } from './desk.ts';
import { firstCounts } from './firstCounts.ts';
import { idleAim } from './idleAim.ts';
import { levelAim } from './levelAim.ts';
import { type Model, modelOf } from './model.ts';
import type { Season } from './season.ts';
import type { Row, Solver } from './solver.ts';
import type { Stage } from './turnover.ts';
import { sweep } from './windows.ts';

/** The best so far, and how good the stages are that are done. */
export type Staged = { readonly counts: Counts; readonly stages: readonly Stage[] };

/**
 * Works the season out stage by stage.
 * @param season the season
 * @param solver what solves a programme
 * @param most_s seconds for all stages together
 * @returns first a simple plan, then the best after each stage
 * @valid every season
 * @source commonPractice
 */
export function* stagesOf(season: Season, solver: Solver, most_s: number): Generator<Staged, void, void> {
  let counts = firstCounts(season);
  const stages: Stage[] = [];
  yield { counts, stages };
  const model = modelOf(season);
  const desk: Desk = { season, model, columns: [...model.columns], rows: [...model.rows], aims: [] };
  let left_s = most_s;
  for (const [aimOf, share, whole] of order) {
    const aim = aimOf(season, model, desk.columns.length);
    const { found, took_s, stage } = reached(desk, aim, counts, {
      ...{ solver, most_s: left_s * share, whole },
    });
    left_s = Math.max(0, left_s - took_s);
    counts = found;
    desk.rows.push(kept(aim, stage.value));
    stages.push(stage);
    yield { counts, stages: [...stages] };
  }
}

/**
 * With the share of the seconds left that a stage may take, and how much of it goes to the season as a whole; then it is
 * gone through window by window.
 */
const order = [
  [demandAim, 0.55, 0.95],
  [(season: Season, _: Model, first: number) => levelAim(season, first), 0.5, 0.5],
  [daysAim, 0.85, 0.9],
  [(season: Season, _: Model, first: number) => idleAim(season, first), 1, 1],
] as const;

type Reached = { readonly found: Counts; readonly took_s: number; readonly stage: Stage };

function reached(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  { solver, most_s, whole }: { readonly solver: Solver; readonly most_s: number; readonly whole: number },
): Reached {
  desk.columns.push(...aim.columns);
  desk.rows.push(...aim.rows);
  desk.aims.push(aim);
  const start = valuesOf(desk, counts);
  const programme = { columns: aimed(desk.columns, aim, start), rows: desk.rows };
  const gap = aim.steps === 'whole' ? 1 - same : same;
  const found = solver(programme, { start, most_s: most_s * whole, gap });
  const best = better(desk, aim, counts, found.values);
  const least = found.bound + aim.offset;
  const low = Math.max(aim.least, aim.steps === 'whole' ? Math.ceil(least - same) : least);
  // Not what the solver says counts, but what its plan is worth once it is rounded and looked at.
  if (aim.value(best) - low <= 10 * same)
    return { found: best, took_s: found.took_s, stage: stageOf(aim, aim.value(best), aim.value(best)) };
  const left_s = most_s - found.took_s;
  const swept = sweep(desk, aim, best, { solver, most_s: left_s, gap });
  const value = aim.value(swept.found);
  return {
    found: swept.found,
    took_s: found.took_s + swept.took_s,
    stage: stageOf(aim, value, Math.min(value, low)),
  };
}

function stageOf({ name }: Aim, value: number, bound: number): Stage {
  const gap_frac = value > same ? (value - bound) / value : 0;
  return { name, state: value === bound ? 'proven' : 'gap', value, bound, gap_frac };
}

/** What a stage has reached is not given up by a later one. */
function kept({ entries, offset }: Aim, value: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper: value - offset + same, entries };
}
