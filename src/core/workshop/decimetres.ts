/** Steps for children: a litre is a cube of one decimetre, so lengths in decimetres give litres at once. */
import type { Quantity, Step } from '../plan/figure.ts';

const perDecimetre_mm = 100;
const toLitres = ' ÷ 1000000';

/**
 * A step with its lengths in decimetres.
 * Where all lengths are whole decimetres: each divided by 100 mm, and where litres come out, without the division by a
 * million. Any other step as it is.
 * @param step a worked step
 * @returns the same step in decimetres
 * @valid steps whose lengths are only multiplied, or divided by one another
 * @source geometry
 */
export function inDecimetres(step: Step): Step {
  const lengths = step.symbols.filter(({ unit }) => unit === 'mm');
  const whole = lengths.every(({ value }) => value % perDecimetre_mm === 0);
  const isVolume =
    step.formula.endsWith(toLitres) && lengths.length === 3 && lengths.length === step.symbols.length;
  const isRatio = !step.formula.includes('1000000') && step.gives.unit !== 'mm';
  if (lengths.length === 0 || !whole || !(isVolume || isRatio)) return step;
  const formula = isVolume ? step.formula.slice(0, -toLitres.length) : step.formula;
  return { ...step, formula, symbols: step.symbols.map(smaller) };
}

function smaller(of: Quantity): Quantity {
  return of.unit === 'mm' ? { ...of, value: of.value / perDecimetre_mm, unit: 'dm' } : of;
}
