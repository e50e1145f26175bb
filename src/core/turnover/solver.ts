/** A programme of whole and real numbers in linear rows, to be made as small as it can be, and what a solver makes of it. */

export type Column = {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  /** follows: whole of itself wherever the others are, so that nobody has to search for it. */
  readonly kind: 'whole' | 'follows' | 'real';
};

/** Sum of column times factor, between two limits. A column stands in a row once. */
export type Row = {
  readonly lower: number;
  readonly upper: number;
  readonly entries: readonly (readonly [column: number, factor: number])[];
};

export type Programme = { readonly columns: readonly Column[]; readonly rows: readonly Row[] };

export type Search = {
  /** Values of all columns that keep every row, to begin with; null where none are known. */
  readonly start: readonly number[] | null;
  /** Seconds after which the best so far is handed out. */
  readonly most_s: number;
  /** Values that differ by less are the same. */
  readonly gap: number;
};

export type Found = {
  /** Of all columns; null where none were found that keep every row. */
  readonly values: readonly number[] | null;
  /** No solution can be smaller than this. */
  readonly bound: number;
  /** What the limit of each row would be worth; none where a column is whole. */
  readonly prices: readonly number[];
};

/** Columns without which a programme is tried: held at zero. Gives what the limit of each row is worth then. */
export type PricesWithout = (held: readonly number[]) => readonly number[];

export type Solver = ((programme: Programme, search: Search) => Found) & {
  /** One programme of real columns, over and over, each time without some of them; much quicker than each anew. */
  readonly trials: (
    programme: Programme,
    most_s: number,
    trying: (pricesWithout: PricesWithout) => void,
  ) => void;
};
