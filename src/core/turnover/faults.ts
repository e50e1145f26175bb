/** A plan looked at once more, by what it says itself: counted from its strips and pickings, not from the sums that made it. */
import { firstClash } from './clash.ts';
import { clearsTooMuch, repeatsFamily, takesTooManyCells } from './limitFaults.ts';
import type { Sowing, TurnoverPlan } from './turnover.ts';

export type Fault =
  | 'doubleBooked'
  | 'noRest'
  | 'tooManyPlaces'
  | 'harvestSum'
  | 'plantSum'
  | 'seedSum'
  | 'littlesLaw'
  | 'workOnHoliday'
  | 'clearedTooMuch'
  | 'tooManyCells'
  | 'sameFamily'
  | 'order';

const slack = 1e-6;
const week_d = 7;

/**
 * What is wrong with a plan. A plan that is handed out has none.
 * No place has two crops at a time, all rests are kept, no bed is fuller than it is, harvests are what the sowings give
 * less the losses, no more is lifted in a week or waits in trays than may, and no family follows itself unless the plan tells
 * so, and plants that stand on average are plants a week times weeks of stay (Little's law).
 * @param plan any plan
 * @returns codes of what is wrong, each once
 * @valid every plan
 * @source little1961
 */
export function faultsIn(plan: TurnoverPlan): readonly Fault[] {
  const checks: readonly (readonly [Fault, (of: TurnoverPlan) => boolean])[] = [
    ['doubleBooked', (of) => firstClash(of) !== null],
    ['noRest', lacksRest],
    ['tooManyPlaces', isTooFull],
    ['harvestSum', ({ crops, sowings }) => !crops.every((one) => addsUp(one, sowings))],
    ['plantSum', (of) => !of.sowings.every((one) => plantsFit(of, one))],
    ['seedSum', (of) => !of.sowings.every((one) => seedsFit(of, one))],
    ['littlesLaw', breaksLittle],
    ['workOnHoliday', worksOnHoliday],
    ['clearedTooMuch', clearsTooMuch],
    ['tooManyCells', takesTooManyCells],
    ['sameFamily', repeatsFamily],
    ['order', ({ sowings }) => !sowings.every(isInOrder)],
  ];
  return checks.flatMap(([fault, isBroken]) => (isBroken(plan) ? [fault] : []));
}

function lacksRest({ task, sowings }: TurnoverPlan): boolean {
  const rest_weeks = Math.ceil(task.rest_d / week_d);
  const last = task.weeks - 1;
  return sowings.some(({ strips }) =>
    strips.some(({ to_week, restTo_week }) => restTo_week < Math.min(last, to_week + rest_weeks - 1)),
  );
}

function isTooFull({ task, planted, sowings }: TurnoverPlan): boolean {
  const room = task.beds.reduce((sum, { places }) => sum + places, 0);
  const outside = sowings.some(({ bed, strips }) =>
    strips.some(({ first, last }) => !(1 <= first && first <= last && last <= (task.beds[bed]?.places ?? 0))),
  );
  return outside || planted.some(({ places }) => places > room);
}

function addsUp({ crop, picked }: TurnoverPlan['crops'][number], sowings: readonly Sowing[]): boolean {
  const own = sowings.filter((one) => one.crop === crop).flatMap(({ picks }) => picks);
  const summed = own.reduce((sum, { amount }) => sum + amount, 0);
  const weekly = picked.reduce((sum, amount) => sum + amount, 0);
  return Math.abs(summed - weekly) <= slack * Math.max(1, weekly);
}

/** What is picked is what the plants give, less the losses; of a crop that is cut, at each cut. */
function plantsFit({ task, crops }: TurnoverPlan, { crop, plants, picks }: Sowing): boolean {
  const of = task.wishes.find((wish) => wish.crop.id === crop)?.crop;
  if (of === undefined || !crops.some((one) => one.crop === crop)) return false;
  const perPick_g = plants * (1 - of.loss_frac) * of.yield_g.likely;
  const mass_g = picks.reduce((sum, pick) => sum + pick.mass_g, 0);
  const times = of.picking.kind === 'once' ? 1 : of.picking.most;
  const isWhole = of.picking.kind !== 'once' || Math.abs(mass_g - perPick_g) <= slack * perPick_g;
  return mass_g <= perPick_g * times * (1 + slack) && isWhole;
}

/** As many seeds as the plants need; of what was sown before and has come to less, those that were sown. */
function seedsFit({ task, wasSown }: TurnoverPlan, { id, crop, seeds, plants }: Sowing): boolean {
  if (wasSown.some((one) => one.id === id && one.seeds === seeds)) return true;
  const success_frac = task.wishes.find((wish) => wish.crop.id === crop)?.crop.germination.success_frac ?? 1;
  return seeds * success_frac >= plants - slack && (seeds - 1) * success_frac < plants + slack;
}

/** Places that stand on average are places planted a week times the weeks that they stand. */
function breaksLittle({ task, planted, sowings }: TurnoverPlan): boolean {
  const strips = sowings.flatMap((sowing) => sowing.strips);
  const size = ({ first, last }: (typeof strips)[number]): number => last - first + 1;
  const all = strips.reduce((sum, strip) => sum + size(strip), 0);
  if (all === 0) return planted.some(({ places }) => places > 0);
  const stay = strips.reduce((sum, strip) => sum + size(strip) * (strip.to_week - strip.from_week), 0) / all;
  const perWeek = all / task.weeks;
  const standing = planted.reduce((sum, { places }) => sum + places, 0) / task.weeks;
  return Math.abs(standing - perWeek * stay) > slack * Math.max(1, standing);
}

function worksOnHoliday({ task, sowings }: TurnoverPlan): boolean {
  const weekOf = (day_d: number): number => Math.floor((day_d - task.firstMonday_d) / week_d);
  const isFree = (week: number): boolean =>
    task.holidays.some(({ from_week, to_week }) => from_week <= week && week <= to_week);
  return sowings.some(
    ({ sow_d, from_week, picks }) =>
      isFree(weekOf(sow_d)) || isFree(from_week) || picks.some(({ week }) => isFree(week)),
  );
}

function isInOrder({ sow_d, plantOut_d, picks, from_week, to_week }: Sowing): boolean {
  const days = [sow_d, ...(plantOut_d === null ? [] : [plantOut_d]), ...picks.map(({ day_d }) => day_d)];
  const rises = days.every((day_d, at) => at === 0 || (days[at - 1] ?? 0) < day_d || plantOut_d === day_d);
  return rises && from_week < to_week;
}
