/** Checks that files of facts share: figures in their order, and sources that are there. */
import type { Problem } from '../core/problem.ts';
import type { Path } from './schemaAt.ts';
import { referenceProblem } from './toSystem.ts';

export function rising(lower: number, upper: number, place: Path, unit: string): readonly Problem[] {
  return lower <= upper ? [] : [{ code: 'rangeOrder', place, given: String(upper), min: lower, unit }];
}

export function known(source: string, place: Path, sources: readonly string[]): readonly Problem[] {
  return sources.includes(source) ? [] : [referenceProblem(source, place, sources)];
}
