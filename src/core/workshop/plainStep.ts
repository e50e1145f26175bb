/** Steps without what changes nothing: a factor of one, or a term of nothing, is noise to whoever works them by hand. */
import type { Quantity, Step } from '../plan/figure.ts';

/**
 * A step without factors of one and terms of nothing.
 * The same value by a shorter formula. Lengths stay: a metre may be a factor of one.
 * @param step a worked step
 * @returns the step, with the numbers that are left in its formula
 * @valid formulas of products, quotients, sums and differences
 * @source geometry
 */
export function plainStep(step: Step): Step {
  const formula = step.symbols.reduce(withoutIdle, step.formula).replace(/(?<![A-Za-z])\((\w+)\)/g, '$1');
  if (formula === step.formula) return step;
  const left = new Set(formula.match(/[A-Za-z]\w*/g));
  return { ...step, formula, symbols: step.symbols.filter(({ sign }) => left.has(sign)) };
}

function withoutIdle(formula: string, { sign, value, unit }: Quantity): string {
  if (unit === 'mm') return formula;
  if (value === 1)
    return formula
      .replace(new RegExp(` × ${sign}\\b`, 'g'), '')
      .replace(new RegExp(`(^|\\(|[+−] )${sign} × `, 'g'), '$1');
  if (value === 0) return formula.replace(new RegExp(` [+−] ${sign}(?=$|\\)| [+−])`, 'g'), '');
  return formula;
}
