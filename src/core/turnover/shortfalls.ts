/** What is wanted, what is picked, and why less is picked. */
import { type BedKind, mayGrow } from './bedKinds.ts';
import type { Choice } from './choices.ts';
import { type Counts, pickedUnits } from './counts.ts';
import type { Season } from './season.ts';
import type { CropWeeks, ShortBy, Shortfall } from './cropWeeks.ts';
import { allLeft, fitting, take } from './roomLeft.ts';
import type { Unsown } from './unsown.ts';
import { isHoliday } from './weeks.ts';

/** Less than this of a wish is nothing anybody could pick. */
const slack = 1e-6;
/** One whole unit, whatever the last digit says. */
const one = 1 - 1e-9;

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

/** What the plan picks, and what it is made of. */
type Picked = { readonly crops: readonly CropWeeks[]; readonly counts: Counts };

/**
 * Wishes that are not met, each with the reason.
 * @param season the season
 * @param picked what is wanted and picked, and units of each choice
 * @param unsown what could have been ready
 * @returns by crop and week
 * @valid every season
 * @source geometry
 */
export function shortfalls(season: Season, picked: Picked, unsown: Unsown): readonly Shortfall[] {
  const { crops, counts } = picked;
  const limit = limitsOf(season, counts);
  const possible = season.task.wishes.map((_, wish) => possibleWeeks(season, wish));
  return crops.flatMap(({ crop, unit, wanted, picked: given }, wish) => {
    const isRefused = !season.kinds.some((kind) => fits(season, kind, wish));
    const why = (week: number): ShortBy =>
      isRefused
        ? 'refused'
        : (limit(wish, week) ??
          reason(season, unsown, { wish, week, possible: possible[wish] ?? new Set() }));
    return wanted.flatMap((amount, week) => {
      const got = given[week] ?? 0;
      if (got >= amount * (1 - slack)) return [];
      return [{ crop, unit, week, wanted: amount, picked: got, why: why(week) }];
    });
  });
}

type Missing = {
  readonly wish: number;
  readonly week: number;
  /** Weeks in which something that can still be sown is picked. */
  readonly possible: ReadonlySet<number>;
};

function reason({ task }: Season, unsown: Unsown, { wish, week, possible }: Missing): ShortBy {
  const { beginning, late, away, before } = unsown;
  if (isHoliday(task, week)) return 'holiday';
  if (beginning[wish]?.has(week)) return 'tooEarly';
  if (late[wish]?.has(week)) return 'unsown';
  if (away[wish]?.has(week)) return 'holiday';
  const isNear = (...weeks: readonly number[]): boolean => weeks.some((one) => possible.has(one));
  if (isNear(week - 1, week - 2) && isNear(week + 1, week + 2)) return 'between';
  return before[wish]?.has(week) ? 'sownBefore' : 'season';
}

function possibleWeeks(season: Season, wish: number): ReadonlySet<number> {
  return new Set(freeOf(season, wish).flatMap(({ pick_weeks }) => pick_weeks));
}

/** What can still be sown for a wish. */
function freeOf({ choices, fixed }: Season, wish: number): readonly Choice[] {
  return choices.filter((choice) => choice.wish === wish && !fixed.has(choice));
}

/** What keeps more from being picked in a week of what can still be sown for it; null where nothing can. */
function limitsOf(season: Season, counts: Counts): (wish: number, week: number) => ShortBy | null {
  const left = allLeft(season);
  for (const [column, choice] of season.choices.entries()) take(season, left, choice, counts[column] ?? 0);
  const free = season.task.wishes.map((_, wish) => freeOf(season, wish));
  return (wish, week) => {
    const ways = free[wish]?.filter(({ pick_weeks }) => pick_weeks.includes(week)) ?? [];
    if (ways.length === 0) return null;
    const rooms = ways.map((choice) => fitting(season, left, choice)).filter(({ places }) => places >= one);
    if (rooms.some(({ clearing, cells }) => clearing >= one && cells < one)) return 'trays';
    return rooms.some(({ clearing }) => clearing < one) ? 'clearing' : 'room';
  };
}

function fits({ task, units }: Season, kind: BedKind, wish: number): boolean {
  const crop = task.wishes[wish]?.crop;
  return crop !== undefined && mayGrow(crop, kind) && (units[wish]?.places ?? 1) <= kind.places;
}
