/** The solver in Node. */
import loadHighs from 'highs';
import type { Solver } from '../core/turnover/solver.ts';
import { highsSolver } from './highs.ts';

export async function nodeSolver(): Promise<Solver> {
  return highsSolver(await loadHighs());
}
