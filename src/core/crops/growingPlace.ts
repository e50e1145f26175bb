/** A place in which crops grow, day by day. */
import { dayLength_h } from './dayLength.ts';
import { intoYear_d, ofDay_degC } from './warmth.ts';

export type GrowingPlace = {
  /** Degrees, north above zero. */
  readonly latitude: number;
  /** Mean of the air, January first; of a heated or covered place, its own. */
  readonly mean_degC: readonly number[];
  /** Mean of the nights, January first. */
  readonly night_degC: readonly number[];
  /** Of the water that the roots stand in, where somebody has measured it; else the mean of the air counts. */
  readonly water_degC: readonly number[] | null;
  /** Where seedlings stand: outdoors, or indoors at an even warmth. */
  readonly nursery: 'outdoors' | { readonly even_degC: number };
  /** Whether days of less than ten hours slow the crops down, and the polar night stops them; ignored where lamps give light. */
  readonly shortDays: 'slow' | 'ignored';
};

/** Below so many hours of daylight most crops slow down. From memory; the sources disagree. */
export const shortDay_h = 10;
/** By how much, from memory: half as fast. Without any sun nothing grows. */
const shortDayPace = 0.5;

/** What the sums ask of every day, over and over: worked out once for each place. */
type Day = { readonly soil: number; readonly air: number; readonly night: number; readonly light: number };

const daysOfPlaces = new WeakMap<GrowingPlace, readonly Day[]>();

/**
 * A day at a place.
 * @param place where something grows
 * @param day_d a day number of dayNumber_d
 * @returns warmth of soil, air and night, and the pace that daylight allows
 * @valid means of months
 * @source fromMemory for the pace on short days
 */
export function dayOf(place: GrowingPlace, day_d: number): Day {
  let days = daysOfPlaces.get(place);
  if (days === undefined) {
    days = Array.from({ length: 367 }, (_, day) => workedOut(place, day));
    daysOfPlaces.set(place, days);
  }
  return days[Math.floor(intoYear_d(day_d))] ?? workedOut(place, day_d);
}

function workedOut(place: GrowingPlace, day_d: number): Day {
  return {
    soil: ofDay_degC(place.water_degC ?? place.mean_degC, day_d),
    air: ofDay_degC(place.mean_degC, day_d),
    night: ofDay_degC(place.night_degC, day_d),
    light: light(place, day_d),
  };
}

function light({ shortDays, latitude }: GrowingPlace, day_d: number): number {
  if (shortDays === 'ignored') return 1;
  const hours_h = dayLength_h(latitude, intoYear_d(day_d) + 1);
  if (hours_h === 0) return 0;
  return hours_h < shortDay_h ? shortDayPace : 1;
}
