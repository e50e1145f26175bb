/** Whether somebody's answer is the right one. */

/** whole: what is counted; measured: what a tape and a pencil give; rough: what is printed with two digits only. */
export type Precision = 'whole' | 'measured' | 'rough';

/** By hand, an answer may be off by so much of itself; the last of two digits is rounded by a twentieth at most. */
export const off_frac = { whole: 0, measured: 0.005, rough: 0.05 } as const;

/**
 * Whether an answer agrees with the value.
 * Counts exactly; what is measured within half a per cent, what is rough within five. Nothing agrees with what is endless.
 * @param value what comes out
 * @param answer what somebody wrote
 * @param precision how well it can be known
 * @returns whether it may pass
 * @valid any numbers
 * @source commonPractice
 * @example agrees(200, 201, 'measured') // true
 */
export function agrees(value: number, answer: number, precision: Precision): boolean {
  const off = Math.abs(value) * off_frac[precision] * (1 + 1e-9);
  return Number.isFinite(value) && Math.abs(value - answer) <= off;
}
