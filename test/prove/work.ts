/** One piece of a proof: a law on some cases, or all laws of plans on some systems. */
import fc from 'fast-check';
import { type Broken, type PlanCase, tried } from '../laws/law.ts';
import { formulaLaws, planCases, planLaws } from '../laws/laws.ts';

export type Piece = {
  /** Which formula law; null: all laws of plans on one stream of systems. */
  readonly law: number | null;
  readonly runs: number;
  readonly seed: number;
};

export type Outcome = { readonly piece: Piece; readonly broken: (Broken & { readonly law: string }) | null };

/** Tries the piece. */
export function done(piece: Piece): Outcome {
  if (piece.law === null) return { piece, broken: plansTried(piece) };
  const law = formulaLaws[piece.law];
  if (law === undefined) throw new RangeError(`there is no law number ${piece.law}`);
  const broken = law.tried(piece);
  return { piece, broken: broken && { ...broken, law: `${law.name} ${law.of}`.trim() } };
}

/** Every system goes through all laws. Once one is broken, only that one counts while the case is made smaller. */
function plansTried(piece: Piece): Outcome['broken'] {
  let only: string | null = null;
  const property = fc.property(planCases, (one: PlanCase) => {
    for (const law of planLaws) {
      if (only !== null && law.name !== only) continue;
      try {
        law.holds(one);
      } catch (error) {
        only = law.name;
        throw error;
      }
    }
  });
  const broken = tried(property, piece);
  return broken && { ...broken, law: only ?? 'making a system' };
}
