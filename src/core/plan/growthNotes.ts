/** What to know before anybody reads a date of harvest: deadly water, and weeks of the calendar. */
import { dateOf, dayNumber_d } from '../calendar.ts';
import type { FishStock } from '../fish.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import type { Stretch } from './warmthOfYear.ts';

const week_d = 7;

/** Water that would kill them before they are grown: then no date counts. Single days are worse than the mean of a month. */
export function deadly(fish: FishStock, stretches: readonly Stretch[], days_d: number): readonly Note[] {
  const { alive_degC, callAbove_degC, temperatureSource } = fish.species;
  let passed_d = 0;
  const before = stretches.filter((stretch) => {
    const counts = passed_d <= days_d;
    passed_d += stretch.days_d;
    return counts;
  });
  const coldest = Math.min(...before.map((one) => one.water_degC));
  const warmest = Math.max(...before.map((one) => one.water_degC));
  const note = (code: string, numbers: Note['numbers']): Note => {
    return { code, level: 'caution', numbers, source: temperatureSource };
  };
  return [
    ...(coldest < alive_degC.min
      ? [note('growthKilledByCold', { coldest_degC: coldest, alive_degC: alive_degC.min })]
      : []),
    ...(warmest > callAbove_degC
      ? [note('growthStopsInHeat', { warmest_degC: warmest, call_degC: callAbove_degC })]
      : []),
  ];
}

/** As weeks of the calendar, where it is known when they were weighed. */
export function aboutWeeks(system: System, from_d: number, to_d: number): readonly Note[] {
  const weighed = system.fish?.weighed ?? null;
  const code = weighed === null ? 'harvestAbout' : 'harvestWeeksOf';
  const words = weighed === null ? {} : { from: mondayOf(weighed, from_d), to: mondayOf(weighed, to_d) };
  return [{ code, level: 'info', numbers: {}, words, source: 'jobling2003' }];
}

/** The Monday of the week that lies so many days on. */
function mondayOf(iso: string, days_d: number): string {
  const day_d = dayNumber_d(iso) + Math.floor(days_d);
  return dateOf(day_d - ((((day_d + 3) % week_d) + week_d) % week_d));
}
