/** What is typed into the form, in either system of units. */
import fc from 'fast-check';
import { siOf, typedOf } from '../../src/forms/typedNumber.ts';
import { equal } from './claims.ts';
import { type FormulaLaw, law } from './law.ts';

const measure = fc.tuple(
  fc.double({ min: 0.01, max: 20_000, noNaN: true }),
  fc.constantFrom('full_mm', 'media_L', 'flow_L_h', 'now_degC', 'massNow_g'),
  fc.constantFrom('metric' as const, 'us' as const),
);

/** Laws of typed numbers. */
export const typedLaws: readonly FormulaLaw[] = [
  law('a measure shown in other units keeps its exact value', measure, ([si, key, units]) =>
    equal(siOf(typedOf(si, key, units), key, units), si),
  ),
];
