/** Who cares on which day: teams of a class in turn, then those without one; the keeper where the class is away. */
import { dateOf, dayNumber_d } from '../calendar.ts';
import { isoWeekOf } from '../isoWeek.ts';

/** Days without class, both counted. */
export type Away = { readonly from: string; readonly to: string };

export type RotaWish = {
  readonly from: string;
  readonly to: string;
  /** Those who take turns: teams, and people without one who come together. */
  readonly teams: number;
  readonly away: readonly Away[];
  /** Who comes on Saturdays and Sundays. */
  readonly weekends: 'teams' | 'keeper';
};

export type RotaDay = {
  readonly date: string;
  /** 1 is Monday. */
  readonly weekday: number;
  /** Whose turn it is, from 0: a team, or some without one; null where the keeper has to come or to send somebody. */
  readonly team: number | null;
  readonly why: 'class' | 'weekend' | 'away';
};

export type Rota = {
  readonly days: readonly RotaDay[];
  /** Most days in a row without the class. */
  readonly longestGap_d: number;
};

/**
 * The days of a rota.
 * Teams in turn, a day each; days without class and, where it is wished so, weekends are the keeper's.
 * @param wish first and last day, the number of teams, days without class, whose the weekends are
 * @returns every day from the first to the last, none where the last is before the first; and how many days in a row
 * the class does not come, at the most
 * @valid one team or more
 * @throws RangeError without a team, or for a day that the calendar does not have
 * @source commonPractice
 */
export function careRota(wish: RotaWish): Rota {
  const { from, to, teams, away, weekends } = wish;
  if (!(1 <= teams)) throw new RangeError(`careRota for ${teams} teams`);
  const gaps = away.map((gap) => [dayNumber_d(gap.from), dayNumber_d(gap.to)] as const);
  const first = dayNumber_d(from);
  let turn = 0;
  const days = Array.from({ length: Math.max(0, dayNumber_d(to) - first + 1) }, (_, at): RotaDay => {
    const number_d = first + at;
    const { weekday } = isoWeekOf(number_d);
    const isAway = gaps.some(([start, end]) => start <= number_d && number_d <= end);
    const isWeekend = weekday > 5 && weekends === 'keeper';
    const why = isAway ? 'away' : isWeekend ? 'weekend' : 'class';
    const team = why === 'class' ? turn % teams : null;
    if (team !== null) turn += 1;
    return { date: dateOf(number_d), weekday, team, why };
  });
  return { days, longestGap_d: longestRun(days) };
}

/** Two together see more than one. */
const leastTogether = 2;

/**
 * People without a team put together, so that they take turns as teams do.
 * About as many together as there are in a team, two at least where there are two; the larger ones first.
 * @param alone people in no team, 0 or more
 * @param inTeams people in teams, 0 or more
 * @param teams how many teams those are, 0 or more
 * @returns how many come together, for each turn of theirs
 * @valid whole numbers
 * @source commonPractice
 * @example turnsWithoutTeam(7, 24, 8) // [3, 2, 2]
 * @example turnsWithoutTeam(5, 0, 0) // [3, 2]
 */
export function turnsWithoutTeam(alone: number, inTeams: number, teams: number): readonly number[] {
  if (alone === 0) return [];
  const usual = teams === 0 ? leastTogether : Math.max(leastTogether, Math.ceil(inTeams / teams));
  const turns = Math.max(1, Math.min(Math.ceil(alone / usual), Math.floor(alone / leastTogether)));
  return Array.from({ length: turns }, (_, at) => Math.ceil((alone - at) / turns));
}

function longestRun(days: readonly RotaDay[]): number {
  let [longest, run] = [0, 0];
  for (const { team } of days) {
    run = team === null ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}
