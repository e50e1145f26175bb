/** What was sown already may wait in more cells than there are: nobody throws it away, but whoever grows it is told. */
import type { Placed } from './assign.ts';
import { plantedWeeks } from './plantedWeeks.ts';
import { relax } from './relaxing.ts';
import type { Season } from './season.ts';
import { sowingsOf } from './sowings.ts';
import type { Relaxed } from './turnover.ts';
import { workday_d } from './weeks.ts';

/**
 * Weeks in which what stands already takes more cells than there are, with the crops that wait in them.
 * @param season the season
 * @param stands what was sown already
 * @returns a wish that was given up for each crop and week
 * @valid one seed a cell
 * @source geometry
 */
export function cellsPassed(season: Season, stands: readonly Placed[]): readonly Relaxed[] {
  const { task } = season;
  const most = task.nurseryCells ?? Number.POSITIVE_INFINITY;
  const sowings = sowingsOf(season, stands);
  const told: Relaxed[] = [];
  for (const [week, { cells }] of plantedWeeks(task, sowings).entries()) {
    if (cells <= most) continue;
    const day_d = workday_d(task, week);
    for (const { crop, sow_d, plantOut_d } of sowings)
      if (plantOut_d !== null && sow_d <= day_d && day_d < plantOut_d)
        relax(told, { wish: 'cells', crop, bed: null, week });
  }
  return told;
}
