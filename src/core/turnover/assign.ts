/** Which places each batch stands on. A crop never moves; what is sown together stands in one strip where it can. */
import { type Batch, sizeOf, type Together, togetherIn } from './batches.ts';
import { clearedOf, widestIn } from './bedKinds.ts';
import type { Counts } from './counts.ts';
import { freeRuns, type Ground, groundOf, hold, lengthOf, type Run, type Wanted } from './ground.ts';
import { likedBest, type Manner, manners } from './manners.ts';
import { isOneStrip, relax } from './relaxing.ts';
import type { Season } from './season.ts';
import type { Relaxed } from './turnover.ts';

/** A batch, or the part of it that stands in a run. */
export type Placed = { readonly batch: Batch; readonly run: Run };

export type Assigned = {
  readonly placed: readonly Placed[];
  readonly relaxed: readonly Relaxed[];
  /** Batches that find no place which stays free for them, with the places that are missing. */
  readonly lost: readonly Pick<Batch, 'choice' | 'places'>[];
};

/**
 * Places for all batches. Where nothing stands yet there is always room: the counts keep to it, and places that are held
 * from a week to a week can be given out in the order of the first weeks. Wishes about which places may have to be given up; of three ways to give
 * them out the one that gives up least is taken.
 * @param season the season
 * @param counts units of each choice
 * @param standing where fixed batches stand already
 * @returns a run or several for each batch, and which wishes were given up where
 * @valid every season whose counts keep its rows
 * @source geometry
 */
export function assigned(season: Season, counts: Counts, standing: readonly Placed[]): Assigned {
  const all = togetherIn(season, counts);
  const tried = manners.map((manner) => laidOut(season, all, standing, manner));
  const cost = ({ lost, relaxed }: Assigned): number => lost.length * all.length + relaxed.length;
  return tried.reduce((best, one) => (cost(one) < cost(best) ? one : best));
}

type Desk = {
  readonly season: Season;
  readonly ground: Ground;
  readonly manner: Manner;
  readonly widest: readonly number[];
  readonly placed: Placed[];
  readonly relaxed: Relaxed[];
  readonly lost: Pick<Batch, 'choice' | 'places'>[];
};

function laidOut(
  season: Season,
  all: readonly Together[],
  standing: readonly Placed[],
  manner: Manner,
): Assigned {
  const widest = season.task.beds.map((bed) => widestIn(season.task, bed));
  const kept = standing.map(({ batch, run }) => ({
    ...{ run, from_week: batch.choice.from_week, until_week: batch.until_week },
  }));
  const ground = groundOf(season.task, kept);
  const desk: Desk = { season, ground, manner, widest, placed: [], relaxed: [], lost: [] };
  const stands = new Map(standing.map(({ batch, run }) => [batch.choice, run]));
  for (const group of all) {
    const known = group.batches.filter(({ choice }) => stands.has(choice));
    for (const placed of standing)
      if (known.some(({ choice }) => choice === placed.batch.choice)) stay(desk, placed);
    const rest = group.batches.filter(({ choice }) => !stands.has(choice));
    const from = desk.placed.length;
    if (rest.length > 0) place(desk, { ...group, batches: rest });
    apart(desk, desk.placed.slice(from));
  }
  return { placed: desk.placed, relaxed: desk.relaxed, lost: desk.lost };
}

/** What stands is not moved, but what it breaks is known: two weeks' lifting may have come together. */
function stay(desk: Desk, placed: Placed): void {
  const { batch, run } = placed;
  const before = desk.ground.family[run.bed]?.slice(run.first, run.last + 1) ?? [];
  const family = before.includes(familyOf(desk, batch.choice.wish)) ? 'given up' : 'kept';
  giveUp(desk, batch, run.bed, { family, taken: lengthOf(run) });
  take(desk, placed);
}

function take(desk: Desk, placed: Placed): void {
  const { batch, run } = placed;
  const { to_week, wish } = batch.choice;
  hold(desk.ground, run, { family: familyOf(desk, wish), to_week, until_week: batch.until_week });
  desk.placed.push(placed);
}

function familyOf({ season }: Desk, wish: number): string {
  return season.task.wishes[wish]?.crop.family ?? '';
}

