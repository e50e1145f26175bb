/** Figures of a plan that are counted from it, for its sheets and its page. */
import { shortDay_h } from '../crops/growingPlace.ts';
import { type FeedStretch, feedStretches } from './feedWeeks.ts';
import type { CropWeeks } from './cropWeeks.ts';
import type { TurnoverPlan } from './turnover.ts';

export type SeasonFigures = {
  /** By crop, how much of what is wanted is picked in its own week, in the unit of the wish. */
  readonly met: Readonly<Record<string, number>>;
  /** The feed of today beside what the plants take up; none where no feed is told. */
  readonly feed: readonly FeedStretch[];
  /** Weeks with days under ten hours. */
  readonly shortDays: readonly number[];
};

/**
 * Figures of a plan.
 * @param plan any plan
 * @returns what is met at most what is wanted: what is picked beyond a week's wish makes up for no other week
 * @valid every plan
 * @source commonPractice for what counts as met; see feedStretches for the feed
 */
export function seasonFigures(plan: TurnoverPlan): SeasonFigures {
  const { task, crops, planted, calendar } = plan;
  return {
    met: Object.fromEntries(crops.map((of) => [of.crop, metIn(of)])),
    feed: task.feed_g_d === null ? [] : feedStretches(planted, task.feed_g_d),
    shortDays: calendar.filter(({ daylight_h }) => daylight_h < shortDay_h).map(({ index }) => index),
  };
}

function metIn({ wanted, picked }: CropWeeks): number {
  return wanted.reduce((sum, amount, week) => sum + Math.min(amount, picked[week] ?? 0), 0);
}
