/** What a law is: a sentence, anything to try it on, and a check that throws where it does not hold. */
import fc from 'fast-check';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import type { SystemFile } from '../../src/schemas/systemFile.ts';

/** How often, and from which seed. */
export type Trial = { readonly runs: number; readonly seed: number };

/** A law broken: the made-smaller case that breaks it, and how to meet it again. */
export type Broken = {
  readonly case: string;
  readonly seed: number;
  readonly path: string;
  readonly why: string;
};

/** A law of formulas, tried on its own cases. */
export type FormulaLaw = {
  readonly name: string;
  /** What it is tried on by itself, such as one shape; empty where there is only one. */
  readonly of: string;
  readonly tried: (trial: Trial) => Broken | null;
};

export function law<T>(name: string, cases: fc.Arbitrary<T>, holds: (one: T) => void, of = ''): FormulaLaw {
  return { name, of, tried: (trial) => tried(fc.property(cases, holds), trial) };
}

/** A random system, how it was written down, its plan, and what a law may change about it. */
export type PlanCase = {
  readonly system: System;
  readonly raw: SystemFile;
  readonly plan: Plan;
  readonly change: Change;
};

export type Change = {
  /** 1 to 3: how many times as much. */
  readonly by: number;
  /** Above 0 to 1. */
  readonly share: number;
  readonly mass_g: number;
  readonly more: number;
};

/** What is drawn at random; the plan is worked out under the eyes of the laws, so that one that fails is told like them. */
export type Drawn = Omit<PlanCase, 'plan'>;

export function withPlan(drawn: Drawn): PlanCase {
  return { ...drawn, plan: planOf(drawn.system) };
}

/** A law of whole plans: all of them are tried on the same systems. */
export type PlanLaw = { readonly name: string; readonly holds: (one: PlanCase) => void };

/** Tries a property; what breaks it is made as small as it goes. */
export function tried<T>(property: fc.IProperty<T>, { runs, seed }: Trial): Broken | null {
  const result = fc.check(property, { numRuns: runs, seed });
  if (!result.failed) return null;
  const { counterexample, counterexamplePath, errorInstance } = result;
  return {
    case: fc.stringify(counterexample),
    seed: result.seed,
    path: counterexamplePath ?? '',
    why: errorInstance instanceof Error ? errorInstance.message : String(errorInstance),
  };
}
