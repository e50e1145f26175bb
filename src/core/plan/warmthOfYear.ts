/** How warm the water is over the year, as far as anybody has told. */
import { dateOf, dayNumber_d, dayOf } from '../calendar.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';

/** One stretch of days with the same water: a month of the calendar, or thirty days where no date is known. */
export type Stretch = {
  /** "2031-05", or the number of the stretch, from 1. */
  readonly label: string | number;
  readonly days_d: number;
  readonly water_degC: number;
};

/** Water can freeze over, but what the fish live in stays above this. */
const coldest_degC = 1;
const stretch_d = 30;

/**
 * The stretches from the weighing on, each with its water.
 * Where the place has a climate and the weighing a date: months with the mean of the air, which small tanks outdoors
 * follow. Else stretches of thirty days at the warmth that was measured.
 * @param system a checked system with fish
 * @param count how many stretches, 1 or more
 * @returns stretches in order, and a note that says how warm they are; null where no warmth is known
 * @valid tanks outdoors without heating, or indoors at an even warmth
 * @source fromMemory that small tanks follow the mean of the air
 */
export function stretchesOf(
  system: System,
  count: number,
): { readonly stretches: readonly Stretch[]; readonly how: Note } | null {
  const climate = system.climate ?? null;
  const weighed = system.fish?.weighed ?? null;
  if (climate !== null && weighed !== null) {
    const how: Note = {
      code: 'growthByAir',
      level: 'info',
      numbers: {},
      words: { place: climate.name },
      source: 'fromMemory',
    };
    return { stretches: months(weighed, climate.mean_degC, count), how };
  }
  const now_degC = system.water.now_degC;
  if (now_degC === null) return null;
  const how: Note = { code: 'growthAtNow', level: 'info', numbers: { now_degC }, source: 'fromMemory' };
  const stretches = Array.from({ length: count }, (_, index) => ({
    label: index + 1,
    days_d: stretch_d,
    water_degC: now_degC,
  }));
  return { stretches, how };
}

/** From the day of the weighing to the end of its month, then whole months. */
function months(from: string, mean_degC: readonly number[], count: number): readonly Stretch[] {
  const found: Stretch[] = [];
  let day_d = dayNumber_d(from);
  while (found.length < count) {
    const { year, month } = partsOf(day_d);
    const next = month === 12 ? `${year + 1}-01-01` : `${year}-${String(month + 1).padStart(2, '0')}-01`;
    const next_d = dayNumber_d(next);
    found.push({
      label: dateOf(day_d).slice(0, 7),
      days_d: next_d - day_d,
      water_degC: Math.max(coldest_degC, mean_degC[month - 1] ?? coldest_degC),
    });
    day_d = next_d;
  }
  return found;
}

function partsOf(day_d: number): { readonly year: number; readonly month: number } {
  const day = dayOf(dateOf(day_d));
  if (day === null) throw new RangeError(`no day ${day_d}`);
  return day;
}
