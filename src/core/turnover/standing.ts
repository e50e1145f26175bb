/** What already stands when a season is planned again. */
import type { Placed } from './assign.ts';
import type { BedKind } from './bedKinds.ts';
import type { Change } from './change.ts';
import type { Choice } from './choices.ts';
import { inTwo, numbersOf } from './emptied.ts';
import type { Sown, SownPlan } from './sown.ts';
import type { Strip, TurnoverTask } from './turnover.ts';
import { plantUnit } from './units.ts';
import { free_week, isHoliday, restWeeks, weekFrom } from './weeks.ts';

const week_d = 7;

/**
 * What was sown before and has not failed, as it stands; what fell into a missed week is done in the next one in which
 * somebody is there, and moves on what waits for its places. What failed after it was cut was lifted with its last cut.
 * @param plan the plan so far
 * @param change what came differently
 * @param kinds the bed kinds of its task
 * @returns a run or several for each choice that is fixed
 * @valid changes within the season
 * @source commonPractice
 */
export function standing(plan: SownPlan, change: Change, kinds: readonly BedKind[]): readonly Placed[] {
  const { task } = plan;
  const kept = plan.sowings.filter((sowing) => isSown(task, sowing, change));
  const off: Off = (week) => change.missed_weeks.includes(week) || isHoliday(task, week);
  const moved = kept.flatMap((sowing) =>
    leftOf(task, sowing, change).map((was) => ({ sowing, was, strip: late(was, off) })),
  );
  const clear = cleared(moved, restWeeks(task), off);
  const groups = new Map<string, Stands[]>();
  for (const one of clear) {
    const key = [one.sowing.id, one.strip.from_week, one.strip.to_week].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].flatMap((all) => placedOf(task, all, { off, kinds }));
}

/** Whether nothing is or was done in a week. */
type Off = (week: number) => boolean;

/** A strip as it was planned, and as it stands now. */
type Stands = { readonly sowing: Sown; readonly was: Strip; readonly strip: Strip };

/**
 * Whether a sowing was sown before it is planned again.
 * @param task the season
 * @param sowing a sowing of the plan so far
 * @param change what came differently
 * @returns yes or no; not in a week in which nothing was done
 * @valid every sowing
 * @source commonPractice
 */
export function isSown(task: TurnoverTask, sowing: Pick<Sown, 'sow_d'>, change: Change): boolean {
  const { sow_d } = sowing;
  const { now_week, missed_weeks } = change;
  const week = weekFrom(task, sow_d);
  return week < now_week && !missed_weeks.includes(week);
}

/** Its strips, without the places on which it failed; those count up to the last time that they were picked. */
function leftOf(task: TurnoverTask, sowing: Sown, change: Change): readonly Strip[] {
  const { now_week, failed, partly, missed_weeks } = change;
  const empty = failed.includes(sowing.id)
    ? numbersOf(sowing)
    : partly.filter((one) => one.sowing === sowing.id).flatMap(({ places }) => places);
  return sowing.strips.flatMap((strip) => {
    if (strip.to_week < now_week && !missed_weeks.includes(strip.to_week)) return [strip];
    const { left, gone } = inTwo(strip, empty);
    const last = lastCut(task, sowing, strip, change);
    return [...left, ...(last === null ? [] : gone.map((one) => endedIn(one, last)))];
  });
}

/** The week in which a strip that stands was cut last; null where it was not. */
function lastCut(
  task: TurnoverTask,
  { crop, picks }: Sown,
  { from_week }: Strip,
  { now_week, missed_weeks }: Change,
): number | null {
  const isOnce = task.wishes.find((wish) => wish.crop.id === crop)?.crop.picking.kind === 'once';
  const done = picks.filter(
    ({ week }) => from_week < week && week < now_week && !missed_weeks.includes(week),
  );
  return isOnce ? null : (done.at(-1)?.week ?? null);
}

function endedIn(strip: Strip, week: number): Strip {
  return { ...strip, to_week: week, restTo_week: strip.restTo_week - strip.to_week + week };
}

/** What was not planted or lifted is planted or lifted in the next week in which somebody is there. */
function late(strip: Strip, off: Off): Strip {
  const from_week = nextOn(strip.from_week, off);
  const delay = from_week - strip.from_week;
  const to_week = nextOn(strip.to_week + delay, off);
  return { ...strip, from_week, to_week, restTo_week: strip.restTo_week + to_week - strip.to_week };
}

