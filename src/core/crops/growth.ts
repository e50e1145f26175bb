/** How long a crop takes at a place: its days stretch with warmth and light. */
import type { Crop } from './crop.ts';
import { dayOf, type GrowingPlace } from './growingPlace.ts';
import { thermalTime_degC_d } from './thermalTime.ts';

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
      /** Last day before it gets too cold or too hot for it to live, as far as anybody would wait to pick. */
      readonly livesTo_d: number;
      /** First day on which it is warmer than it likes: what stands then may bolt, or turn bitter; null where none is. */
      readonly hot_d: number | null;
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

/**
 * How a crop grows when it is sown on a day.
 * The days that its file gives for its best warmth are turned into thermal time, which is then gathered day by day: in the
 * nursery at the nursery's warmth, in the bed at that of the water where it is known, else of the air. Short days count
 * half, days without sun nothing, but where somebody gives light.
 * @param crop any crop
 * @param place where it grows
 * @param sow_d a day number
 * @param planted_d the day on which its seedlings are planted out, where they wait for it; its days in the bed count from then
 * @returns days of planting and picking, or why there is no harvest
 * @valid means of months; weather of a single year differs by a week and more
 * @source fromMemory for the pace on short days and the limit of three times; the crop's file for the rest
 */
export function grown(crop: Crop, place: GrowingPlace, sow_d: number, planted_d = sow_d): Grown {
  const sown_degC = crop.nursery_d === null ? soil_degC(place, sow_d) : tray_degC(place, sow_d);
  const { least_degC, most_degC } = crop.germination;
  if (sown_degC < least_degC || sown_degC > most_degC) return never('noGermination', sow_d);
  const seedling = nursedTo(crop, place, sow_d);
  if (typeof seedling !== 'number') return seedling;
  const nursed = Math.max(seedling, planted_d);
  const stands = { crop, place, from_d: nursed };
  const ready = gathered(stands, crop.bed_d.likely, nursed);
  if (typeof ready !== 'number') return ready;
  const early = gathered(stands, crop.bed_d.low, nursed);
  const late = gathered(stands, crop.bed_d.high, nursed);
  const picks = picksFrom(stands, ready);
  const livesTo_d = lastAlive_d(stands, ready, picks);
  const keeps_d = crop.picking.kind === 'once' ? crop.picking.stands_d : 0;
  return {
    state: 'grows',
    sow_d,
    plantOut_d: nursed,
    ready_d: ready,
    readyFrom_d: typeof early === 'number' ? early : ready,
    // Where the slow case never ripens, the day on which nobody waits any longer.
    readyTo_d: typeof late === 'number' ? late : nursed + Math.ceil(crop.bed_d.high * longest),
    picks_d: picks,
    standsTo_d: Math.min(ready + keeps_d, livesTo_d),
    livesTo_d,
    hot_d: firstHot_d(stands, livesTo_d),
  };
}

type Never = Extract<Grown, { state: 'never' }>;

function never(why: WhyNever, on_d: number): Never {
  return { state: 'never', why, on_d };
}

/** Seeds and roots in a bed feel its water. */
function soil_degC(place: GrowingPlace, day_d: number): number {
  return dayOf(place, day_d).soil;
}

/** Trays stand beside the bed, in the air. */
function tray_degC(place: GrowingPlace, day_d: number): number {
  return place.nursery === 'outdoors' ? dayOf(place, day_d).air : place.nursery.even_degC;
}

/** Means below this can freeze. */
const freezing_degC = 2;

type Stand = { readonly crop: Crop; readonly place: GrowingPlace; readonly from_d: number };

/** The day of planting out, or why seedlings never get there. */
function nursedTo(crop: Crop, place: GrowingPlace, sow_d: number): number | Never {
  if (crop.nursery_d === null) return sow_d;
  const isOutdoors = place.nursery === 'outdoors';
  const days = crop.nursery_d.likely;
  let left = days * pace(crop, bestOf(crop));
  for (let day = 0; day <= days * longest; day += 1) {
    if (left <= 0) return sow_d + day;
    const deadly = isOutdoors ? dies(crop, place, sow_d + day) : null;
    if (deadly !== null) return never(deadly, sow_d + day);
    // Indoors somebody gives light.
    const light = isOutdoors ? dayOf(place, sow_d + day).light : 1;
    left -= pace(crop, tray_degC(place, sow_d + day)) * light;
  }
  return never('tooSlow', sow_d);
}

/** Warmth at which the days of a crop's file hold: the middle of that range. */
function bestOf({ days_degC }: Crop): number {
  return (days_degC.low + days_degC.high) / 2;
}

function pace(crop: Crop, mean_degC: number): number {
  return thermalTime_degC_d(mean_degC, crop.base_degC, crop.best_degC.high);
}

/** The day on which so many days of growth are gathered, or why they never are. */
function gathered({ crop, place }: Stand, days: number, from_d: number): number | Never {
  let left = days * pace(crop, bestOf(crop));
  for (let day = 0; day <= days * longest; day += 1) {
    if (left <= 0) return from_d + day;
    const deadly = dies(crop, place, from_d + day);
    if (deadly !== null) return never(deadly, from_d + day);
    const now = dayOf(place, from_d + day);
    left -= pace(crop, now.soil) * now.light;
  }
  const why = pace(crop, soil_degC(place, from_d)) === 0 ? 'tooCold' : 'tooSlow';
  return never(why, from_d + Math.floor(days * longest));
}

/** Means of nights: single nights are colder still, so that a mean at the limit is no harvest. */
function dies(crop: Crop, place: GrowingPlace, day_d: number): WhyNever | null {
  const { night, air } = dayOf(place, day_d);
  if (night < crop.alive_degC.low) return night <= freezing_degC ? 'frost' : 'tooCold';
  return air > crop.alive_degC.high ? 'tooHot' : null;
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

/** Holidays, and pickings on one day of the week, put the last of them off by no more than this. */
const putOff_d = 120;

/** It was alive up to its last picking that the days of its file give. */
function lastAlive_d({ crop, place }: Stand, ready_d: number, picks_d: readonly number[]): number {
  const to_d = (picks_d[picks_d.length - 1] ?? ready_d) + putOff_d;
  const died_d = firstDay_d(ready_d + 1, to_d, (day_d) => dies(crop, place, day_d) !== null);
  return died_d === null ? to_d : died_d - 1;
}

function firstHot_d({ crop, place, from_d }: Stand, to_d: number): number | null {
  const { bolts_degC } = crop;
  return bolts_degC === null
    ? null
    : firstDay_d(from_d, to_d, (day_d) => dayOf(place, day_d).air > bolts_degC);
}

const week_d = 7;

/** Means change slowly: week by week, and day by day only in the week before the first in which it is so. */
function firstDay_d(from_d: number, to_d: number, isSo: (day_d: number) => boolean): number | null {
  if (to_d < from_d) return null;
  if (isSo(from_d)) return from_d;
  for (let end_d = Math.min(to_d, from_d + week_d); ; end_d = Math.min(to_d, end_d + week_d)) {
    if (isSo(end_d)) {
      let day_d = end_d;
      while (isSo(day_d - 1)) day_d -= 1;
      return day_d;
    }
    if (end_d >= to_d) return null;
  }
}
