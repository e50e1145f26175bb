/** How many fish: one formula a rule. */
import { density_kg_L, densitySmallTank_kg_L, ruleFish_g, smallTank_L } from '../constants.ts';

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
 * Litres that one fish wants, scaled from the rule's fish of 500 g by adult mass.
 * Litres of the rule times adult mass over 500 g.
 * @param ruleShare_L litres for a fish of 500 g, above 0
 * @param massAdult_g adult mass of the fish, above 0
 * @returns litres a fish
 * @valid fish of a kind that is grown; ornamental fish have no such rule
 * @throws RangeError when the adult mass is not above 0
 * @source commonPractice
 * @example share_L(25, 500) // 25
 * @example share_L(20, 1000) // 40
 */
export function share_L(ruleShare_L: number, massAdult_g: number): number {
  if (!(0 < massAdult_g)) throw new RangeError(`share_L(${massAdult_g} g)`);
  return (ruleShare_L * massAdult_g) / ruleFish_g.value;
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

/**
 * Most fish mass that the tank may carry.
 * Cap per litre times the lowest volume of normal running.
 * @param tankFull_L volume at the full line, above 0
 * @param tankLow_L lowest volume of normal running, 0 or more
 * @returns kg of fish
 * @valid as densityCap_kg_L
 * @throws RangeError when a volume is out of range
 * @source fao589 sections 7.3.3 (p. 109) and 8 (p. 125), as quoted with the page
 * @example densityCap_kg(1000, 1000) // 20
 * @example densityCap_kg(499, 499) // 4.99
 */
export function densityCap_kg(tankFull_L: number, tankLow_L: number): number {
  if (!(0 <= tankLow_L)) throw new RangeError(`densityCap_kg(${tankLow_L})`);
  return densityCap_kg_L(tankFull_L) * tankLow_L;
}
