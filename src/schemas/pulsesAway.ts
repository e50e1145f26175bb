/** Other amounts that come to nothing, as they are asked for in weeks in which nobody is there. */
import { dateOf } from '../core/calendar.ts';
import type { Holiday, PulseAway } from '../core/turnover/turnover.ts';

type Pulse = { readonly from: string; readonly to?: string | undefined };

/** Weeks are counted from the first of the season. */
type Weeks = { readonly weekOf: (date: string) => number; readonly firstMonday_d: number };

/** One for each pulse and holiday that meet, with the first day on which they do. */
export function pulsesAwayIn(
  pulses: readonly Pulse[],
  holidays: readonly Holiday[],
  { weekOf, firstMonday_d }: Weeks,
): readonly PulseAway[] {
  return pulses.flatMap(({ from, to = from }) =>
    holidays
      .filter(({ from_week, to_week }) => from_week <= weekOf(to) && weekOf(from) <= to_week)
      .map(({ name, from_week }) => {
        const day = from_week <= weekOf(from) ? from : dateOf(firstMonday_d + 7 * from_week);
        return { day, holiday: name };
      }),
  );
}
