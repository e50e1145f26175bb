import type { SourceKey } from '../core/note.ts';

/** Of several sources the one to be trusted least: a figure is no better than its worst part. */
export function weakest(sources: readonly SourceKey[]): SourceKey {
  const substitute = ['fromMemory', 'commonPractice'].find((key) => sources.includes(key));
  return substitute ?? sources.at(-1) ?? 'fromMemory';
}
