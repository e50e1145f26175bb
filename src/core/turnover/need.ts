/** What is wanted of each crop in each week, in plant units, and what each unit is worth. */
import type { TurnoverTask, Wish } from './turnover.ts';
import { plantUnit, type PlantUnit } from './units.ts';
import { restWeeks } from './weeks.ts';

/** So many units, each worth as much. */
export type Step = { readonly units: number; readonly worth: number };

/** A wish of one week, as steps that are worth less and less. What is picked beyond them is worth nothing. */
export type Need = readonly Step[];

export const noNeed: Need = [];

/** 0.7 heads three times are 2.1 heads. */
const slack = 1e-9;
/** The first half of a wish is worth three times its second half, so that no crop goes without for another's last head. */
const firstHalf = 1.5;
const week_d = 7;

/**
 * Needs by wish and week.
 * A wish that is met in full is worth the bed time that it takes at the crop's best, so that a wide crop is not left out
 * because a small one is met with less; the worth of all wishes together is their number.
 * @param task a checked task
 * @returns one row a wish, one need a week
 * @valid amounts of 0 and more
 * @source commonPractice
 */
export function needsOf(task: TurnoverTask): readonly (readonly Need[])[] {
  const of = task.wishes.map((wish) => ({ wish, unit: plantUnit(wish.crop, task.place_mm, wish.unit) }));
  const times = of.map(({ wish, unit }) =>
    weeksOf(wish, task.weeks).map((amount) => (amount / unit.amount) * bedTime(task, wish, unit)),
  );
  const wanted = times.flat().filter((time) => time > 0);
  const mean = wanted.reduce((sum, time) => sum + time, 0) / wanted.length;
  return of.map(({ wish, unit }, number) =>
    weeksOf(wish, task.weeks).map((amount, week) =>
      needOf(amount / unit.amount, (times[number]?.[week] ?? 0) / mean),
    ),
  );
}

function weeksOf({ perWeek }: Wish, weeks: number): readonly number[] {
  return Array.from({ length: weeks }, (_, week) => perWeek[week] ?? 0);
}

/** Places times weeks that one unit holds for one picking, at the crop's best. */
function bedTime(task: TurnoverTask, { crop }: Wish, { places }: PlantUnit): number {
  const { picking } = crop;
  const pickings = picking.kind === 'once' ? 1 : picking.most;
  const regrow_d = picking.kind === 'once' ? 0 : picking.regrow_d.likely * (pickings - 1);
  return (places * ((crop.bed_d.likely + regrow_d) / week_d + restWeeks(task))) / pickings;
}

/** Worth of so much of a wish, in parts of one. */
function worthOf(met: number): number {
  const whole = Math.min(1, met);
  return whole <= 0.5 ? firstHalf * whole : 0.5 * firstHalf + (2 - firstHalf) * (whole - 0.5);
}

/** @param wanted in units, 0 or more, not rounded */
function needOf(wanted: number, worth: number): Need {
  const units = Math.ceil(wanted - slack);
  const steps: Step[] = [];
  for (let unit = 1; unit <= units; unit += 1) {
    const own = worth * (worthOf(unit / wanted) - worthOf((unit - 1) / wanted));
    const last = steps[steps.length - 1];
    if (last && Math.abs(last.worth - own) <= slack * worth)
      steps[steps.length - 1] = { ...last, units: last.units + 1 };
    else steps.push({ units: 1, worth: own });
  }
  return steps;
}

/**
 * Units that fill a need.
 * @param need any need
 * @returns a whole number
 * @valid every need
 * @source geometry
 * @example unitsFor([{ units: 2, worth: 0.4 }, { units: 1, worth: 0.2 }]) // 3
 */
export function unitsFor(need: Need): number {
  return need.reduce((sum, { units }) => sum + units, 0);
}

/**
 * What so many units are worth.
 * @param need any need
 * @param picked units picked in that week
 * @returns 0 and more; 0 where nothing is wanted
 * @valid whole units
 * @source commonPractice
 * @example worthIn([{ units: 2, worth: 0.4 }, { units: 1, worth: 0.2 }], 5) // 1
 */
export function worthIn(need: Need, picked: number): number {
  return unitsByStep(need, picked).reduce((sum, units, at) => sum + units * (need[at]?.worth ?? 0), 0);
}

/**
 * How so many units fill the steps of a need.
 * @param need any need
 * @param picked units picked in that week
 * @returns units of each step
 * @valid whole units
 * @source geometry
 */
export function unitsByStep(need: Need, picked: number): readonly number[] {
  let left = picked;
  return need.map(({ units }) => {
    const own = Math.min(left, units);
    left -= own;
    return own;
  });
}
