/** The stages of a plan, each no worse than the one before. */
import { type Aim, same } from './aim.ts';
import { type Clock, left_s, partOf } from './clock.ts';
import type { Counts } from './counts.ts';
import { daysAim } from './daysAim.ts';
import { demandAim } from './demandAim.ts';
import { costing, type Desk } from './desk.ts';
import { tightened } from './duals.ts';
import { firstCounts } from './firstCounts.ts';
import { idleAim } from './idleAim.ts';
import { levelAim } from './levelAim.ts';
import { modelOf } from './model.ts';
import { searched } from './searched.ts';
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
 * @param clock seconds for all stages together, with all that is done between them
 * @returns the best after each stage
 * @valid every season
 * @source commonPractice
 */
export function* stagesOf(season: Season, solver: Solver, clock: Clock): Generator<Staged, void, void> {
  let counts = firstCounts(season);
  const stages: Stage[] = [];
  const model = modelOf(season);
  const desk: Desk = { season, model, columns: model.columns, rows: [...model.rows], aims: [] };
  for (const [aimOf, part, whole] of order) {
    const aim = aimOf(desk);
    const { found, stage } = reached(desk, aim, counts, { solver, clock: partOf(clock, part), whole });
    counts = found;
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
  [levelAim, 0.5, 0.5],
  [daysAim, 0.75, 0.9],
  [idleAim, 1, 1],
] as const;

type Means = { readonly solver: Solver; readonly clock: Clock; readonly whole: number };

function reached(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  { solver, clock, whole }: Means,
): { readonly found: Counts; readonly stage: Stage } {
  desk.columns = [...desk.columns, ...aim.columns];
  desk.rows.push(...aim.rows);
  desk.aims.push(aim);
  const { found, low, dual } = searched(desk, aim, counts, { solver, clock: partOf(clock, whole) });
  const isDone = aim.value(found) - low <= 10 * same || left_s(clock) === 0;
  const best = isDone ? found : sweep(desk, aim, found, { solver, clock });
  // Not what the solver says counts, but what its plan is worth once it is rounded and looked at.
  const value = aim.value(best);
  // What a stage has reached is not given up by a later one.
  desk.columns = tightened(costing(desk.columns, aim), dual, value - aim.offset + same);
  desk.rows.push(kept(aim, value));
  return { found: best, stage: stageOf(aim, value, value - low <= 10 * same ? value : low) };
}

function stageOf({ name }: Aim, value: number, bound: number): Stage {
  const gap_frac = value > same ? (value - bound) / value : 0;
  return { name, state: value === bound ? 'proven' : 'gap', value, bound, gap_frac };
}

function kept({ entries, offset }: Aim, value: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper: value - offset + same, entries };
}
