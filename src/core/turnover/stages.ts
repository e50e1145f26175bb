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
export type Staged = {
  readonly counts: Counts;
  readonly stages: readonly Stage[];
  /** The stages of other counts: of a plan that has lost some of its sowings. */
  readonly stagesOf: (counts: Counts) => readonly Stage[];
};

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
  const done: Reached[] = [];
  const model = modelOf(season);
  const desk: Desk = { season, model, columns: model.columns, rows: [...model.rows], aims: [], kept: [] };
  for (const [aimOf, part_frac, ways] of order) {
    const aim = aimOf(desk);
    const { found, bound } = reached(desk, aim, counts, { solver, clock: partOf(clock, part_frac), ways });
    counts = found;
    done.push({ aim, value: aim.value(found), bound });
    const stages = done.map((one) => stageOf(one));
    yield { counts, stages, stagesOf: (others) => worse([...done], others) };
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
): { readonly found: Counts; readonly bound: number } {
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
  return { found, bound: value - low <= 10 * same ? value : low };
}

/** An aim with the value of the plan, and what no plan beats that is as good by the aims before. */
type Reached = { readonly aim: Aim; readonly value: number; readonly bound: number };

function stageOf({ aim, value, bound }: Reached): Stage {
  const gap_frac = value > same ? (value - bound) / value : 0;
  return { name: aim.name, state: value === bound ? 'proven' : 'gap', value, bound, gap_frac };
}

/** From the first aim on that is reached less, nothing is known of the aims after it: their bounds are of better plans. */
function worse(done: readonly Reached[], counts: Counts): readonly Stage[] {
  let isLess = false;
  return done.map(({ aim, value: before, bound }) => {
    const value = aim.value(counts);
    const isAsGood = !isLess && value <= before + same;
    isLess ||= !isAsGood;
    const stage = stageOf({ aim, value, bound: Math.min(bound, value) });
    return isAsGood ? stage : { ...stage, state: 'unplaced' };
  });
}

function kept({ entries, offset }: Aim, value: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper: value - offset + same, entries };
}
