/** In which weeks the feed of today and the planted area part, in lines that sheet and page share. */
import type { FeedStretch } from '../core/turnover/feedWeeks.ts';
import { season, type TurnoverInput } from './turnoverSheet.ts';
import { weeksText } from './weeksText.ts';

/** None where no feed is told. */
export function feedLines(input: TurnoverInput): readonly string[] {
  const { feed } = input.figures;
  if (feed.length === 0) return [];
  const lines = (['moreFeed', 'morePlants'] as const).flatMap((fit) => {
    const weeks = feed.filter((one) => one.fit === fit).flatMap(weeksIn);
    return weeks.length === 0
      ? []
      : [season(input, `harvest.feedWeeks.${fit}`, { weeks: weeksText(input, weeks) })];
  });
  return lines.length === 0 ? [season(input, 'harvest.feedWeeks.fits')] : lines;
}

function weeksIn({ from_week, to_week }: FeedStretch): readonly number[] {
  return Array.from({ length: to_week - from_week + 1 }, (_, at) => from_week + at);
}
