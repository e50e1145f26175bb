/** A programme of whole and real numbers in linear rows, to be made as small as it can be, and what a solver makes of it. */

export type Column = {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly kind: 'whole' | 'real';
};

/** Sum of column times factor, between two limits. A column stands in a row once. */
export type Row = {
  readonly lower: number;
  readonly upper: number;
  readonly entries: readonly (readonly [column: number, factor: number])[];
};

export type Programme = { readonly columns: readonly Column[]; readonly rows: readonly Row[] };

export type Search = {
  /** Values of all columns that keep every row: nothing worse is handed out. */
  readonly start: readonly number[];
  /** Seconds after which the best so far is handed out. */
  readonly most_s: number;
  /** Values that differ by less are the same. */
  readonly gap: number;
};

export type Found = {
  /** stopped: nothing shows yet that there is nothing better. */
  readonly state: 'proven' | 'stopped';
  readonly values: readonly number[];
  /** No solution can be smaller than this. */
  readonly bound: number;
  /** Seconds that it took. */
  readonly took_s: number;
};

export type Solver = (programme: Programme, search: Search) => Found;