/** All in one strip; else each batch in one; else in pieces. */
function place(desk: Desk, group: Together): void {
  const whole = runFor(desk, group, sizeOf(group), group.batches);
  if (whole !== null) {
    let first = whole.first;
    for (const batch of group.batches) {
      take(desk, { batch, run: { bed: whole.bed, first, last: first + batch.places - 1 } });
      first += batch.places;
    }
    return;
  }
  for (const batch of group.batches) {
    const run = runFor(desk, group, batch.places, [batch]);
    if (run === null) inPieces(desk, group, batch);
    else take(desk, { batch, run: { ...run, last: run.first + batch.places - 1 } });
  }
}

/** The best run of at least so many places that gives no wish up. */
function runFor(desk: Desk, group: Together, places: number, batches: readonly Batch[]): Run | null {
  const runs = freeRuns(
    desk.ground,
    bedsOf(desk, group),
    wantedBy(desk, { ...group, batches }, 'kept'),
  ).filter((run) => lengthOf(run) >= places && mayClear(desk, run.bed, batches));
  return runs.length === 0 ? null : likedBest(desk, runs);
}

function bedsOf({ season }: Desk, { kind }: Together): readonly number[] {
  return season.kinds[kind]?.beds ?? [];
}

function wantedBy(desk: Desk, { from_week, batches }: Together, family: 'kept' | 'given up'): Wanted {
  const isKept = family === 'kept' && desk.season.task.rotation === 'wanted';
  const until_week = Math.max(...batches.map((one) => one.until_week));
  return {
    week: from_week,
    until_week,
    family: isKept ? familyOf(desk, batches[0]?.choice.wish ?? 0) : null,
  };
}

function mayClear(desk: Desk, bed: number, batches: readonly Batch[]): boolean {
  const weeks = new Set(batches.map(({ choice }) => choice.to_week));
  return [...weeks].every((week) => {
    const own = batches.reduce((sum, { choice, places }) => sum + (choice.to_week === week ? places : 0), 0);
    return mayLift(desk, bed, week, own);
  });
}

/** Whether so many places more may be lifted in a bed in a week. */
function mayLift({ season, ground, widest }: Desk, bed: number, week: number, places: number): boolean {
  const of = season.task.beds[bed];
  return of !== undefined && places + (ground.lifted[bed]?.[week] ?? 0) <= clearedOf(of, widest[bed] ?? 1);
}

/** Longest runs first; the family's wish is given up only for what finds no room otherwise, and the strip with it. */
function inPieces(desk: Desk, group: Together, batch: Batch): void {
  let left = batch.places;
  for (const family of ['kept', 'given up'] as const) {
    const runs = freeRuns(
      desk.ground,
      bedsOf(desk, group),
      wantedBy(desk, { ...group, batches: [batch] }, family),
    );
    const longest = [...runs].sort((a, b) => Number(fits(b)) - Number(fits(a)) || lengthOf(b) - lengthOf(a));
    for (const run of longest) {
      if (left === 0) break;
      const taken = Math.min(left, lengthOf(run));
      giveUp(desk, batch, run.bed, { family, taken });
      take(desk, { batch, run: { ...run, last: run.first + taken - 1 } });
      left -= taken;
    }
  }
  if (left > 0) desk.lost.push({ choice: batch.choice, places: left });

  function fits(run: Run): boolean {
    return mayLift(desk, run.bed, batch.choice.to_week, Math.min(left, lengthOf(run)));
  }
}

function giveUp(
  desk: Desk,
  batch: Batch,
  bed: number,
  { family, taken }: { readonly family: 'kept' | 'given up'; readonly taken: number },
): void {
  const { from_week, to_week } = batch.choice;
  const crop = cropOf(desk, batch);
  if (family === 'given up' && desk.season.task.rotation === 'wanted')
    relax(desk.relaxed, { wish: 'family', crop, bed, week: from_week });
  if (!mayLift(desk, bed, to_week, taken))
    relax(desk.relaxed, { wish: 'clearing', crop, bed, week: to_week });
}

function cropOf({ season }: Desk, { choice }: Batch): string {
  return season.task.wishes[choice.wish]?.crop.id ?? '';
}

/** What was sown together, but could not be planted side by side. */
function apart(desk: Desk, placed: readonly Placed[]): void {
  if (isOneStrip(placed.map(({ run }) => run))) return;
  for (const { batch, run } of placed) {
    const week = batch.choice.from_week;
    relax(desk.relaxed, { wish: 'oneStrip', crop: cropOf(desk, batch), bed: run.bed, week });
  }
}
