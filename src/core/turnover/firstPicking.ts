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

/** Days of a sowing; readyFrom_d and readyTo_d are the earliest and the latest on which it may be ready. */
type Ready = {
  /** The day on which the plan picks first. */
  readonly first_d: number;
  /** The day on which it would be picked first if nothing put it off: no holiday, and no later wish. */
  readonly usual_d: number;
  readonly readyFrom_d: number;
  readonly readyTo_d: number;
};

/**
 * The likely day with as many whole weeks on both sides as hold what growth may be ahead or behind.
 * What puts a picking off is known: it makes nothing more uncertain, and what is late may be ready by then.
 * @param ready days of a sowing
 * @returns the day, and the weeks where earliest and latest lie more than a week apart
 * @valid readyFrom_d at most readyTo_d, usual_d at most first_d
 * @source geometry
 * @example firstPickingOf({ first_d: 20, usual_d: 20, readyFrom_d: 18, readyTo_d: 25 }) // { date: '1970-01-21', spreadWeeks: null }
 * @example firstPickingOf({ first_d: 20, usual_d: 20, readyFrom_d: 10, readyTo_d: 36 }) // { date: '1970-01-21', spreadWeeks: 3 }
 * @example firstPickingOf({ first_d: 41, usual_d: 20, readyFrom_d: 10, readyTo_d: 36 }) // { date: '1970-02-11', spreadWeeks: 2 }
 */
export function firstPickingOf(ready: Ready): FirstPicking {
  const { first_d, usual_d, readyFrom_d, readyTo_d } = ready;
  const ahead_d = Math.max(0, usual_d - readyFrom_d);
  const behind_d = Math.max(0, readyTo_d - first_d);
  const isSharp = ahead_d + behind_d <= week_d;
  const spreadWeeks = isSharp ? null : Math.ceil(Math.max(ahead_d, behind_d) / week_d);
  return { date: dateOf(first_d), spreadWeeks };
}
