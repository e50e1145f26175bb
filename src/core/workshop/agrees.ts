/** Whether somebody's answer is the right one. */

/** Rounded by hand, an answer may be off by so much of itself. */
const rounded_frac = 0.005;

/**
 * Whether an answer agrees with the value.
 * Counts exactly; everything else within half a per cent.
 * @param value what comes out
 * @param answer what somebody wrote
 * @param counted whole: fish and plants are counted; measured: everything else
 * @returns whether it may pass
 * @valid any numbers
 * @source commonPractice
 */
export function agrees(value: number, answer: number, counted: 'whole' | 'measured'): boolean {
  if (counted === 'whole') return value === answer;
  return Math.abs(value - answer) <= Math.abs(value) * rounded_frac;
}
