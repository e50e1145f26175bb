/** What a round tells; seconds count from the moment at which the season is asked for. */
export type Measured = {
  readonly first_s: number;
  readonly stages: readonly { readonly name: string; readonly at_s: number; readonly gap_frac: number }[];
  readonly whole_s: number;
  /** Of the process that plans. */
  readonly peak_MB: number;
  /** Of all its threads: on a busy machine it tells more than the clock. */
  readonly cpu_s: number;
};
