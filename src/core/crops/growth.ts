/** How long a crop takes at a place: its days stretch with warmth and light. */
import type { Crop } from './crop.ts';
import { dayLength_h } from './dayLength.ts';
import { thermalTime_degC_d } from './thermalTime.ts';
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
  /** Whether days of less than ten hours slow the crops down. */
  readonly shortDays: 'slow' | 'ignored';
};

/** Days as numbers of `dayNumber_d`. */
export type Grown =
  | {
      readonly state: 'grows';
      readonly sow_d: number;
      /** The day of sowing where the crop is sown into the bed. */
      readonly plantOut_d: number;
      /** First picking: the likely day, and between which days it may fall. */
      readonly ready_d: number;
      readonly readyFrom_d: number;
      readonly readyTo_d: number;
      /** Days of all pickings, the first included. */
      readonly picks_d: readonly number[];
      /** Last day on which what is ready is still good: for a crop that is picked once. */
      readonly standsTo_d: number;
      /** It is warmer than it likes while it stands: it may bolt, or turn bitter. */
      readonly mayBolt: 'yes' | 'no';
    }
  | {
      readonly state: 'never';
      readonly why: WhyNever;
      /** The day on which it stops. */
      readonly on_d: number;
    };

export type WhyNever = 'noGermination' | 'tooCold' | 'tooHot' | 'frost' | 'tooSlow';

/** What takes so many times as long as it should is no harvest of this season. A rule of our own. */
const longest = 3;
/** Below so many hours of daylight most crops slow down. From memory; the sources disagree. */
const shortDay_h = 10;
/** By how much, from memory: half as fast. Without any sun nothing grows. */
const shortDayPace = 0.5;

/**
 * How a crop grows when it is sown on a day.
 * The days that its file gives for its best warmth are turned into thermal time, which is then gathered day by day: in the
 * nursery at the nursery's warmth, in the bed at that of the water where it is known, else of the air. Short days count
 * half, days without sun nothing.
 * @param crop any crop
 * @param place where it grows
 * @param sow_d a day number
 * @returns days of planting and picking, or why there is no harvest
 * @valid means of months; weather of a single year differs by a week and more
 * @source fromMemory for the pace on short days and the limit of three times; the crop's file for the rest
 */
export function grown(crop: Crop, place: GrowingPlace, sow_d: number): Grown {
  const inNursery = crop.nursery_d !== null && place.nursery !== 'outdoors' ? place.nursery : null;
  const sown_degC = inNursery?.even_degC ?? soil_degC(place, sow_d);
  const { least_degC, most_degC } = crop.germination;
  if (sown_degC < least_degC || sown_degC > most_degC) return never('noGermination', sow_d);
  const nursed = nursedTo(crop, place, sow_d);
  if (nursed === null) return never('tooSlow', sow_d);
  const stands = { crop, place, from_d: nursed };
  const ready = gathered(stands, crop.bed_d.likely, nursed);
  if (typeof ready !== 'number') return ready;
  const early = gathered(stands, crop.bed_d.low, nursed);
  const late = gathered(stands, crop.bed_d.high, nursed);
  const picks = picksFrom(stands, ready);
  const last_d = picks[picks.length - 1] ?? ready;
  return {
    state: 'grows',
    sow_d,
    plantOut_d: nursed,
    ready_d: ready,
    readyFrom_d: typeof early === 'number' ? early : ready,
    readyTo_d: typeof late === 'number' ? late : ready,
    picks_d: picks,
    standsTo_d: crop.picking.kind === 'once' ? ready + crop.picking.stands_d : ready,
    mayBolt: isHot(crop, place, nursed, last_d) ? 'yes' : 'no',
  };
}

function never(why: WhyNever, on_d: number): Extract<Grown, { state: 'never' }> {
  return { state: 'never', why, on_d };
}

/** Seeds in a bed feel its water. */
function soil_degC({ water_degC, mean_degC }: GrowingPlace, day_d: number): number {
  return ofDay_degC(water_degC ?? mean_degC, day_d);
}

type Stand = { readonly crop: Crop; readonly place: GrowingPlace; readonly from_d: number };

/** The day of planting out, or null where seedlings never get there. */
function nursedTo(crop: Crop, place: GrowingPlace, sow_d: number): number | null {
  if (crop.nursery_d === null) return sow_d;
  const { nursery } = place;
  const days = crop.nursery_d.likely;
  const need = days * pace(crop, bestOf(crop));
  let left = need;
  for (let day = 0; day <= days * longest; day += 1) {
    if (left <= 0) return sow_d + day;
    const mean_degC = nursery === 'outdoors' ? ofDay_degC(place.mean_degC, sow_d + day) : nursery.even_degC;
    // Indoors somebody gives light.
    left -= pace(crop, mean_degC) * (nursery === 'outdoors' ? light(place, sow_d + day) : 1);
  }
  return null;
}

/** Warmth at which the days of a crop's file hold: the middle of that range. */
function bestOf({ days_degC }: Crop): number {
  return (days_degC.low + days_degC.high) / 2;
}

function pace(crop: Crop, mean_degC: number): number {
  return thermalTime_degC_d(mean_degC, crop.base_degC, crop.best_degC.high);
}

function light({ shortDays, latitude }: GrowingPlace, day_d: number): number {
  const hours_h = dayLength_h(latitude, intoYear_d(day_d) + 1);
  if (hours_h === 0) return 0;
  return shortDays === 'slow' && hours_h < shortDay_h ? shortDayPace : 1;
}

/** The day on which so many days of growth are gathered, or why they never are. */
function gathered(
  { crop, place }: Stand,
  days: number,
  from_d: number,
): number | Extract<Grown, { state: 'never' }> {
  let left = days * pace(crop, bestOf(crop));
  for (let day = 0; day <= days * longest; day += 1) {
    if (left <= 0) return from_d + day;
    const deadly = dies(crop, place, from_d + day);
    if (deadly !== null) return never(deadly, from_d + day);
    left -= pace(crop, soil_degC(place, from_d + day)) * light(place, from_d + day);
  }
  return never(pace(crop, soil_degC(place, from_d)) === 0 ? 'tooCold' : 'tooSlow', from_d);
}

/** Means of nights: single nights are colder still, so that a mean at the limit is no harvest. */
function dies(crop: Crop, place: GrowingPlace, day_d: number): WhyNever | null {
  if (ofDay_degC(place.night_degC, day_d) < crop.alive_degC.low) return 'frost';
  return ofDay_degC(place.mean_degC, day_d) > crop.alive_degC.high ? 'tooHot' : null;
}

function picksFrom(stand: Stand, ready_d: number): readonly number[] {
  const { picking } = stand.crop;
  const picks = [ready_d];
  if (picking.kind === 'once') return picks;
  while (picks.length < picking.most) {
    const next = gathered(stand, picking.regrow_d.likely, picks[picks.length - 1] ?? ready_d);
    if (typeof next !== 'number') break;
    picks.push(next);
  }
  return picks;
}

function isHot({ bolts_degC }: Crop, { mean_degC }: GrowingPlace, from_d: number, to_d: number): boolean {
  if (bolts_degC === null) return false;
  for (let day_d = from_d; day_d <= to_d; day_d += 7)
    if (ofDay_degC(mean_degC, day_d) > bolts_degC) return true;
  return ofDay_degC(mean_degC, to_d) > bolts_degC;
}
