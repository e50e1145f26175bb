/** The stages of a plan, each no worse than the one before. */
import { type Aim, same } from './aim.ts';
import { type Clock, partOf } from './clock.ts';
import type { Counts } from './counts.ts';
import { daysAim } from './daysAim.ts';
import { demandAim } from './demandAim.ts';
import { costing, type Desk } from './desk.ts';
import { tightened } from './duals.ts';
import { firstCounts } from './firstCounts.ts';
import { idleAim } from './idleAim.ts';
import { levelAim } from './levelAim.ts';
import { modelOf } from './model.ts';
import { searched, type Ways } from './searched.ts';
import type { Season } from './season.ts';
import type { Row, Solver } from './solver.ts';
import type { Stage } from './turnover.ts';

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
  const desk: Desk = { season, model, columns: model.columns, rows: [...model.rows], aims: [], kept: [] };
  for (const [aimOf, part_frac, ways] of order) {
    const aim = aimOf(desk);
    const { found, stage } = reached(desk, aim, counts, { solver, clock: partOf(clock, part_frac), ways });
    counts = found;
    stages.push(stage);
    yield { counts, stages: [...stages] };
  }
}

/** Wishes are met best by plans near to parts of units; the other aims have many plans that are as good, everywhere. */
const nearFirst: Ways = [
  ['near', 0.2],
  ['whole', 0.75],
  ['windows', 1],
];
const windowsFirst: Ways = [
  ['windows', 0.5],
  ['whole', 0.9],
  ['windows', 1],
];

/** With the share of the seconds left that a stage may take, and how it is looked for. */
const order = [
  [demandAim, 0.55, nearFirst],
  [levelAim, 0.5, windowsFirst],
  [daysAim, 0.75, windowsFirst],
  [idleAim, 1, windowsFirst],
] as const;

type Means = { readonly solver: Solver; readonly clock: Clock; readonly ways: Ways };

function reached(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  means: Means,
): { readonly found: Counts; readonly stage: Stage } {
  const implied = aim.implied(means);
  desk.columns = [...desk.columns, ...aim.columns];
  desk.rows.push(...aim.rows, ...implied);
  desk.aims.push(aim);
  const { found, low, dual } = searched(desk, aim, counts, means);
  // Not what the solver says counts, but what its plan is worth once it is rounded and looked at.
  const value = aim.value(found);
  // What a stage has reached is not given up by a later one.
  desk.columns = tightened(costing(desk.columns, aim), dual, value - aim.offset + same);
  const row = kept(aim, value);
  desk.kept.push(row);
  desk.rows.push(row);
  return { found, stage: stageOf(aim, value, value - low <= 10 * same ? value : low) };
}

function stageOf({ name }: Aim, value: number, bound: number): Stage {
  const gap_frac = value > same ? (value - bound) / value : 0;
  return { name, state: value === bound ? 'proven' : 'gap', value, bound, gap_frac };
}

function kept({ entries, offset }: Aim, value: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper: value - offset + same, entries };
}
