/**
 * What somebody wants to pick through a season, and where it grows. The comments here are the manual for whoever writes
 * such a file.
 */
import * as z from 'zod';
import { changeFile } from './changeFile.ts';
import { bedModes, workdays } from './closedLists.ts';
import { day, length, line, number, slug, whole } from './fields.ts';
import { labelsFile } from './labels.ts';
import { sheetOptions } from './systemFile.ts';
import { stretch, wishFile } from './wishFile.ts';

/** Twelve figures, January first. */
const months = z
  .array(number(-60, 60, 'degC'))
  .min(12)
  .max(12);

export const turnoverFile = z.strictObject({
  /** Lower-case letters, figures and hyphens; also the name of the file. */
  id: slug(),
  /** Stands on top of every sheet. */
  name: line(),
  /** true: it may be shown on the site as an example. */
  shared: z.boolean().default(false),
  sheet: sheetOptions.default({ paper: 'A4', units: 'metric' }),
  /** Name of the climate's file in `content/climates/`. Leave it out where you give your own months. */
  climate: line().optional(),
  /** Your own months, January first: of a greenhouse, a room, or a place that has no file. */
  own: z
    .strictObject({
      name: line(),
      /** Degrees, north above zero: for the length of the day. */
      latitude: number(-90, 90, ''),
      mean_degC: months,
      night_degC: months,
    })
    .optional(),
  /** The water in the beds, month by month, where you have measured it. Without it the mean of the air counts. */
  water_degC: months.optional(),
  /** Where seedlings stand. Leave it out where they stand outdoors. */
  nursery: z
    .strictObject({
      /** The warmth of the room. */
      even_degC: number(2, 45, 'degC').optional(),
      /** How many cells your trays have, all together. Leave it out where there are always enough. */
      cells: whole(1, 1_000_000, 'cells').optional(),
    })
    .default({}),
  /** slow: days under ten hours slow the crops down. ignored: you give light, or know better. */
  shortDays: z.enum(['slow', 'ignored']).default('slow'),
  season: z.strictObject({
    /** Nothing is to be done before this day: the first week is the first whose workday does not lie before it. */
    from: day(),
    /** Nothing is to be done after this day; two years at most. */
    to: day(),
  }),
  /** The day on which you like to sow, plant and pick. */
  workday: z.enum(workdays).default('saturday'),
  /** Each bed is cut into square places of this size. */
  place_mm: number(50, 1_000, 'mm').default(200),
  beds: z
    .array(
      z.strictObject({
        name: line(),
        mode: z.enum(bedModes),
        /** Inside, where the plants stand. */
        length_mm: length(),
        width_mm: length(),
      }),
    )
    .min(1)
    .max(40),
  /** Days that a place stays empty after its crop was lifted with the root. */
  rest_d: whole(0, 60, 'd').default(3),
  /** wanted: no family straight after itself in the same place. */
  rotation: z.enum(['wanted', 'ignored']).default('wanted'),
  wishes: z.array(wishFile).min(1).max(60),
  /** Weeks in which more or less of everything is wanted: 2 for twice as much, 0 for none. Pulses of a crop go first. */
  pulses: z
    .array(z.strictObject({ ...stretch, times: number(0, 100, '') }))
    .max(60)
    .default([]),
  /** Weeks in which nobody is there: nothing is sown, planted or picked in any week that they touch. */
  holidays: z
    .array(z.strictObject({ name: line(), from: day(), to: day() }))
    .max(60)
    .default([]),
  /** Feed that goes into the tank today, so that it can be held against the plants. */
  feed_g_d: number(0, 100_000, 'g_d').optional(),
  /**
   * What came differently, in the order in which it did: the rest is planned again each time, and nothing that stands is
   * moved. Leave what is written above as it was.
   */
  again: z.array(changeFile).max(50).default([]),
  /** Your own sheet of blank labels for the sowing tags, measured with a ruler. Leave it out to cut tags from plain paper. */
  labels: labelsFile.optional(),
});

export type TurnoverFile = z.output<typeof turnoverFile>;
