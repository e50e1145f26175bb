/** The weeks of a season: nothing is to be done before its first day, and nothing after its last. */
import { dayNumber_d } from '../core/calendar.ts';
import { mondayOf_d } from '../core/isoWeek.ts';
import { workdays } from './closedLists.ts';

const week_d = 7;

export type SeasonDays = {
  readonly season: { readonly from: string; readonly to: string };
  readonly workday: (typeof workdays)[number];
};

export type SeasonWeeks = {
  readonly firstMonday_d: number;
  /** Those whose workday lies in the season; below 1 where none does. */
  readonly weeks: number;
  /** Weeks beside them that begin or end the season, but with a workday outside of it: -1 or the number of weeks. */
  readonly cut_weeks: readonly number[];
};

export function seasonWeeks({ season, workday }: SeasonDays): SeasonWeeks {
  const [from_d, to_d] = [dayNumber_d(season.from), dayNumber_d(season.to)];
  const at = workdays.indexOf(workday);
  const isLate = mondayOf_d(from_d) + at < from_d;
  const isEarly = to_d < mondayOf_d(to_d) + at;
  const firstMonday_d = mondayOf_d(from_d) + (isLate ? week_d : 0);
  const weeks = (mondayOf_d(to_d) - firstMonday_d) / week_d + (isEarly ? 0 : 1);
  return { firstMonday_d, weeks, cut_weeks: [...(isLate ? [-1] : []), ...(isEarly ? [weeks] : [])] };
}
