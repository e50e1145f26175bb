/** In which weeks the feed of today and the planted area part, in lines that sheet and page share. */
import { type FeedFit, feedStretches } from '../core/turnover/feedWeeks.ts';
import { season, type TurnoverInput } from './turnoverSheet.ts';

/** None where no feed is told. */
export function feedLines(input: TurnoverInput): readonly string[] {
  const { task, planted } = input.plan;
  if (task.feed_g_d === null) return [];
  const stretches = feedStretches(planted, task.feed_g_d);
  const lines = (['moreFeed', 'morePlants'] as const).flatMap((fit) => {
    const weeks = weeksOf(input, fit, stretches);
    return weeks === '' ? [] : [season(input, `harvest.feedWeeks.${fit}`, { weeks })];
  });
  return lines.length === 0 ? [season(input, 'harvest.feedWeeks.fits')] : lines;
}

/** "3–8, 12, 45–2", as the calendar numbers its weeks. */
function weeksOf({ plan }: TurnoverInput, fit: FeedFit, stretches: ReturnType<typeof feedStretches>): string {
  const number = (week: number): number => plan.calendar[week]?.isoWeek ?? week;
  return stretches
    .filter((one) => one.fit === fit)
    .map(({ from_week, to_week }) =>
      from_week === to_week ? `${number(from_week)}` : `${number(from_week)}–${number(to_week)}`,
    )
    .join(', ');
}
