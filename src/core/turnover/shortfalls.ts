/** What is wanted, what is picked, and why less is picked. */
import { type BedKind, mayGrow } from './bedKinds.ts';
import { type Grows, plantings } from './choices.ts';
import { type Counts, pickedUnits } from './counts.ts';
import type { Season } from './season.ts';
import type { CropWeeks, ShortBy, Shortfall, TurnoverTask } from './turnover.ts';
import { isHoliday, weekFrom } from './weeks.ts';

/** Less than this of a wish is nothing anybody could pick. */
const slack = 1e-6;
/** So many weeks before the season it would have had to begin, at most. */
const before_weeks = 40;

/**
 * Wanted and picked, by crop and week.
 * @param season the season
 * @param counts units of each choice
 * @returns one entry a wish
 * @valid every season
 * @source geometry
 */
export function cropWeeks(season: Season, counts: Counts): readonly CropWeeks[] {
  const units = pickedUnits(season, counts);
  return season.task.wishes.map(({ crop, unit, perWeek }, wish) => {
    const amount = season.units[wish]?.amount ?? 0;
    const wanted = Array.from({ length: season.task.weeks }, (_, week) => perWeek[week] ?? 0);
    const picked = (units[wish] ?? []).map((count) => count * amount);
    const most = Math.max(0, ...wanted, ...picked);
    const totals = { wanted: sumOf(wanted), picked: sumOf(picked), most };
    return { crop: crop.id, unit, wanted, picked, totals };
  });
}

function sumOf(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0);
}

/** By wish, the weeks in which something could be picked if it had been sown before a week. */
type Early = readonly ReadonlySet<number>[];

/** What could have been ready: sown before the season, or before the week from which it is planned again. */
export type Unsown = { readonly early: Early; readonly late: Early };

/**
 * Wishes that are not met, each with the reason.
 * @param season the season
 * @param crops what is wanted and picked
 * @param unsown what could have been ready
 * @returns by crop and week
 * @valid every season
 * @source geometry
 */
export function shortfalls(
  season: Season,
  crops: readonly CropWeeks[],
  unsown: Unsown,
): readonly Shortfall[] {
  return crops.flatMap(({ crop, unit, wanted, picked }, wish) => {
    const why = reasons(season, wish, [unsown.early[wish] ?? new Set(), unsown.late[wish] ?? new Set()]);
    return wanted.flatMap((amount, week) => {
      const got = picked[week] ?? 0;
      if (got >= amount * (1 - slack)) return [];
      return [{ crop, unit, week, wanted: amount, picked: got, why: why(week) }];
    });
  });
}

function reasons(
  season: Season,
  wish: number,
  [early, late]: readonly [ReadonlySet<number>, ReadonlySet<number>],
): (week: number) => ShortBy {
  const { task, kinds, choices } = season;
  const possible = new Set(
    choices.filter((choice) => choice.wish === wish).flatMap(({ pick_weeks }) => pick_weeks),
  );
  const isRefused = !kinds.some((kind) => fits(season, kind, wish));
  return (week) => {
    if (isRefused) return 'refused';
    if (possible.has(week)) return 'room';
    if (isHoliday(task, week)) return 'holiday';
    if (early.has(week)) return 'tooEarly';
    return late.has(week) ? 'unsown' : 'season';
  };
}

function fits({ task, units }: Season, kind: BedKind, wish: number): boolean {
  const crop = task.wishes[wish]?.crop;
  return crop !== undefined && mayGrow(crop, kind) && (units[wish]?.places ?? 1) <= kind.places;
}

/**
 * What could be picked in the season if it had been sown in time.
 * @param task a checked task
 * @param grows how long a crop takes
 * @param from_week the week from which it is planned; 0 the whole season
 * @returns weeks by wish
 * @valid sowings up to forty weeks before the season
 * @source commonPractice
 */
export function unsownWeeks(task: TurnoverTask, grows: Grows, from_week: number): Unsown {
  const early = weeksSownBefore(task, grows, 0);
  return { early, late: from_week === 0 ? early : weeksSownBefore(task, grows, from_week) };
}

function weeksSownBefore(task: TurnoverTask, grows: Grows, from_week: number): Early {
  const earlier = {
    ...task,
    firstMonday_d: task.firstMonday_d - before_weeks * 7,
    weeks: before_weeks + task.weeks,
    holidays: [],
  };
  return task.wishes.map(({ crop }) => {
    const found = new Set<number>();
    const before: Grows = (of, sow_d, planted_d) =>
      sow_d < task.firstMonday_d + 7 * from_week
        ? grows(of, sow_d, planted_d)
        : { state: 'never', why: 'tooSlow', on_d: sow_d };
    for (const { grown } of plantings(earlier, crop, before)) {
      const last_d = Math.max(grown.standsTo_d, ...grown.picks_d);
      const first = weekFrom(task, grown.ready_d);
      const last = Math.max(first, weekFrom(task, last_d + 1) - 1);
      for (let week = first; week <= last; week += 1) found.add(week);
    }
    return found;
  });
}
