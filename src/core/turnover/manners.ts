/** Of runs that are long enough, which one to take. */
import { type Ground, lengthOf, type Run } from './ground.ts';

/** The tightest, the one nearest to the edge, or the one just vacated. */
export const manners = ['tight', 'edge', 'vacated'] as const;
export type Manner = (typeof manners)[number];

/** The run that is liked best, the first of those that are liked alike; at least one is given. */
export function likedBest(
  { manner, ground }: { readonly manner: Manner; readonly ground: Ground },
  runs: readonly Run[],
): Run {
  const rank = (run: Run): number => {
    if (manner === 'tight') return lengthOf(run);
    if (manner === 'edge') return run.first;
    return -(ground.free_week[run.bed]?.[run.first] ?? 0);
  };
  return runs.reduce((best, run) => (rank(run) < rank(best) ? run : best));
}
