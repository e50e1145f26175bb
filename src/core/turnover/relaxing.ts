/** Wishes about places that a plan gives up, each known once. */
import type { Run } from './ground.ts';
import type { Relaxed } from './turnover.ts';

/** Adds one that is not known yet. */
export function relax(all: Relaxed[], one: Relaxed): void {
  const isKnown = all.some(
    ({ wish, crop, bed, week }) =>
      wish === one.wish && crop === one.crop && bed === one.bed && week === one.week,
  );
  if (!isKnown) all.push(one);
}

/**
 * Whether runs lie side by side in one bed.
 * @param runs any runs
 * @returns yes or no; yes of none
 * @valid runs that do not overlap
 * @source geometry
 * @example isOneStrip([{ bed: 0, first: 4, last: 5 }, { bed: 0, first: 2, last: 3 }]) // true
 */
export function isOneStrip(runs: readonly Run[]): boolean {
  const sorted = [...runs].sort((a, b) => a.bed - b.bed || a.first - b.first);
  return sorted.every(({ bed, first }, at) => {
    const before = sorted[at - 1];
    return before === undefined || (before.bed === bed && before.last + 1 === first);
  });
}
