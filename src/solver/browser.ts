/** The solver in a page's worker; fetched from where the page comes from. */
import loadHighs from 'highs';
import type { Solver } from '../core/turnover/solver.ts';
import { highsSolver } from './highs.ts';

/** From what `compiledSolver` gives: a page that hires a worker anew hands it over, and nothing is fetched or compiled again. */
export async function browserSolver(compiled: WebAssembly.Module): Promise<Solver> {
  return highsSolver(await loadHighs({ wasmModule: compiled }));
}
