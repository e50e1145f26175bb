/** Every way in which a wish can be met: sown in this week, planted in that, picked in those. */
import type { Crop } from '../crops/crop.ts';
import type { Grown } from '../crops/growth.ts';
import { type BedKind, mayGrow } from './bedKinds.ts';
import type { TurnoverTask } from './turnover.ts';
import { plantUnit } from './units.ts';
import { isHoliday, weekFrom, workday_d } from './weeks.ts';

export type Growing = Extract<Grown, { readonly state: 'grows' }>;

export type Choice = {
  /** Number of the wish. */
  readonly wish: number;
  /** Number of the bed kind. */
  readonly kind: number;
  readonly sow_week: number;
  /** First week in the bed. */
  readonly from_week: number;
  /** Week in which it is lifted: the last of its pickings. */
  readonly to_week: number;
  readonly pick_weeks: readonly number[];
  readonly grown: Growing;
};

/** How a crop grows that is sown on a day; its seedlings wait up to a day on which they are planted. */
export type Grows = (crop: Crop, sow_d: number, planted_d?: number) => Grown;

/** Seedlings that are ready in a holiday wait so many weeks in the nursery, and no longer. */
const wait_weeks = 2;

/**
 * The choices for all wishes.
 * Of sowings that are planted out in the same week only the latest is kept: it fills the nursery for the shortest time.
 * @param task a checked task
 * @param kinds its beds
 * @param grows how long a crop takes when it is sown on a day
 * @returns choices by wish, bed kind and week; none picks only where nothing is wanted
 * @valid whole weeks: everything is done on the person's day of the week, rounded to the later one
 * @source commonPractice
 */
export function choicesOf(task: TurnoverTask, kinds: readonly BedKind[], grows: Grows): readonly Choice[] {
  return task.wishes.flatMap((wish, number) => {
    const fits = [...kinds.keys()].filter((kind) => hasRoom(task, kinds[kind], number));
    if (fits.length === 0 || !wish.perWeek.some((amount) => amount > 0)) return [];
    return plantings(task, wish.crop, grows)
      .flatMap((one) => pickings(task, wish.crop, one))
      .filter(({ pick_weeks }) => pick_weeks.some((week) => (wish.perWeek[week] ?? 0) > 0))
      .flatMap((one) => fits.map((kind) => ({ ...one, wish: number, kind })));
  });
}

function hasRoom(task: TurnoverTask, kind: BedKind | undefined, number: number): boolean {
  const wish = task.wishes[number];
  if (kind === undefined || wish === undefined) return false;
  return mayGrow(wish.crop, kind) && plantUnit(wish.crop, task.place_mm, wish.unit).places <= kind.places;
}

type Planting = Pick<Choice, 'sow_week' | 'from_week' | 'grown'>;

/**
 * Weeks in which a crop can be planted, each with its latest sowing.
 * @param task a checked task
 * @param crop the crop
 * @param grows how long it takes
 * @returns in order from the last week to the first
 * @valid weeks of the season that are no holidays
 * @source commonPractice
 */
export function plantings(task: TurnoverTask, crop: Crop, grows: Grows): readonly Planting[] {
  const found = new Map<number, Planting>();
  for (let sow_week = task.weeks - 1; sow_week >= 0; sow_week -= 1) {
    if (isHoliday(task, sow_week)) continue;
    const grown = grows(crop, workday_d(task, sow_week));
    if (grown.state === 'never') continue;
    const ready_week = weekFrom(task, grown.plantOut_d);
    const from_week = nextWorking(task, ready_week);
    if (from_week >= task.weeks || from_week - ready_week > wait_weeks || found.has(from_week)) continue;
    // Trays give no more than seedlings: what it has to grow in the bed begins on the day on which it is planted there.
    const planted_d = workday_d(task, from_week);
    const planted =
      planted_d === grown.plantOut_d ? grown : grows(crop, workday_d(task, sow_week), planted_d);
    if (planted.state === 'grows') found.set(from_week, { sow_week, from_week, grown: planted });
  }
  return [...found.values()];
}

/** A crop that is picked once may be picked as long as it stands; one that is cut may be lifted after any cut. */
function pickings(
  task: TurnoverTask,
  { picking }: Crop,
  planting: Planting,
): readonly Omit<Choice, 'wish' | 'kind'>[] {
  const weeks = picking.kind === 'once' ? standing(task, planting) : cuts(task, planting);
  return weeks.map((week, index) => ({
    ...planting,
    pick_weeks: picking.kind === 'once' ? [week] : weeks.slice(0, index + 1),
    to_week: week,
  }));
}

/** The first workday after it is ready counts, even where that is a little late, but not after it has died. */
function standing(task: TurnoverTask, { from_week, grown }: Planting): readonly number[] {
  const first = Math.max(from_week + 1, weekFrom(task, grown.ready_d));
  const last = Math.max(first, weekFrom(task, grown.standsTo_d + 1) - 1);
  return range(first, Math.min(last, task.weeks - 1)).filter(
    (week) => !isHoliday(task, week) && workday_d(task, week) <= grown.livesTo_d,
  );
}

/**
 * Each cut on the first workday on which it is ready and somebody is there; one a week at most, and none after it has
 * died. It grows back from the day on which it is cut: a cut that holidays put off puts off those after it.
 */
function cuts(task: TurnoverTask, { from_week, grown }: Planting): readonly number[] {
  const found: number[] = [];
  let off_weeks = 0;
  for (const pick_d of grown.picks_d) {
    const after = (found.at(-1) ?? from_week) + 1;
    const ready = Math.max(after, weekFrom(task, pick_d) + off_weeks);
    const week = nextWorking(task, ready);
    if (week >= task.weeks || workday_d(task, week) > grown.livesTo_d) break;
    off_weeks += week - ready;
    found.push(week);
  }
  return found;
}

function nextWorking(task: TurnoverTask, week: number): number {
  let next = week;
  while (next < task.weeks && isHoliday(task, next)) next += 1;
  return next;
}

function range(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
