/** The season as a whole searched for its best plan, first where it is likely to be. */
import { type Aim, gapOf, same } from './aim.ts';
import { type Clock, left_s, partOf } from './clock.ts';
import type { Counts } from './counts.ts';
import { better, costing, type Desk, valuesOf, withoutUnused } from './desk.ts';
import { type Dual, dualOf, tightened, valueForShare } from './duals.ts';
import type { Column, Solver } from './solver.ts';

export type Searched = {
  readonly found: Counts;
  /** No plan is smaller than this. */
  readonly low: number;
  /** The bound of parts of units, from which limits follow that hold for later aims, too. */
  readonly dual: Dual;
};

type Means = { readonly solver: Solver; readonly clock: Clock };

/** So large a part of the columns is looked at first, for so large a part of the time. */
const likely = { columns_frac: 0.1, time_frac: 0.4 } as const;

/**
 * Looks for the best plan.
 * Parts of units are weighed first, which is quick: their prices tell by how much each column makes a plan worse. Then only
 * columns that cost little are looked at; what comes out tells which columns can be part of any better plan at all, and
 * only these are looked at last.
 * @param desk the programme, with the aim's own columns and rows
 * @param aim what is to be made small
 * @param counts the plan so far
 * @param means a solver and its time
 * @returns a plan that is no worse, and a bound that no plan beats
 * @valid every plan that keeps the rows
 * @source commonPractice
 */
export function searched(desk: Desk, aim: Aim, counts: Counts, means: Means): Searched {
  const columns = costing(desk.columns, aim);
  const dual = dualIn(desk, columns, means);
  const floor = (bound: number): number =>
    Math.max(
      aim.least,
      aim.steps === 'whole' ? Math.ceil(bound + aim.offset - 10 * same) : bound + aim.offset,
    );
  let found = counts;
  let low = floor(dual.bound);
  const isProven = (): boolean => aim.value(found) - low <= 10 * same;
  const worst = (): number => aim.value(found) - aim.offset;
  const look = (most: number, clock: Clock): void => {
    const start = valuesOf(desk, found);
    const narrow = withoutUnused(tightened(columns, dual, most), aim, start);
    const isInside = narrow.every(
      ({ lower, upper }, at) => lower <= (start[at] ?? 0) + same && (start[at] ?? 0) - same <= upper,
    );
    const one = means.solver(
      { columns: narrow, rows: desk.rows },
      { start: isInside ? start : null, most_s: left_s(clock), gap: gapOf(aim) },
    );
    found = better(desk, aim, found, one.values);
    // Beyond the limits nothing is better than the value to which they were drawn.
    low = Math.max(low, floor(Math.min(one.bound, most)));
  };
  const near = valueForShare(columns, dual, likely.columns_frac);
  if (!isProven() && near < worst()) look(near, partOf(means.clock, likely.time_frac));
  if (!isProven() && left_s(means.clock) > 0) look(worst(), means.clock);
  return { found, low: Math.min(low, aim.value(found)), dual };
}

function dualIn(desk: Desk, columns: readonly Column[], { solver, clock }: Means): Dual {
  const programme = {
    columns: columns.map((column): Column => ({ ...column, kind: 'real' })),
    rows: desk.rows,
  };
  const { prices } = solver(programme, { start: null, most_s: left_s(clock), gap: same });
  return dualOf(programme, prices);
}
