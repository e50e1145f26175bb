/** When the first picking of a sowing is likely, and how sharp that is. */
import { dateOf } from '../calendar.ts';

/** A day, or a week that stands for several. */
export type FirstPicking = {
  /** The likely day, ISO 8601. */
  readonly date: string;
  /** So many weeks sooner or later it may be; null where it is sharp to a week. */
  readonly spreadWeeks: number | null;
};

const week_d = 7;

/**
 * The likely day with as many whole weeks on both sides as hold the earliest and the latest.
 * @param likely_d the day on which the plan picks first
 * @param readyFrom_d the earliest day on which it may be ready
 * @param readyTo_d the latest
 * @returns the day, and the weeks where earliest and latest lie more than a week apart
 * @valid readyFrom_d at most readyTo_d
 * @source geometry
 * @example firstPickingOf(20, 18, 25) // { date: '1970-01-21', spreadWeeks: null }
 * @example firstPickingOf(20, 10, 36) // { date: '1970-01-21', spreadWeeks: 3 }
 */
export function firstPickingOf(likely_d: number, readyFrom_d: number, readyTo_d: number): FirstPicking {
  const off_d = Math.max(readyTo_d - likely_d, likely_d - readyFrom_d);
  const isSharp = readyTo_d - readyFrom_d <= week_d && off_d <= week_d;
  return { date: dateOf(likely_d), spreadWeeks: isSharp ? null : Math.ceil(off_d / week_d) };
}
