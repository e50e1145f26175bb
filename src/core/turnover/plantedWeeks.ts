/** The beds week by week: what stands, what it would take in, and what waits in the nursery. */
import { fruitingFeed_g_m2_d, leafyFeed_g_m2_d } from '../water/waterConstants.ts';
import type { PlantedWeek, Sowing, TurnoverTask } from './turnover.ts';

const week_d = 7;
/** A cell that is full is full, whatever the last digit says. */
const slack = 1e-9;

/**
 * Each week of a plan.
 * A strip stands from the day on which it is planted to the day on which it is lifted.
 * @param task a checked task
 * @param sowings its sowings
 * @returns one entry a week
 * @valid feed of 32 % protein; herbs and roots counted as leafy crops
 * @source fao589 chapter 8.1
 */
export function plantedWeeks(task: TurnoverTask, sowings: readonly Sowing[]): readonly PlantedWeek[] {
  return Array.from({ length: task.weeks }, (_, week) => {
    const standing = sowings.flatMap((sowing) =>
      sowing.strips
        .filter(({ from_week, to_week }) => from_week <= week && week < to_week)
        .map(({ first, last }) => ({ sowing, places: last - first + 1 })),
    );
    const parts = standing.map(({ sowing, places }) => ({ places, ...areaOf(task, sowing, places) }));
    const sum = (of: (one: (typeof parts)[number]) => number): number =>
      parts.reduce((total, one) => total + of(one), 0);
    return {
      places: sum(({ places }) => places),
      area_m2: sum(({ area_m2 }) => area_m2),
      feedLow_g_d: sum(({ area_m2, feed }) => area_m2 * feed.low),
      feedHigh_g_d: sum(({ area_m2, feed }) => area_m2 * feed.high),
      cells: cellsIn(task, sowings, week),
    };
  });
}

function areaOf(
  task: TurnoverTask,
  { crop, bed }: Sowing,
  places: number,
): { readonly area_m2: number; readonly feed: { readonly low: number; readonly high: number } } {
  const of = task.beds[bed];
  const feeds = task.wishes.find((wish) => wish.crop.id === crop)?.crop.feeds;
  const area_m2 = of === undefined ? 0 : (of.area_m2 * places) / of.places;
  return { area_m2, feed: feeds === 'fruiting' ? fruitingFeed_g_m2_d : leafyFeed_g_m2_d };
}

/** Sowings share trays, so that parts of cells are added up first. */
function cellsIn(task: TurnoverTask, sowings: readonly Sowing[], week: number): number {
  const from_d = task.firstMonday_d + week * week_d + task.workday;
  const inCells = sowings.filter(
    ({ sow_d, plantOut_d }) => plantOut_d !== null && sow_d <= from_d && from_d < plantOut_d,
  );
  const exact = inCells.reduce((sum, { crop, plants }) => {
    const of = task.wishes.find((wish) => wish.crop.id === crop)?.crop;
    return sum + plants / (of?.germination.success_frac ?? 1);
  }, 0);
  return Math.ceil(exact - slack);
}
