/** The places of the beds while a plan is laid on them, from the first week to the last. */
import type { TurnoverTask } from './turnover.ts';

/** Places with numbers in a row in one bed. */
export type Run = { readonly bed: number; readonly first: number; readonly last: number };

export type Ground = {
  /** By bed and place: the week from which it is free again. */
  readonly free_week: readonly number[][];
  /** By bed and place: the family that stood there last. */
  readonly family: readonly string[][];
  /** By bed and week: places lifted. */
  readonly lifted: readonly number[][];
  /** What stands already, or will be planted on its own places. */
  readonly kept: readonly Kept[];
};

/** A run that is taken from one week up to another. */
export type Kept = { readonly run: Run; readonly from_week: number; readonly until_week: number };

/**
 * Beds before anything is planted.
 * @param task beds and weeks
 * @param kept what stands already
 * @returns every place free but for that
 * @valid every task
 * @source geometry
 */
export function groundOf(task: TurnoverTask, kept: readonly Kept[]): Ground {
  const { beds, weeks } = task;
  return {
    free_week: beds.map(({ places }) => Array.from({ length: places }, () => 0)),
    family: beds.map(({ places }) => Array.from({ length: places }, () => '')),
    lifted: beds.map(() => Array.from({ length: weeks }, () => 0)),
    kept,
  };
}

/** Free from a week up to another; `family` where nothing of its kind may have stood there last. */
export type Wanted = {
  readonly week: number;
  readonly until_week: number;
  readonly family: string | null;
};

/** Free places of some beds, as long runs as there are. */
export function freeRuns(
  ground: Ground,
  beds: readonly number[],
  { week, until_week, family }: Wanted,
): readonly Run[] {
  const runs: Run[] = [];
  for (const bed of beds) {
    const free = ground.free_week[bed] ?? [];
    const families = ground.family[bed] ?? [];
    const ahead = ground.kept.filter(
      ({ run, from_week, until_week: end }) => run.bed === bed && from_week < until_week && week < end,
    );
    const isFree = (place: number): boolean =>
      (free[place] ?? Number.POSITIVE_INFINITY) <= week &&
      (family === null || families[place] !== family) &&
      !ahead.some(({ run }) => run.first <= place && place <= run.last);
    let first = 0;
    for (let place = 0; place <= free.length; place += 1) {
      if (place < free.length && isFree(place)) continue;
      if (first < place) runs.push({ bed, first, last: place - 1 });
      first = place + 1;
    }
  }
  return runs;
}

/**
 * Places in a run.
 * @param run any run
 * @returns a whole number
 * @valid every run
 * @source geometry
 * @example lengthOf({ bed: 0, first: 3, last: 5 }) // 3
 */
export function lengthOf(run: Run): number {
  return run.last - run.first + 1;
}

/** Something is planted on a run and holds it. */
export function hold(
  ground: Ground,
  { bed, first, last }: Run,
  held: { readonly family: string; readonly to_week: number; readonly until_week: number },
): void {
  ground.free_week[bed]?.fill(held.until_week, first, last + 1);
  ground.family[bed]?.fill(held.family, first, last + 1);
  const lifted = ground.lifted[bed];
  if (lifted !== undefined) lifted[held.to_week] = (lifted[held.to_week] ?? 0) + last - first + 1;
}
