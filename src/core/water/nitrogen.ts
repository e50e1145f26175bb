/** Nitrogen from the feed to the nitrate: how much ammonia, how much surface, how much alkalinity, how many plants. */
import { alkalinityPerNitrogen } from './waterConstants.ts';

/**
 * Ammonia nitrogen of a day by the split of recirculating farms.
 * Feed × protein × 0.092.
 * @param feed_g_d feed of a day, 0 or more
 * @param protein_frac share of protein in the feed, 0 to 0.7
 * @returns g of total ammonia nitrogen a day
 * @valid fish that eat all of it; solids taken out soon
 * @throws RangeError outside these ranges
 * @source ebeling2006 equation 1, as quoted
 * @example tanByFeed_g_d(1000, 0.32) // 29.44
 */
export function tanByFeed_g_d(feed_g_d: number, protein_frac: number): number {
  return feedProtein_g_d(feed_g_d, protein_frac) * 0.092;
}

/**
 * Ammonia nitrogen of a day by the split that FAO works with.
 * Feed × protein × 0.16 × 0.61: nitrogen of protein, and what of it ends as ammonia.
 * @param feed_g_d feed of a day, 0 or more
 * @param protein_frac share of protein in the feed, 0 to 0.7
 * @returns g of total ammonia nitrogen a day
 * @valid three fifths of the solids are taken out
 * @throws RangeError outside these ranges
 * @source fao589 appendix 4: 55 % dissolved and four tenths of the 15 % in solids
 * @example tanBySplit_g_d(200, 0.32) // 6.2464
 */
export function tanBySplit_g_d(feed_g_d: number, protein_frac: number): number {
  return feedProtein_g_d(feed_g_d, protein_frac) * 0.16 * 0.61;
}

function feedProtein_g_d(feed_g_d: number, protein_frac: number): number {
  if (!(0 <= feed_g_d && 0 <= protein_frac && protein_frac <= 0.7)) {
    throw new RangeError(`feed of ${feed_g_d} g a day with ${protein_frac} protein`);
  }
  return feed_g_d * protein_frac;
}

/**
 * Surface that nitrifiers need to turn a day's ammonia.
 * Ammonia over what a square metre turns.
 * @param ammonia_g_d ammonia of a day, as NH3, 0 or more
 * @param rate_g_m2_d what a square metre turns in a day, as NH3, above 0
 * @returns square metres
 * @valid warm, airy, settled beds; a new or cold bed turns less
 * @throws RangeError outside these ranges
 * @source fao589 appendix 4
 * @example nitrifyingSurface_m2(5.7, 0.57) // 10
 */
export function nitrifyingSurface_m2(ammonia_g_d: number, rate_g_m2_d: number): number {
  if (!(0 <= ammonia_g_d && 0 < rate_g_m2_d)) {
    throw new RangeError(`nitrifyingSurface_m2(${ammonia_g_d}, ${rate_g_m2_d})`);
  }
  return ammonia_g_d / rate_g_m2_d;
}

/**
 * Surface that the stones of the beds have.
 * Wet media × surface of a cubic metre of it.
 * @param wetMedia_L media under the water line, 0 or more
 * @param surface_m2_m3 surface of a cubic metre of media, 0 or more
 * @returns square metres
 * @valid clean media: mud between the stones takes surface away
 * @throws RangeError below zero
 * @source fao589 chapter 4
 * @example presentSurface_m2(300, 250) // 75
 */
export function presentSurface_m2(wetMedia_L: number, surface_m2_m3: number): number {
  if (!(0 <= wetMedia_L && 0 <= surface_m2_m3)) {
    throw new RangeError(`presentSurface_m2(${wetMedia_L}, ${surface_m2_m3})`);
  }
  return (wetMedia_L / 1000) * surface_m2_m3;
}

/**
 * Alkalinity that nitrification uses up in a day.
 * 7.14 g, as calcium carbonate, for each g of ammonia nitrogen.
 * @param tan_g_d ammonia nitrogen of a day, as N, 0 or more
 * @returns g of alkalinity, as calcium carbonate, a day
 * @valid all of it is turned into nitrate; plants that take nitrate give about half of it back
 * @throws RangeError below zero
 * @source nitrificationStoichiometry two charges for one nitrogen atom
 * @example alkalinityUsed_g_d(1) // 7.14
 */
export function alkalinityUsed_g_d(tan_g_d: number): number {
  if (!(0 <= tan_g_d)) throw new RangeError(`alkalinityUsed_g_d(${tan_g_d})`);
  return alkalinityPerNitrogen.value * tan_g_d;
}

/**
 * Bed that a day's feed can fertilise.
 * Feed over what a square metre takes in a day.
 * @param feed_g_d feed of a day, 0 or more
 * @param rate_g_m2_d feed for a square metre and day, above 0
 * @returns square metres
 * @valid leafy plants at full cover, feed of some 32 % protein
 * @throws RangeError outside these ranges
 * @source fao589 chapter 8.1
 * @example fedArea_m2(200, 50) // 4
 */
export function fedArea_m2(feed_g_d: number, rate_g_m2_d: number): number {
  if (!(0 <= feed_g_d && 0 < rate_g_m2_d)) throw new RangeError(`fedArea_m2(${feed_g_d}, ${rate_g_m2_d})`);
  return feed_g_d / rate_g_m2_d;
}