function nextOn(week: number, off: Off): number {
  let next = week;
  while (off(next)) next += 1;
  return next;
}

/** Whoever comes next onto a place waits until it is free; what was sown together is planted on one day. */
function cleared(all: readonly Stands[], rest_weeks: number, off: Off): readonly Stands[] {
  const done: Stands[] = [];
  const together = new Map<string, Stands[]>();
  for (const one of [...all].sort((a, b) => a.strip.from_week - b.strip.from_week))
    together.set(one.sowing.id, [...(together.get(one.sowing.id) ?? []), one]);
  for (const some of together.values()) {
    const delay = Math.max(...some.map((one) => freeWeek(done, one, rest_weeks) - one.strip.from_week), 0);
    done.push(...some.map((one) => ({ ...one, strip: late(shifted(one.strip, delay), off) })));
  }
  return done;
}

/** The week from which the places of a strip are free of what stood there before. */
function freeWeek(done: readonly Stands[], { sowing, strip: own }: Stands, rest_weeks: number): number {
  const before = done.filter(
    ({ sowing: { bed }, strip }) => bed === sowing.bed && strip.first <= own.last && own.first <= strip.last,
  );
  return Math.max(0, ...before.map(({ strip }) => strip.to_week + rest_weeks));
}

function shifted(strip: Strip, delay: number): Strip {
  return {
    ...strip,
    from_week: strip.from_week + delay,
    to_week: strip.to_week + delay,
    restTo_week: strip.restTo_week + delay,
  };
}

function placedOf(
  task: TurnoverTask,
  all: readonly Stands[],
  { off, kinds }: { readonly off: Off; readonly kinds: readonly BedKind[] },
): readonly Placed[] {
  const [first] = all;
  if (first === undefined) return [];
  const { sowing, strip } = first;
  const wish = task.wishes.findIndex(({ crop }) => crop.id === sowing.crop);
  const of = task.wishes[wish];
  // Beyond the season it is nobody's matter.
  if (of === undefined || strip.from_week >= task.weeks || strip.to_week >= task.weeks) return [];
  const places = all.reduce((sum, one) => sum + one.strip.last - one.strip.first + 1, 0);
  const units = places / plantUnit(of.crop, task.place_mm, of.unit).places;
  const kind = kinds.findIndex(({ beds }) => beds.includes(sowing.bed));
  const choice = choiceOf(task, first, { wish, kind, off });
  const batch = { choice, units, places, until_week: free_week(task, strip.to_week) };
  return all.map((one) => ({
    batch,
    run: { bed: sowing.bed, first: one.strip.first - 1, last: one.strip.last - 1 },
  }));
}

type Known = { readonly wish: number; readonly kind: number; readonly off: Off };

function choiceOf(task: TurnoverTask, { sowing, was, strip }: Stands, { wish, kind, off }: Known): Choice {
  const isOnce = task.wishes[wish]?.crop.picking.kind === 'once';
  const delay = strip.from_week - was.from_week;
  const weeks = sowing.picks
    .filter(({ week }) => week < was.to_week)
    .map(({ week }) => nextOn(week + delay, off))
    .filter((week) => week < strip.to_week);
  const { sow_d, plantOut_d, mayBolt } = sowing;
  // What is planted later is ready later.
  const ready_d = sowing.ready_d + delay * week_d;
  const readyFrom_d = sowing.readyFrom_d + delay * week_d;
  const readyTo_d = sowing.readyTo_d + delay * week_d;
  return {
    ...{ wish, kind, sow_week: weekFrom(task, sow_d), from_week: strip.from_week, to_week: strip.to_week },
    pick_weeks: isOnce ? [strip.to_week] : [...new Set([...weeks, strip.to_week])],
    grown: {
      ...{ state: 'grows', sow_d, plantOut_d: plantOut_d ?? sow_d, ready_d, readyFrom_d, readyTo_d },
      ...{ picks_d: sowing.picks.map(({ day_d }) => day_d), standsTo_d: readyTo_d },
      ...{ livesTo_d: Number.POSITIVE_INFINITY, hot_d: mayBolt === 'yes' ? sow_d : null },
    },
  };
}
