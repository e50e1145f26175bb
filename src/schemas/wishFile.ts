/** What somebody wants to pick of one crop, and weeks with another amount, as a season's file says it. */
import * as z from 'zod';
import { day, line, number } from './fields.ts';

/** Weeks in a row. */
export const stretch = {
  /** Any day of the first week. */
  from: day(),
  /** Any day of the last week; leave it out for one week. */
  to: day().optional(),
};

export const wishFile = z.strictObject({
  /** Name of the crop's file in `content/crops/`, without its ending. */
  crop: line(),
  /** How much you want to pick each week. */
  perWeek: number(0, 100_000, ''),
  /** What you count: head, bunch or kg. Not every crop has heads or bunches. */
  unit: z.enum(['head', 'bunch', 'kg']),
  /** From this day on; leave it out for the whole season. */
  from: day().optional(),
  /** Up to this day. */
  to: day().optional(),
  /** Weeks with another amount, such as that of a market: how much in each of them, whatever is wanted otherwise. In holidays nothing is. */
  pulses: z
    .array(z.strictObject({ ...stretch, amount: number(0, 100_000, '') }))
    .max(110)
    .default([]),
});

export type WishFile = z.output<typeof wishFile>;
