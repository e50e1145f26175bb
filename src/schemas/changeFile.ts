/** What came differently in a season, as its file or a form says it. */
import * as z from 'zod';
import { beside, day, line, whole } from './fields.ts';
import { wishFile } from './wishFile.ts';

/**
 * Sowings are named by the crop's file, the ISO year and week in which they were sown, and the number of their bed:
 * `rocket-2031W18-1`.
 */
export const changeFile = z.strictObject({
  /** What was sown before this day stands; from it on everything is planned again. */
  from: day(),
  /**
   * The plan on your wall: `plan.json` as it was printed with the calendar, kept beside this file or in a folder below.
   * Without it the plan of before is worked out anew, and may come out otherwise than the one that you work by.
   */
  plan: beside('planPlace').optional(),
  /** Sowings that came to nothing. */
  failed: z.array(line()).max(10_000).default([]),
  /** Sowings that failed in part. Write one of the two: how many plants are left, or which places are empty. */
  partly: z
    .array(
      z.strictObject({
        sowing: line(),
        /** Places with the highest numbers are given up. Plants that fill no whole place are not counted. */
        plants: whole(1, 1_000_000, '').optional(),
        /** Numbers as on the calendar, in quotes: '5-6, 9'. */
        empty: line().optional(),
      }),
    )
    .max(10_000)
    .default([]),
  /** Weeks in which nothing was done: any day of each. */
  missed: z
    .array(z.strictObject({ on: day() }))
    .max(106)
    .default([]),
  /** All that you want to pick from then on; a crop that is not named is not wanted any more. Leave it out to go on as before. */
  wishes: z.array(wishFile).min(1).max(60).optional(),
  /** The first day of those wishes, where they begin later than `from`. */
  wishesFrom: day().optional(),
});

export type ChangeFile = z.output<typeof changeFile>;
