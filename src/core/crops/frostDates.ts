/** When frosts end and begin, as a chance: an estimate from the means of the nights. */
import { ofDay_degC } from './warmth.ts';

/** Mean of the nights at which the last or the first frost falls in half of the years: from memory. */
const evenChance_degC = 5.5;
/** How far that mean is spread from year to year, as a standard deviation: from memory. */
const spread_degC = 1.6;
/** Standard deviations to the tenth and the ninetieth part of the normal distribution. */
const tenth = 1.2816;
const year_d = 365;

/** Days since the year began; where it freezes all year or never, that instead. */
export type FrostDates =
  | { readonly state: 'never' | 'allYear' }
  | { readonly state: 'dates'; readonly last_d: number; readonly first_d: number };

/** By the share of years in which it still freezes after the last date, or already before the first. */
export type FrostChances = {
  readonly tenPercent: FrostDates;
  readonly half: FrostDates;
  readonly ninetyPercent: FrostDates;
};

/**
 * Last frost of spring and first frost of autumn, in ten, fifty and ninety of a hundred years.
 * Where the mean of the nights passes a warmth: the warmer it has to be, the fewer years freeze beyond it. Ten percent
 * is the cautious pair: the late date in spring, the early one in autumn.
 * @param night_degC means of the nights, January first, in either hemisphere
 * @returns dates of each chance
 * @valid a rough estimate, some two weeks either way; hollows freeze later and towns earlier; own records go first
 * @throws RangeError unless there are twelve means
 * @source fromMemory for the warmth and its spread
 */
export function frostChances(night_degC: readonly number[]): FrostChances {
  return {
    tenPercent: datesAt(night_degC, evenChance_degC + tenth * spread_degC),
    half: datesAt(night_degC, evenChance_degC),
    ninetyPercent: datesAt(night_degC, evenChance_degC - tenth * spread_degC),
  };
}

/** Out from the warmest night to both sides, as far as nights stay warmer. */
function datesAt(night_degC: readonly number[], limit_degC: number): FrostDates {
  const nights = Array.from({ length: year_d }, (_, day_d) => ofDay_degC(night_degC, day_d));
  const on = (day_d: number): number => nights[(day_d + year_d) % year_d] ?? 0;
  const warmest_d = nights.indexOf(Math.max(...nights));
  if (on(warmest_d) <= limit_degC) return { state: 'allYear' };
  if (limit_degC < Math.min(...nights)) return { state: 'never' };
  let last_d = warmest_d;
  while (limit_degC < on(last_d)) last_d -= 1;
  let first_d = warmest_d;
  while (limit_degC < on(first_d)) first_d += 1;
  return { state: 'dates', last_d: (last_d + year_d) % year_d, first_d: first_d % year_d };
}
