/** The stages of a plan, each no worse than the one before. */
import type { Aim } from './aim.ts';
import type { Counts } from './counts.ts';
import { daysAim } from './daysAim.ts';
import { demandAim, metValues } from './demandAim.ts';
import { firstCounts } from './firstCounts.ts';
import { idleAim } from './idleAim.ts';
import { levelAim } from './levelAim.ts';
import { type Model, modelOf } from './model.ts';
import type { Season } from './season.ts';
import type { Column, Row, Solver } from './solver.ts';
import type { Stage } from './turnover.ts';

/** The best so far, and how good the stages are that are done. */
export type Staged = { readonly counts: Counts; readonly stages: readonly Stage[] };

/** A whole number that a solver gives may be a little less or more. */
const nearest = 0.5;
/** Sums of parts of one are the same when they differ by less. */
const same = 1e-6;

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
  for (const [aimOf, share] of order) {
    const aim = aimOf(season, model, desk.columns.length);
    const { found, took_s, stage } = reached(desk, aim, counts, { solver, most_s: left_s * share });
    left_s = Math.max(0, left_s - took_s);
    counts = found;
    desk.rows.push(kept(aim, stage.value));
    stages.push(stage);
    yield { counts, stages: [...stages] };
  }
}

/** With the share of the seconds left that a stage may take. */
const order = [
  [demandAim, 0.55],
  [(season: Season, _: Model, first: number) => levelAim(season, first), 0.5],
  [daysAim, 0.85],
  [(season: Season, _: Model, first: number) => idleAim(season, first), 1],
] as const;

type Desk = {
  readonly season: Season;
  readonly model: Model;
  readonly columns: Column[];
  readonly rows: Row[];
  readonly aims: Aim[];
};

type Reached = { readonly found: Counts; readonly took_s: number; readonly stage: Stage };

function reached(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  { solver, most_s }: { readonly solver: Solver; readonly most_s: number },
): Reached {
  desk.columns.push(...aim.columns);
  desk.rows.push(...aim.rows);
  desk.aims.push(aim);
  const start = valuesOf(desk, counts);
  const programme = { columns: aimed(desk.columns, aim, start), rows: desk.rows };
  const gap = aim.steps === 'whole' ? 1 - same : same;
  const found = solver(programme, { start, most_s, gap });
  const best = better(desk, aim, counts, found.values);
  const value = aim.value(best);
  const least = found.bound + aim.offset;
  const bound = Math.min(value, Math.max(aim.least, aim.steps === 'whole' ? Math.ceil(least - same) : least));
  const isProven = found.state === 'proven' || value - bound <= same;
  return { found: best, took_s: found.took_s, stage: stageOf(aim, value, isProven ? value : bound) };
}

function stageOf({ name }: Aim, value: number, bound: number): Stage {
  const gap_frac = value > same ? (value - bound) / value : 0;
  return { name, state: value === bound ? 'proven' : 'gap', value, bound, gap_frac };
}

/** What was found, in whole units, if it keeps every row and is no worse. */
function better(desk: Desk, aim: Aim, counts: Counts, values: readonly number[]): Counts {
  const found = desk.season.choices.map((_, column) => Math.floor((values[column] ?? 0) + nearest));
  const isBetter = aim.value(found) <= aim.value(counts) + same && keeps(desk, valuesOf(desk, found));
  return isBetter ? found : counts;
}

function valuesOf({ season, model, aims }: Desk, counts: Counts): readonly number[] {
  return [...counts, ...metValues(season, model, counts), ...aims.flatMap(({ fill }) => fill(counts))];
}

function keeps({ columns, rows }: Desk, values: readonly number[]): boolean {
  const inside = (
    value: number,
    { lower, upper }: { readonly lower: number; readonly upper: number },
  ): boolean => lower - same <= value && value <= upper + same;
  return (
    columns.every((column, at) => inside(values[at] ?? 0, column)) &&
    rows.every((row) =>
      inside(
        row.entries.reduce((sum, [column, factor]) => sum + factor * (values[column] ?? 0), 0),
        row,
      ),
    )
  );
}

function aimed(
  columns: readonly Column[],
  { entries, unused }: Aim,
  start: readonly number[],
): readonly Column[] {
  const costs = new Map(entries);
  return columns.map((column, at) => {
    const cost = costs.get(at) ?? 0;
    const now = start[at] ?? 0;
    return unused.has(at) ? { ...column, cost, lower: now, upper: now } : { ...column, cost };
  });
}

/** What a stage has reached is not given up by a later one. */
function kept({ entries, offset }: Aim, value: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper: value - offset + same, entries };
}
