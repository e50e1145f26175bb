/** The season as a whole searched for its best plan, first where it is likely to be. */
import { type Aim, gapOf, same } from './aim.ts';
import { type Clock, left_s, partOf } from './clock.ts';
import type { Counts } from './counts.ts';
import { better, costing, type Desk, valuesOf, withoutUnused } from './desk.ts';
import { type Dual, dualOf, tightened } from './duals.ts';
import type { Column, Found, Solver } from './solver.ts';
import { sweep } from './windows.ts';

/**
 * near: whole units next to the parts of units that would be best; windows: some weeks at a time; whole: everything that
 * can be part of a better plan. Only this last one tells how good a plan can be.
 */
export type Way = 'near' | 'windows' | 'whole';

/** Ways to look one after the other, each with the share of the seconds left that it may take. */
export type Ways = readonly (readonly [way: Way, share_frac: number])[];

export type Searched = {
  readonly found: Counts;
  /** No plan is smaller than this. */
  readonly low: number;
  /** The bound of parts of units, from which limits follow that hold for later aims, too. */
  readonly dual: Dual;
};

type Means = { readonly solver: Solver; readonly clock: Clock; readonly ways: Ways };

/**
 * Looks for the best plan, until one is proven to be it.
 * Parts of units are weighed first, which is quick: their prices tell by how much each column makes a plan worse. So a good
 * plan, however it was found, tells which columns can be part of any better one at all, and only these are searched.
 * @param desk the programme, with the aim's own columns and rows
 * @param aim what is to be made small
 * @param counts the plan so far
 * @param means a solver, its time, and the ways to look
 * @returns a plan that is no worse, and a bound that no plan beats
 * @valid every plan that keeps the rows
 * @source commonPractice
 */
export function searched(desk: Desk, aim: Aim, counts: Counts, means: Means): Searched {
  const { solver } = means;
  const columns = costing(desk.columns, aim);
  const parts = inParts(desk, columns, means);
  const dual = dualOf({ columns, rows: desk.rows }, parts.prices);
  let found = counts;
  let low = floorOf(aim, dual.bound);
  const isProven = (): boolean => aim.value(found) - low <= 10 * same;
  const look: Readonly<Record<Way, (clock: Clock) => void>> = {
    near: (clock) => {
      const { values } =
        aim.unused.size === 0 ? parts : inParts(desk, usable(desk, aim, columns, found), means);
      if (values === null) return;
      found = within(desk, aim, found, beside(desk, columns, values), { solver, clock }).found;
    },
    windows: (clock) => {
      found = sweep(desk, aim, found, { solver, clock });
    },
    whole: (clock) => {
      const most = aim.value(found) - aim.offset;
      const one = within(desk, aim, found, tightened(columns, dual, most), { solver, clock });
      found = one.found;
      // Beyond the limits nothing is better than the value to which they were drawn.
      low = Math.max(low, floorOf(aim, Math.min(one.bound, most)));
    },
  };
  for (const [way, share_frac] of means.ways)
    if (!isProven() && left_s(means.clock) > 0) look[way](partOf(means.clock, share_frac));
  return { found, low: Math.min(low, aim.value(found)), dual };
}

function usable(desk: Desk, aim: Aim, columns: readonly Column[], counts: Counts): readonly Column[] {
  return withoutUnused(columns, aim, valuesOf(desk, counts));
}

/** No value of the aim is smaller. */
function floorOf({ least, steps, offset }: Aim, bound: number): number {
  return Math.max(least, steps === 'whole' ? Math.ceil(bound + offset - 10 * same) : bound + offset);
}

function inParts(desk: Desk, columns: readonly Column[], { solver, clock }: Means): Found {
  const programme = {
    columns: columns.map((column): Column => ({ ...column, kind: 'real' })),
    rows: desk.rows,
  };
  return solver(programme, { start: null, most_s: left_s(clock), gap: same });
}

/** Choices from the whole number below to the one above. */
function beside({ season }: Desk, columns: readonly Column[], values: readonly number[]): readonly Column[] {
  return columns.map((column, at) => {
    if (at >= season.choices.length) return column;
    const value = values[at] ?? 0;
    const lower = Math.max(column.lower, Math.floor(value + same));
    return { ...column, lower, upper: Math.min(column.upper, Math.ceil(value - same)) };
  });
}

/** The best plan whose columns lie in narrower limits. */
function within(
  desk: Desk,
  aim: Aim,
  counts: Counts,
  limits: readonly Column[],
  { solver, clock }: Pick<Means, 'solver' | 'clock'>,
): { readonly found: Counts; readonly bound: number } {
  const start = valuesOf(desk, counts);
  const columns = usable(desk, aim, limits, counts);
  const isInside = columns.every(
    ({ lower, upper }, at) => lower <= (start[at] ?? 0) + same && (start[at] ?? 0) - same <= upper,
  );
  const search = { start: isInside ? start : null, most_s: left_s(clock), gap: gapOf(aim) };
  const { values, bound } = solver({ columns, rows: desk.rows }, search);
  return { found: better(desk, aim, counts, values), bound };
}
