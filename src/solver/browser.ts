/** The solver in a page's worker; fetched from where the page comes from, and only when it is first asked for. */
import loadHighs from 'highs';
import solverUrl from 'highs/runtime?url';
import type { Solver } from '../core/turnover/solver.ts';
import { highsSolver } from './highs.ts';

export async function browserSolver(): Promise<Solver> {
  const highs = await loadHighs({ locateFile: () => solverUrl });
  return highsSolver(highs, () => performance.now() / 1000);
}
