/** What came differently in a season: from `now_week` on everything is planned again. */
import type { Wish } from './turnover.ts';

export type Change = {
  readonly now_week: number;
  /** Sowings that came to nothing, by their ids. */
  readonly failed: readonly string[];
  /** Sowings that failed in part. */
  readonly partly: readonly Emptied[];
  /** Weeks in which nothing was done. */
  readonly missed_weeks: readonly number[];
  /** What is wanted, of the whole season, with every crop that stands; null where it stays as it was. */
  readonly wishes: readonly Wish[] | null;
};

/** Places of a sowing, by their numbers from 1, that hold no plant of it any more. */
export type Emptied = { readonly sowing: string; readonly places: readonly number[] };
