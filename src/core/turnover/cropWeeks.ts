/** What is wanted and picked of each crop, and why less is picked than was wanted. */
import type { CropUnit } from '../crops/crop.ts';

export type CropWeeks = {
  readonly crop: string;
  readonly unit: CropUnit;
  readonly wanted: readonly number[];
  readonly picked: readonly number[];
  /** Of the whole season; `most`: the largest of a week, picked or wanted. */
  readonly totals: { readonly wanted: number; readonly picked: number; readonly most: number };
};

/**
 * Why less is picked than was wanted. room: the beds are full; trays: the nursery is; clearing: more would mean that too
 * much of a bed is lifted in one week; tooEarly: nothing sown in the season is ready by then; sownBefore: later on, what was
 * sown before the season would be; between: of what is sown once a week, one sowing is ready before and the next after.
 */
export type ShortBy =
  | 'room'
  | 'trays'
  | 'clearing'
  | 'tooEarly'
  | 'unsown'
  | 'between'
  | 'sownBefore'
  | 'season'
  | 'holiday'
  | 'refused';

export type Shortfall = {
  readonly crop: string;
  readonly unit: CropUnit;
  readonly week: number;
  readonly wanted: number;
  readonly picked: number;
  readonly why: ShortBy;
};
