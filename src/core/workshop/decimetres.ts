/** Steps for children: a litre is a cube of one decimetre, so lengths in decimetres give litres at once. */
import type { Quantity, Step } from '../plan/figure.ts';

const perDecimetre_mm = 100;
const toLitres = ' ÷ 1000000';

/**
 * A step with its lengths in decimetres, as children work it.
 * Each length divided by 100 mm; where three of them multiply to litres, without the division by a million.
 * @param step a worked step
 * @returns the same step in decimetres; null where children cannot work it: round, sloping or looked up
 * @valid steps of one figure
 * @source geometry
 */
export function inDecimetres(step: Step): Step | null {
  const lengths = step.symbols.filter(({ unit }) => unit === 'mm');
  if (step.byHand === 'no' || step.kind === 'lookup') return null;
  if (lengths.length === 0) return step;
  const symbols = step.symbols.map(quantityInDecimetres);
  const product = step.symbols.map(({ sign }) => sign).join(' × ');
  if (lengths.length === 3 && step.formula === product + toLitres)
    return { ...step, formula: product, symbols };
  const isRatio = step.gives.unit !== 'mm' && !step.formula.includes(toLitres);
  return isRatio ? { ...step, symbols } : null;
}

/**
 * A length in decimetres.
 * Millimetres over a hundred; anything else as it is.
 * @param of any quantity
 * @returns the same quantity
 * @valid any quantity
 * @source geometry
 */
export function quantityInDecimetres(of: Quantity): Quantity {
  return of.unit === 'mm' ? { ...of, value: of.value / perDecimetre_mm, unit: 'dm' } : of;
}
