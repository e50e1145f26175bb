/** Something that a plan is to be best at. */
import type { Clock } from './clock.ts';
import type { Counts } from './counts.ts';
import type { Entry } from './rows.ts';
import type { Column, Row, Solver } from './solver.ts';
import type { StageName } from './turnover.ts';

/** To be made as small as it can be, without giving up anything that the aims before it have reached. */
export type Aim = {
  readonly name: StageName;
  /** Columns and rows that only this aim needs; its columns follow those that are there already. */
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** What is made small, less `offset`. */
  readonly entries: readonly Entry[];
  readonly offset: number;
  /** Values of its own columns. */
  readonly fill: (counts: Counts) => readonly number[];
  readonly value: (counts: Counts) => number;
  /** Columns that cannot help this aim: they stay as they are. */
  readonly unused: ReadonlySet<number>;
  /** Rows on its columns that every plan keeps which is as good for the aims before: found by trying. */
  readonly implied: (means: { readonly solver: Solver; readonly clock: Clock }) => readonly Row[];
  /** No plan whatever is smaller than this. */
  readonly least: number;
  /** whole: its value is a whole number, so that a bound may be rounded up to one. */
  readonly steps: 'whole' | 'any';
};

/** Sums of parts of one are the same when they differ by less. */
export const same = 1e-6;

/**
 * Values of an aim that differ by less are the same.
 * @param aim any aim
 * @returns a little less than one where its value is a whole number
 * @valid every aim
 * @source geometry
 * @example gapOf({ steps: 'any' }) // 0.000001
 */
export function gapOf(aim: Aim): number {
  return aim.steps === 'whole' ? 1 - 10 * same : same;
}
