/** A stage's counts on their places; where what stands leaves too few that stay free, less is planted, and that is told. */
import { same } from './aim.ts';
import { type Assigned, assigned, type Placed } from './assign.ts';
import { cellsPassed } from './cellsPassed.ts';
import type { Choice } from './choices.ts';
import type { Counts } from './counts.ts';
import { relax } from './relaxing.ts';
import type { Season } from './season.ts';
import type { Staged } from './stages.ts';
import type { Relaxed, Stage } from './turnover.ts';

export type LaidOut = Pick<Staged, 'counts' | 'stages'> & Pick<Assigned, 'placed' | 'relaxed'>;

/**
 * The best of a stage that has places: its own plan without the sowings that have none, or that of the stage before where
 * this is better.
 * @param season the season
 * @param staged what a stage has found
 * @param stands where fixed batches stand already
 * @param before what came of the stage before; null of the first
 * @returns counts that all have places, with what is true of their stages, and which wishes were given up
 * @valid see assigned
 * @source geometry
 */
export function laidOut(
  season: Season,
  staged: Staged,
  stands: readonly Placed[],
  before: LaidOut | null,
): LaidOut {
  const whole = assigned(season, staged.counts, stands);
  const cells = cellsPassed(season, stands);
  if (whole.lost.length === 0) return { ...staged, ...whole, relaxed: [...whole.relaxed, ...cells] };
  const less = withLess(season, staged, stands);
  const own = { ...less, relaxed: [...less.relaxed, ...cells] };
  if (before === null) return own;
  const kept = { ...before, stages: staged.stagesOf(before.counts) };
  return isBetter(kept.stages, own.stages) ? kept : own;
}

function withLess(season: Season, staged: Staged, stands: readonly Placed[]): LaidOut {
  const unplaced: Relaxed[] = [];
  let { counts } = staged;
  let laid = assigned(season, counts, stands);
  while (laid.lost.length > 0) {
    for (const { choice } of laid.lost) relax(unplaced, unplacedOf(season, choice));
    counts = without(season, counts, laid.lost);
    laid = assigned(season, counts, stands);
  }
  const stages = staged.stagesOf(counts);
  return { counts, stages, placed: laid.placed, relaxed: [...laid.relaxed, ...unplaced] };
}

function unplacedOf({ task }: Season, { wish, from_week }: Choice): Relaxed {
  const crop = task.wishes[wish]?.crop.id ?? '';
  return { wish: 'everySowing', crop, bed: null, week: from_week };
}

function without(season: Season, counts: Counts, lost: Assigned['lost']): Counts {
  return counts.map((count, column) => {
    const choice = season.choices[column];
    const own = lost.find((one) => one.choice === choice);
    const places = choice === undefined ? 1 : (season.units[choice.wish]?.places ?? 1);
    return own === undefined ? count : Math.max(0, count - Math.ceil(own.places / places));
  });
}

/** By the first stage in which they differ. */
function isBetter(one: readonly Stage[], other: readonly Stage[]): boolean {
  const at = one.findIndex(({ value }, index) => Math.abs(value - (other[index]?.value ?? value)) > same);
  return at >= 0 && (one[at]?.value ?? 0) < (other[at]?.value ?? 0);
}
