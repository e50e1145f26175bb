import { CoverError, type Uncovered } from './cover.ts';
import type { TypeCase } from './typeCase.ts';

/** What of these texts no font has; nothing where all of them can be printed. */
export async function uncoveredIn(texts: readonly string[], types: TypeCase): Promise<readonly Uncovered[]> {
  const type = await types.typeFor(texts);
  try {
    type.mustCover(texts);
    return [];
  } catch (error) {
    if (error instanceof CoverError) return error.uncovered;
    throw error;
  }
}
