/** What nothing can beat, from prices of rows: added up here, whatever a solver says of it. */
import type { Column, Programme } from './solver.ts';

/** A bound, and what one more of each column adds to it. */
export type Dual = { readonly bound: number; readonly costs: readonly number[] };

/** A price that is smaller is the solver's rounding. */
const noise = 1e-9;
/** A whole number may be so little less than itself. */
const nearly = 1e-6;

/**
 * The bound that prices of the rows give.
 * Any prices whatever give one that holds: good ones give a good one.
 * @param programme columns with their costs, and rows
 * @param prices what the limit of each row is worth; none where nothing is known
 * @returns the bound, and what is left of each cost once the rows are paid for
 * @valid columns with finite limits; one without may make the bound minus infinity
 * @source geometry
 * @example dualOf({ columns: [{ cost: 2, lower: 0, upper: 9, kind: 'real' }], rows: [{ lower: 3, upper: 9, entries: [[0, 1]] }] }, [2]) // { bound: 6, costs: [0] }
 */
export function dualOf(programme: Programme, prices: readonly number[]): Dual {
  const { columns, rows } = programme;
  const costs = columns.map(({ cost }) => cost);
  let bound = 0;
  for (const [at, { lower, upper, entries }] of rows.entries()) {
    const price = prices[at] ?? 0;
    const limit = price > 0 ? lower : upper;
    if (Math.abs(price) <= noise || !Number.isFinite(limit)) continue;
    bound += price * limit;
    for (const [column, factor] of entries) costs[column] = (costs[column] ?? 0) - price * factor;
  }
  for (const [at, { lower, upper }] of columns.entries()) {
    const cost = costs[at] ?? 0;
    if (cost !== 0) bound += cost * (cost > 0 ? lower : upper);
  }
  return { bound, costs };
}

/**
 * Columns with no more room than a value allows: what moves further from its limit costs more than that.
 * @param columns the columns that the dual was made of
 * @param dual their bound and costs
 * @param most a value that is not to be passed
 * @returns the same columns, with closer limits for those that are whole, of themselves or with others
 * @valid a value no smaller than the bound
 * @source geometry
 * @example tightened([{ cost: 0, lower: 0, upper: 9, kind: 'whole' }], { bound: 1, costs: [2] }, 6) // [{ cost: 0, lower: 0, upper: 2, kind: 'whole' }]
 */
export function tightened(columns: readonly Column[], dual: Dual, most: number): readonly Column[] {
  const room = Math.max(0, most - dual.bound);
  return columns.map((column, at) => {
    const cost = dual.costs[at] ?? 0;
    if (column.kind === 'real' || Math.abs(cost) <= noise) return column;
    const steps = Math.floor(room / Math.abs(cost) + nearly);
    const { lower, upper } = column;
    if (cost > 0) return { ...column, upper: Math.min(upper, lower + steps) };
    return { ...column, lower: Math.max(lower, upper - steps) };
  });
}
