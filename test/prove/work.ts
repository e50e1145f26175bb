/** One piece of a proof: a law on some cases, or all laws of plans on some systems. */
import fc from 'fast-check';
import { type Broken, type Drawn, tried, withPlan } from '../laws/law.ts';
import { drawn, formulaLaws, planLaws } from '../laws/laws.ts';

export type Piece = {
  /** Which formula law; plans: all laws of plans on one stream of systems; sheets: everything that those print. */
  readonly law: number | 'plans' | 'sheets';
  readonly runs: number;
  readonly seed: number;
};

export type Outcome = { readonly piece: Piece; readonly broken: (Broken & { readonly law: string }) | null };

/** Tries the piece. */
export async function done(piece: Piece): Promise<Outcome> {
  if (piece.law === 'plans') return { piece, broken: plansTried(piece) };
  if (piece.law === 'sheets') return { piece, broken: await sheetsTried(piece) };
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

/** Each failure costs seconds to make smaller, so it is shown as it was found. */
async function sheetsTried({ runs, seed }: Piece): Promise<Outcome['broken']> {
  const { faultsOfAll, printed } = await import('../sheets/walk.ts');
  const property = fc.asyncProperty(printed, async (one) => {
    const faults = await faultsOfAll(one);
    if (faults.length > 0) throw new Error(faults.join('\n'));
  });
  const told = await fc.check(property, { numRuns: runs, seed, endOnFailure: true });
  if (!told.failed) return null;
  const why = told.errorInstance instanceof Error ? told.errorInstance.message : String(told.errorInstance);
  return {
    law: sheetLaw,
    why,
    case: fc.stringify(told.counterexample),
    path: told.counterexamplePath ?? '',
    seed,
  };
}

export const sheetLaw = 'no sheet of any system has words on each other, cut, or outside the safe box';
