/** A season's file that was checked, as the core's task. */
import { dayNumber_d } from '../core/calendar.ts';
import type { GrowingPlace } from '../core/crops/growingPlace.ts';
import { boxArea_m2 } from '../core/geometry/box.ts';
import { mondayOf_d } from '../core/isoWeek.ts';
import { placesOf } from '../core/turnover/bedPlaces.ts';
import type { Holiday, TurnoverBed, TurnoverTask, Wish } from '../core/turnover/turnover.ts';
import { monthsOf } from './climateMonths.ts';
import { workdays } from './closedLists.ts';
import { type CropFacts, entry } from './facts.ts';
import { pulsesAwayIn } from './pulsesAway.ts';
import { type SeasonWeeks, seasonWeeks } from './seasonWeeks.ts';
import type { TurnoverFile } from './turnoverFile.ts';

const week_d = 7;

export function taskOf(file: TurnoverFile, facts: CropFacts): TurnoverTask {
  const span = seasonWeeks(file);
  const { firstMonday_d, weeks } = span;
  const weekOf = (date: string): number => (mondayOf_d(dayNumber_d(date)) - firstMonday_d) / week_d;
  const holidays = file.holidays.map(
    ({ name, from, to }): Holiday => ({ name, from_week: weekOf(from), to_week: weekOf(to) }),
  );
  const { place, placeName } = placeOf(file, facts);
  const season = { ...span, season: file.season, weekOf, holidays, pulses: file.pulses, facts };
  return {
    ...{ id: file.id, name: file.name, place, placeName, firstMonday_d, weeks, holidays },
    workday: workdays.indexOf(file.workday),
    beds: file.beds.map((bed) => bedOf(bed, file.place_mm)),
    place_mm: file.place_mm,
    nurseryCells: file.nursery.cells ?? null,
    wishes: file.wishes.map((wish) => wishOf(wish, season)),
    pulsesAway: pulsesAwayIn(
      file.pulses.filter(({ times }) => times > 0),
      season,
    ),
    ...{ rotation: file.rotation, rest_d: file.rest_d, feed_g_d: file.feed_g_d ?? null },
  };
}

function placeOf(
  file: TurnoverFile,
  { climates }: CropFacts,
): { readonly place: GrowingPlace; readonly placeName: string } {
  const { own, water_degC, shortDays } = file;
  const climate = file.climate === undefined ? undefined : entry(climates, file.climate);
  const { even_degC } = file.nursery;
  const nursery = even_degC === undefined ? 'outdoors' : { even_degC };
  const more = { water_degC: water_degC ?? null, nursery, shortDays } as const;
  if (own) {
    const { latitude, mean_degC, night_degC } = own;
    return { place: { latitude, mean_degC, night_degC, ...more }, placeName: own.name };
  }
  if (!climate) throw new Error(`climate ${file.climate} was checked but is not there`);
  const { latitude, name } = climate;
  return { place: { latitude, ...monthsOf(climate), ...more }, placeName: name };
}

function bedOf(
  { name, mode, length_mm, width_mm }: TurnoverFile['beds'][number],
  place_mm: number,
): TurnoverBed {
  const outline = { form: 'box', length_mm, width_mm } as const;
  return { name, mode, places: placesOf(outline, place_mm), area_m2: boxArea_m2(length_mm, width_mm) };
}

type Season = SeasonWeeks & {
  readonly season: TurnoverFile['season'];
  readonly weekOf: (date: string) => number;
  readonly holidays: readonly Holiday[];
  readonly pulses: TurnoverFile['pulses'];
  readonly facts: CropFacts;
};

/** In holidays nobody eats it. */
function wishOf(wish: TurnoverFile['wishes'][number], season: Season): Wish {
  const { weeks, weekOf, holidays, pulses, facts } = season;
  const crop = entry(facts.crops, wish.crop);
  if (!crop) throw new Error(`crop ${wish.crop} was checked but is not there`);
  const from = wish.from === undefined ? 0 : weekOf(wish.from);
  const to = wish.to === undefined ? weeks - 1 : weekOf(wish.to);
  const holds =
    (week: number) =>
    (of: { readonly from: string; readonly to?: string | undefined }): boolean =>
      weekOf(of.from) <= week && week <= weekOf(of.to ?? of.from);
  const perWeek = Array.from({ length: weeks }, (_, week) => {
    if (holidays.some(({ from_week, to_week }) => from_week <= week && week <= to_week)) return 0;
    const own = wish.pulses.find(holds(week));
    if (own) return own.amount;
    const times = pulses.find(holds(week))?.times ?? 1;
    return from <= week && week <= to ? wish.perWeek * times : 0;
  });
  const asked = wish.pulses.filter(({ amount }) => amount > 0);
  return { crop, unit: wish.unit, perWeek, pulsesAway: pulsesAwayIn(asked, season) };
}
