/** The time that a plan may take, by a clock that is handed in. */

export type Clock = {
  /** Seconds of any clock that runs. */
  readonly now_s: () => number;
  /** When by that clock all must be done. */
  readonly until_s: number;
};

/**
 * So many seconds from now on.
 * @param now_s any clock that runs
 * @param most_s seconds, 0 and more
 * @returns the time
 * @valid every clock
 * @source geometry
 */
export function clockFor(now_s: () => number, most_s: number): Clock {
  return { now_s, until_s: now_s() + most_s };
}

/**
 * Seconds that are left.
 * @param clock the time
 * @returns 0 and more
 * @valid every clock
 * @source geometry
 * @example left_s({ now_s: () => 3, until_s: 5 }) // 2
 */
export function left_s(clock: Clock): number {
  return Math.max(0, clock.until_s - clock.now_s());
}

/**
 * A share of the seconds that are left.
 * @param clock the time
 * @param share_frac 0 to 1
 * @returns a clock that ends sooner
 * @valid every clock
 * @source geometry
 */
export function partOf(clock: Clock, share_frac: number): Clock {
  const now_s = clock.now_s();
  return { now_s: clock.now_s, until_s: now_s + share_frac * Math.max(0, clock.until_s - now_s) };
}
