/** What is sown, planted and picked, as the paper shows it. */
import { dateOf } from '../calendar.ts';
import type { Placed } from './assign.ts';
import { firstPickingOf } from './firstPicking.ts';
import { isoWeekOf } from '../isoWeek.ts';
import type { Season } from './season.ts';
import type { Pick, Sowing, Strip } from './turnover.ts';
import { seedsFor } from './units.ts';
import { weekFrom, workday_d } from './weeks.ts';

/** All of it is lifted, whatever the last digit says. */
const slack = 1e-9;

/**
 * Sowings of a plan: batches of one crop that were sown in one week and stand in one bed.
 * @param season the season
 * @param placed where each batch stands
 * @returns in the order of sowing
 * @valid every season
 * @source geometry
 */
export function sowingsOf(season: Season, placed: readonly Placed[]): readonly Sowing[] {
  const found = new Map<string, Placed[]>();
  for (const one of placed) {
    const { wish, sow_week, from_week } = one.batch.choice;
    const key = [wish, sow_week, from_week, one.run.bed].join(' ');
    found.set(key, [...(found.get(key) ?? []), one]);
  }
  return [...found.values()]
    .map((all) => sowingOf(season, all))
    .sort((a, b) => a.sow_d - b.sow_d || order(a.crop, b.crop) || a.bed - b.bed);
}

function sowingOf(season: Season, placed: readonly Placed[]): Sowing {
  const [first] = placed;
  if (first === undefined) throw new RangeError('a sowing of nothing');
  const { task } = season;
  const { choice } = first.batch;
  const crop = task.wishes[choice.wish]?.crop;
  if (crop === undefined) throw new RangeError(`no wish ${choice.wish}`);
  const plants =
    placed.reduce((sum, one) => sum + unitsIn(season, one), 0) * unitOf(season, choice.wish).plants;
  const sow_d = workday_d(task, choice.sow_week);
  const plantOut_d = crop.nursery_d === null ? null : workday_d(task, choice.from_week);
  const { year, week } = isoWeekOf(sow_d);
  const picks = picksOf(season, placed);
  const { ready_d, readyFrom_d, readyTo_d, hot_d } = choice.grown;
  const first_d = picks[0]?.day_d ?? ready_d;
  const usual_d = Math.min(first_d, workday_d(task, weekFrom(task, ready_d)));
  const to_week = Math.max(...placed.map(({ batch }) => batch.choice.to_week));
  return {
    id: `${crop.id}-${year}W${String(week).padStart(2, '0')}-${first.run.bed + 1}`,
    crop: crop.id,
    bed: first.run.bed,
    sow_d,
    plantOut_d,
    from_week: choice.from_week,
    to_week,
    seeds: seedsFor(crop, plants),
    plants,
    strips: placed.map(stripOf).sort((a, b) => a.first - b.first),
    picks,
    ready_d,
    readyFrom_d,
    readyTo_d,
    first: firstPickingOf({ first_d, usual_d, readyFrom_d, readyTo_d }),
    mayBolt: hot_d !== null && hot_d <= workday_d(task, to_week) ? 'yes' : 'no',
    dates: {
      sown: dateOf(sow_d),
      planted: plantOut_d === null ? null : dateOf(plantOut_d),
      readyFrom: dateOf(readyFrom_d),
      readyTo: dateOf(readyTo_d),
    },
  };
}

function unitOf({ units }: Season, wish: number): { plants: number; places: number; amount: number } {
  return units[wish] ?? { plants: 1, places: 1, amount: 0 };
}

function order(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/** A batch in pieces has so much of its units in each. */
function unitsIn(season: Season, { batch, run }: Placed): number {
  return (run.last - run.first + 1) / unitOf(season, batch.choice.wish).places;
}

function stripOf({ batch, run }: Placed): Strip {
  const { from_week, to_week } = batch.choice;
  return { first: run.first + 1, last: run.last + 1, from_week, to_week, restTo_week: batch.until_week - 1 };
}

function picksOf(season: Season, placed: readonly Placed[]): readonly Pick[] {
  const units = new Map<number, number>();
  const lifted = new Map<number, number>();
  for (const one of placed) {
    const count = unitsIn(season, one);
    for (const week of one.batch.choice.pick_weeks) units.set(week, (units.get(week) ?? 0) + count);
    const { to_week } = one.batch.choice;
    lifted.set(to_week, (lifted.get(to_week) ?? 0) + count);
  }
  const wish = placed[0]?.batch.choice.wish ?? 0;
  const crop = season.task.wishes[wish]?.crop;
  const { plants, amount } = unitOf(season, wish);
  return [...units]
    .sort(([a], [b]) => a - b)
    .map(([week, count]) => ({
      week,
      day_d: workday_d(season.task, week),
      amount: count * amount,
      mass_g: count * plants * (1 - (crop?.loss_frac ?? 0)) * (crop?.yield_g.likely ?? 0),
      lifts: liftsOf(count, lifted.get(week) ?? 0),
    }));
}

function liftsOf(picked: number, lifted: number): Pick['lifts'] {
  if (lifted === 0) return 'none';
  return lifted < picked - slack ? 'some' : 'all';
}
