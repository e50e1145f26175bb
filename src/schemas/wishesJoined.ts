/** The wishes of a season up to a week, and others from then on, as one list that a file could hold. */
import { dateOf, dayNumber_d } from '../core/calendar.ts';
import type { Crop, CropUnit } from '../core/crops/crop.ts';
import type { TurnoverTask, Wish } from '../core/turnover/turnover.ts';
import { plantUnit } from '../core/turnover/units.ts';
import { weekWith } from '../core/turnover/weeks.ts';
import type { TurnoverFile } from './turnoverFile.ts';
import type { WishFile } from './wishFile.ts';

type Season = { readonly file: TurnoverFile; readonly task: TurnoverTask };
type Pulse = WishFile['pulses'][number];

/**
 * Both lists as one. Every crop of before is still named, as it may stand in a bed.
 * @param season the season so far
 * @param next the wishes from a week on
 * @param week that week, counted from the first of the season
 * @returns wishes of the whole season; what stays as it was is told as it was
 */
export function wishesJoined(
  { file, task }: Season,
  next: readonly WishFile[],
  week: number,
): TurnoverFile['wishes'] {
  const before = file.wishes.map((old, at): WishFile => {
    const other = next.find(({ crop }) => crop === old.crop);
    if (other === undefined) return ended(task, old, week);
    const wish = task.wishes[at];
    if (look(old) === look(other) || wish === undefined) return old;
    return begun(task, other, week, past(task, wish, other.unit, week));
  });
  const known = new Set(file.wishes.map(({ crop }) => crop));
  const fresh = next.filter(({ crop }) => !known.has(crop));
  return [...before, ...fresh.map((one) => begun(task, one, week, []))];
}

function look({ crop, perWeek, unit, from, to, pulses }: WishFile): string {
  return JSON.stringify([crop, perWeek, unit, from, to, pulses.map((one) => [one.from, one.to, one.amount])]);
}

/** Only what was wanted before the week. */
function ended(
  task: TurnoverTask,
  { crop, unit, perWeek, from, to, pulses }: WishFile,
  week: number,
): WishFile {
  const last = sundayBefore(task, week);
  const mine = pulses
    .filter((pulse) => weekOf(task, pulse.from) < week)
    .map((pulse): Pulse => ({ ...pulse, ...(last < (pulse.to ?? pulse.from) ? { to: last } : {}) }));
  if (week === 0 || (from !== undefined && weekOf(task, from) >= week))
    return { crop, unit, perWeek: 0, pulses: mine };
  const until = to !== undefined && to < last ? to : last;
  return { crop, unit, perWeek, ...(from === undefined ? {} : { from }), to: until, pulses: mine };
}

/** What is wanted from the week on, behind what was wanted before it. */
function begun(
  task: TurnoverTask,
  { crop, unit, perWeek, from, to, pulses }: WishFile,
  week: number,
  before: readonly Pulse[],
): WishFile {
  const first = dayIn(task, week);
  const ahead = pulses
    .filter((pulse) => weekOf(task, pulse.to ?? pulse.from) >= week)
    .map((pulse): Pulse => (pulse.from < first ? { ...pulse, from: first, to: pulse.to ?? first } : pulse));
  const all = { crop, unit, pulses: [...before, ...ahead] };
  const isOver = week >= task.weeks || (to !== undefined && weekOf(task, to) < week);
  if (isOver) return { ...all, perWeek: 0 };
  const start = from !== undefined && from > first ? from : first;
  return { ...all, perWeek, from: start, ...(to === undefined ? {} : { to: to < start ? start : to }) };
}

/** What was wanted before the week, in the unit of the wish from then on, equal weeks in a row as one. */
function past(
  task: TurnoverTask,
  { crop, unit, perWeek }: Wish,
  now: CropUnit,
  week: number,
): readonly Pulse[] {
  const times = unit === now ? 1 : ofUnit(task, crop, now) / ofUnit(task, crop, unit);
  const runs: { from: number; to: number; readonly amount: number }[] = [];
  for (const [at, wanted] of perWeek.slice(0, week).entries()) {
    const amount = wanted * times;
    const before = runs.at(-1);
    if (amount === 0) continue;
    if (before?.to === at - 1 && before.amount === amount) before.to = at;
    else runs.push({ from: at, to: at, amount });
  }
  return runs.map(({ from, to, amount }) => ({
    from: dayIn(task, from),
    ...(from === to ? {} : { to: dayIn(task, to) }),
    amount,
  }));
}

function ofUnit(task: TurnoverTask, crop: Crop, unit: CropUnit): number {
  return plantUnit(crop, task.place_mm, unit).amount;
}

function dayIn({ firstMonday_d }: TurnoverTask, week: number): string {
  return dateOf(firstMonday_d + 7 * week);
}

function sundayBefore({ firstMonday_d }: TurnoverTask, week: number): string {
  return dateOf(firstMonday_d + 7 * week - 1);
}

function weekOf(task: TurnoverTask, date: string): number {
  return weekWith(task, dayNumber_d(date));
}
