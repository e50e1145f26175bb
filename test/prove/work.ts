/** One piece of a proof: a law on some cases, or all laws of plans on some systems. */
import fc from 'fast-check';
import { type Broken, type Drawn, tried, withPlan } from '../laws/law.ts';
import { drawn, formulaLaws, planLaws } from '../laws/laws.ts';

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
  const property = fc.property(drawn, (one: Drawn) => {
    let law = firstLaw;
    try {
      const planned = withPlan(one);
      for (const { name, holds } of planLaws) {
        law = name;
        if (only === null || only === name) holds(planned);
      }
    } catch (error) {
      if (only !== null && only !== law) return;
      only = law;
      throw error;
    }
  });
  const broken = tried(property, piece);
  return broken && { ...broken, law: only ?? firstLaw };
}

const firstLaw = planLaws[0]?.name ?? '';
