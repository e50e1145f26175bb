/** Every kind of sheet of a season, in the order in which a grower needs them. */
import { expectedHarvest } from './expectedHarvest.tsx';
import { sowingTags } from './sowingTags.tsx';
import { turnoverCalendars } from './turnoverCalendar.tsx';
import { turnoverMonths } from './turnoverMonths.tsx';
import type { TurnoverKind } from './turnoverSheet.ts';
import { weeklyJobs } from './weeklyJobs.tsx';

export const turnoverSheets: readonly TurnoverKind[] = [
  ...turnoverCalendars,
  turnoverMonths,
  weeklyJobs,
  expectedHarvest,
  sowingTags,
];
