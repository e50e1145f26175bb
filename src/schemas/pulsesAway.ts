/** Other amounts that come to nothing, as they are asked for in weeks in which nobody is there, or nothing is done yet or any more. */
import { dateOf } from '../core/calendar.ts';
import type { Holiday, PulseAway } from '../core/turnover/turnover.ts';
import type { SeasonDays, SeasonWeeks } from './seasonWeeks.ts';

type Pulse = { readonly from: string; readonly to?: string | undefined };

type Season = SeasonWeeks &
  Pick<SeasonDays, 'season'> & {
    /** Weeks are counted from the first of the season. */
    readonly weekOf: (date: string) => number;
    readonly holidays: readonly Holiday[];
  };

/** One for each pulse and holiday that meet, with the first day on which they do. */
export function pulsesAwayIn(pulses: readonly Pulse[], of: Season): readonly PulseAway[] {
  const { season, weekOf, holidays, cut_weeks, firstMonday_d } = of;
  return pulses.flatMap(({ from, to = from }) => {
    const isIn = from <= season.to && season.from <= to;
    const cut = cut_weeks.map((week) => ({ name: null, from_week: week, to_week: week }));
    return [...holidays, ...(isIn ? cut : [])]
      .filter(({ from_week, to_week }) => from_week <= weekOf(to) && weekOf(from) <= to_week)
      .map(({ name, from_week }) => {
        const day = from_week <= weekOf(from) ? from : dateOf(firstMonday_d + 7 * from_week);
        return { day, holiday: name };
      });
  });
}
