/** The solver in a page's worker; fetched from where the page comes from. */
import loadHighs, { type InitOptions } from 'highs';
import type { Solver } from '../core/turnover/solver.ts';
import { highsSolver } from './highs.ts';

/** From what `compiledSolver` gives: a page that hires a worker anew hands it over, and nothing is fetched or compiled again. */
export function browserSolver(compiled: WebAssembly.Module): Promise<Solver> {
  return new Promise((resolve, refuse) => {
    const instantiateWasm: Start = (imports, take) => {
      WebAssembly.instantiate(compiled, imports).then(take, refuse);
    };
    // This version names an option for compiled code in its types, and then reads only this one.
    const options = { instantiateWasm } as InitOptions;
    loadHighs(options).then((highs) => resolve(highsSolver(highs)), refuse);
  });
}

type Start = (imports: WebAssembly.Imports, take: (instance: WebAssembly.Instance) => void) => void;
