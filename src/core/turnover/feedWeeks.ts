/** The feed of today beside what the planted area takes up, week by week. */
import type { PlantedWeek } from './turnover.ts';

export type FeedFit = 'fits' | 'moreFeed' | 'morePlants';

/** Weeks in a row in which feed and plants fit, or part in one way. */
export type FeedStretch = {
  readonly fit: FeedFit;
  readonly from_week: number;
  readonly to_week: number;
};

/**
 * Whether feed and plants fit in a week.
 * @param week a week of the beds
 * @param feed_g_d feed that goes in, 0 and more
 * @returns moreFeed above the most that the area takes up, morePlants below the least
 * @valid leafy and fruiting crops; feed of 32 % protein
 * @source fao589 chapter 8.1
 */
export function feedFit(week: PlantedWeek, feed_g_d: number): FeedFit {
  if (week.feedHigh_g_d < feed_g_d) return 'moreFeed';
  return week.feedLow_g_d > feed_g_d ? 'morePlants' : 'fits';
}

/**
 * The whole season in stretches.
 * @param planted every week of the beds
 * @param feed_g_d feed that goes in, 0 and more
 * @returns in order, together all weeks
 * @valid see feedFit
 * @source fao589 chapter 8.1
 * @example feedStretches([], 20) // []
 */
export function feedStretches(planted: readonly PlantedWeek[], feed_g_d: number): readonly FeedStretch[] {
  const found: FeedStretch[] = [];
  for (const [week, of] of planted.entries()) {
    const fit = feedFit(of, feed_g_d);
    const open = found.at(-1);
    if (open?.fit === fit) found[found.length - 1] = { ...open, to_week: week };
    else found.push({ fit, from_week: week, to_week: week });
  }
  return found;
}
