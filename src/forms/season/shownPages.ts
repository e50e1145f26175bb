/** The pages of a plan as they come, one by one, in place of those of the plan before. */
import type { Side } from '../messages.ts';
import type { SeasonShown, SeasonWords, Told } from './seasonMessages.ts';

/** Pages of the plan before stay until those of this one take their places. */
export function withFirstPage(
  shown: SeasonWords,
  side: Side | null,
  before: SeasonShown | null,
): SeasonShown {
  return { ...shown, sides: side === null ? [] : [side, ...(before?.sides.slice(1) ?? [])] };
}

/** With one more page; behind the last one nothing is left of the plan before. */
export function withPage(shown: SeasonShown, told: Told<'side' | 'drawn'>): SeasonShown {
  const { sides } = shown;
  if (told.kind === 'drawn') return { ...shown, sides: sides.slice(0, told.sides) };
  return { ...shown, sides: [...sides.slice(0, told.index), told.side, ...sides.slice(told.index + 1)] };
}
