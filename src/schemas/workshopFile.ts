/**
 * One session of a workshop: when, for whom, with which roster. The comments here are the manual for whoever writes
 * such a file. Real rosters hold names of real people: keep them in `content/workshops/private/`, which git ignores.
 */
import * as z from 'zod';
import { levels } from '../core/workshop/exercise.ts';
import { beside, day, line, lineOrNothing, slug, time, whole } from './fields.ts';
import { sheetOptions } from './systemFile.ts';

/** What can be printed for a workshop, in the order in which it is stapled. */
export const workshopSheets = [
  'contents',
  'facilitator',
  'safety',
  'signIn',
  'nameTags',
  'rota',
  'worksheet',
  'key',
  'plan',
] as const;
export type WorkshopSheet = (typeof workshopSheets)[number];

const awayFile = z.strictObject({ from: day(), to: day() });

const rotaFile = z.strictObject({
  /** First day on which the class looks after the system. */
  from: day(),
  /** Last day. */
  to: day(),
  /** keeper: on Saturdays and Sundays the keeper comes. teams: the class comes then too. */
  weekends: z.enum(['keeper', 'teams']).default('keeper'),
  /** Holidays and other days without class. */
  away: z.array(awayFile).max(60).default([]),
});

export const workshopFile = z.strictObject({
  /** Lower-case letters, figures and hyphens, as the file is named; also the folder of its prints. */
  id: slug(),
  /** Stands on top of every sheet. */
  name: line(),
  /** Where it is held. May be left empty. */
  place: lineOrNothing().default(''),
  /** 2031-04-30 */
  date: day(),
  /** When it begins: "09:30". */
  starts: time(),
  /** Minutes from beginning to end, breaks left out. */
  length_min: whole(40, 600, 'min'),
  /**
   * primary: exercises with boxes in whole decimetres, and the bed's limit only. secondary: boxes, and all limits.
   * adults: round containers and the turnover too. Containers of one's own may have any shape on every level.
   */
  level: z.enum(levels),
  sheet: sheetOptions.default({ paper: 'A4', units: 'metric' }),
  /** Which sheets are printed. Leave it out for all of them. */
  sheets: z
    .array(z.enum(workshopSheets))
    .min(1)
    .default([...workshopSheets]),
  /** Name of the system that the facilitator works through as an example: a file in `content/systems/`. */
  example: line(),
  /** Name of the roster, beside this file; or in a folder below: "private/roster.csv". */
  roster: beside('rosterPlace'),
  /** Who gets a worksheet: every participant, or every team one for all of them. */
  worksheets: z.enum(['participants', 'teams']).default('participants'),
  /** The media of beds that people bring the measures of: the name of its file in `content/media/`. */
  media: line().default('coarseGravel'),
  /** The pump that their systems are planned with: the name of its file in `content/pumps/`. */
  pump: line().default('medium'),
  /** Which class of exercises: the same number gives the same exercises again. */
  seed: whole(0, 9_999, '').default(1),
  /** stop: a row with a problem stops the whole workshop. skip: all others are printed, and the row is told. */
  badRows: z.enum(['stop', 'skip']).default('stop'),
  /** The care rota of the class. Leave it out where there is no system to look after. */
  rota: rotaFile.optional(),
});

export type WorkshopFile = z.output<typeof workshopFile>;
