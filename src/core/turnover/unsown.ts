/** What is not there to be picked, as it was not sown, or nobody was there to sow it. */
import { bedKinds } from './bedKinds.ts';
import { type Choice, choicesOf, type Growing, type Grows, plantings } from './choices.ts';
import type { TurnoverTask } from './turnover.ts';
import { isHoliday, weekFrom } from './weeks.ts';

/** So many weeks before the season it would have had to begin, at most. */
const before_weeks = 40;

/** By wish, the weeks in which something could be picked if it had been sown before a week. */
type Weeks = readonly ReadonlySet<number>[];

/**
 * What could have been ready: sown before the season, in weeks of its beginning and in any; sown before the week from which
 * it is planned again; or sown, planted and picked in time, if nobody went away.
 */
export type Unsown = {
  readonly beginning: Weeks;
  readonly before: Weeks;
  readonly late: Weeks;
  readonly away: Weeks;
};

/** How crops grow, and every way in which the wishes of the season can be met. */
type Known = { readonly grows: Grows; readonly choices: readonly Choice[] };

/**
 * What could be picked in the season if it had been sown in time.
 * @param task a checked task
 * @param known how long a crop takes, and the choices of the whole season
 * @param from_week the week from which it is planned; 0 the whole season
 * @returns weeks by wish
 * @valid sowings up to forty weeks before the season
 * @source commonPractice
 */
export function unsownWeeks(task: TurnoverTask, known: Known, from_week: number): Unsown {
  const { grows, choices } = known;
  const before = weeksSownBefore(task, grows, 0);
  const late =
    from_week === 0 ? before.map(() => new Set<number>()) : weeksSownBefore(task, grows, from_week);
  const away = weeksWithoutHolidays(task, grows, from_week);
  const beginning = before.map((weeks, wish) => {
    const first = Math.min(
      task.weeks,
      ...choices.flatMap((one) => (one.wish === wish ? one.pick_weeks : [])),
    );
    return fromTheFirst(task, weeks, first);
  });
  return { beginning, before, late, away };
}

/** Weeks of a row from the first of the season, before anything sown in it can be ready; holidays are no gap in it. */
function fromTheFirst(task: TurnoverTask, weeks: ReadonlySet<number>, end: number): ReadonlySet<number> {
  let to = 0;
  while (to < end && (weeks.has(to) || isHoliday(task, to))) to += 1;
  return new Set([...weeks].filter((week) => week < to));
}

function weeksWithoutHolidays(task: TurnoverTask, grows: Grows, from_week: number): Weeks {
  const found = task.wishes.map(() => new Set<number>());
  if (task.holidays.length === 0) return found;
  const there = choicesOf({ ...task, holidays: [] }, bedKinds(task), grows);
  for (const { wish, sow_week, pick_weeks } of there)
    if (from_week <= sow_week) for (const week of pick_weeks) found[wish]?.add(week);
  return found;
}

function weeksSownBefore(task: TurnoverTask, grows: Grows, from_week: number): Weeks {
  const earlier = {
    ...task,
    firstMonday_d: task.firstMonday_d - before_weeks * 7,
    weeks: before_weeks + task.weeks,
    holidays: [],
  };
  const before: Grows = (of, sow_d, planted_d) =>
    sow_d < task.firstMonday_d + 7 * from_week
      ? grows(of, sow_d, planted_d)
      : { state: 'never', why: 'tooSlow', on_d: sow_d };
  return task.wishes.map(({ crop }) => withBetween(readyIn(task, plantings(earlier, crop, before))));
}

/** From the first week in which each is ready to the last in which it still gives something. */
function readyIn(task: TurnoverTask, some: readonly { readonly grown: Growing }[]): ReadonlySet<number> {
  const found = new Set<number>();
  for (const { grown } of some) {
    const last_d = Math.max(grown.standsTo_d, ...grown.picks_d);
    const first = weekFrom(task, grown.ready_d);
    const last = Math.max(first, weekFrom(task, last_d + 1) - 1);
    for (let week = first; week <= last; week += 1) found.add(week);
  }
  return found;
}

/** Somebody who had sown in time could have sown on a day between, too. */
function withBetween(weeks: ReadonlySet<number>): ReadonlySet<number> {
  return new Set([...weeks].flatMap((week) => (weeks.has(week + 2) ? [week, week + 1] : [week])));
}
