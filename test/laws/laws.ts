/** All laws. `npm test` tries each on 200 cases, `npm run prove` on 100,000. */
import fc from 'fast-check';
import { written } from '../systemArbitrary.ts';
import { fillingLaws } from './filling.ts';
import { flowLaws } from './flow.ts';
import { geometryLaws } from './geometry.ts';
import type { Drawn, FormulaLaw, PlanLaw } from './law.ts';
import { planFigureLaws } from './planFigures.ts';
import { planFishLaws } from './planFish.ts';
import { planWaterLaws } from './planWater.ts';
import { typedLaws } from './typed.ts';
import { waterLaws } from './water.ts';

export const formulaLaws: readonly FormulaLaw[] = [
  ...geometryLaws,
  ...flowLaws,
  ...fillingLaws,
  ...waterLaws,
  ...typedLaws,
];

export const planLaws: readonly PlanLaw[] = [...planFigureLaws, ...planWaterLaws, ...planFishLaws];

const change = fc.record({
  by: fc.double({ min: 1, max: 3, noNaN: true }),
  share: fc.double({ min: 0.01, max: 1, noNaN: true }),
  mass_g: fc.double({ min: 1, max: 3000, noNaN: true }),
  more: fc.nat(100),
});

/** Random systems, each with a change that laws may make. */
export const drawn: fc.Arbitrary<Drawn> = fc.tuple(written(), change).map(([{ system, raw }, one]) => ({
  system,
  raw,
  change: one,
  // What a person would have to write to see it again; the plan follows from it.
  [fc.toStringMethod]: () => JSON.stringify({ written: raw, change: one }),
}));

/** The sentences of all laws, each once, however many shapes it is tried on. */
export function lawNames(): readonly string[] {
  return [...new Set([...formulaLaws, ...planLaws].map((one) => one.name))];
}
