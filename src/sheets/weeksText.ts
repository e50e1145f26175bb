/** Weeks of a season by the numbers of the calendar. */
import type { TurnoverPlan } from '../core/turnover/turnover.ts';
import { season, type TurnoverInput } from './turnoverSheet.ts';

/** "week 12", "weeks 3–8, 12". */
export function weeksText(input: TurnoverInput, weeks: readonly number[]): string {
  const isOne = new Set(weeks).size === 1;
  return season(input, `weekList.${isOne ? 'one' : 'many'}`, { weeks: weekNumbers(input.plan, weeks) });
}

/** "3–8, 12, 45–2": weeks in a row as one; with their years where a number stands for two weeks of the season. */
function weekNumbers({ calendar }: TurnoverPlan, weeks: readonly number[]): string {
  const runs: { readonly from: number; to: number }[] = [];
  for (const week of [...new Set(weeks)].sort((a, b) => a - b)) {
    const open = runs.at(-1);
    if (open?.to === week - 1) open.to = week;
    else runs.push({ from: week, to: week });
  }
  const isTwice = new Set(calendar.map(({ isoWeek }) => isoWeek)).size < calendar.length;
  const number = (week: number): string => {
    const { isoYear, isoWeek = week } = calendar[week] ?? {};
    return isTwice ? `${isoYear}-W${String(isoWeek).padStart(2, '0')}` : String(isoWeek);
  };
  return runs
    .map(({ from, to }) => (from === to ? number(from) : `${number(from)}–${number(to)}`))
    .join(', ');
}
