/** How many fish: one formula a rule. */
import { density_kg_L, densitySmallTank_kg_L, smallTank_L } from '../constants.ts';

/** Slack of a whole count, relative: 299.9999999 L at 25 L a fish is 12 fish. */
const slack = 1e-9;

/**
 * Whole things that go into an amount, rounded down.
 * Amount divided by share, with a relative slack of 1e-9 so that the last digit of a measured volume decides nothing.
 * @param amount what there is, 0 or more
 * @param share what one takes, in the same unit, above 0
 * @returns a whole count
 * @valid any two amounts in one unit
 * @throws RangeError when the amount is below 0 or the share is not above 0
 * @source commonPractice
 * @example wholeCount(300, 25) // 12
 */
export function wholeCount(amount: number, share: number): number {
  if (!(0 <= amount && 0 < share)) throw new RangeError(`wholeCount(${amount}, ${share})`);
  return Math.floor((amount / share) * (1 + slack));
}

/**
 * Most fish mass that a litre of tank may carry.
 * 20 kg per 1,000 L; in tanks under 500 L half of that.
 * @param tankFull_L volume at the full line, above 0
 * @returns kg per litre
 * @valid aerated tanks with working biofilter
 * @throws RangeError when the volume is not above 0
 * @source fao589 sections 7.3.3 (p. 109) and 8 (p. 125), as quoted with the page
 * @example densityCap_kg_L(499) // 0.01
 * @example densityCap_kg_L(500) // 0.02
 */
export function densityCap_kg_L(tankFull_L: number): number {
  if (!(0 < tankFull_L)) throw new RangeError(`densityCap_kg_L(${tankFull_L})`);
  return tankFull_L * (1 + slack) < smallTank_L.value ? densitySmallTank_kg_L.value : density_kg_L.value;
}
