/** Figures that others stand for: of air, nitrogen and dosing, each with where it comes from. */
import type { Sourced } from '../constants.ts';
import type { SourceKey } from '../note.ts';
import type { Range } from '../system.ts';

/** A range that somebody else stands for. */
export type SourcedRange = Range & { readonly source: SourceKey };

/** Grams of oxygen that turn a gram of ammonia nitrogen into nitrate. */
export const oxygenPerNitrogen: Sourced = { value: 4.57, source: 'nitrificationStoichiometry' };

/** Grams of alkalinity, as calcium carbonate, that go with a gram of ammonia nitrogen. */
export const alkalinityPerNitrogen: Sourced = { value: 7.14, source: 'nitrificationStoichiometry' };

/** How many times what a quiet fish breathes: unfed, fed, at the peak after a large meal. */
export const mealFactor: SourcedRange = { low: 1, likely: 2, high: 3.066, source: 'sdaJuveniles' };

/** What a kilogram of trout and other cold-water fish breathes, mg/h. From memory, wide on purpose. */
export const coldWaterRate_mg_kg_h: SourcedRange = { low: 100, likely: 250, high: 400, source: 'fromMemory' };

/** A kind whose good water ends below this is a cold-water fish. */
export const coldWaterBelow_degC: Sourced = { value: 20, source: 'fromMemory' };

/** Oxygen that rotting solids and what lives on them take, for each gram of feed. */
export const solidsOxygen: SourcedRange = { low: 0.05, likely: 0.13, high: 0.5, source: 'fromMemory' };

/** Share of saturation that a stocked, aired tank really stands at when the power goes. */
export const startingShare_frac: Sourced = { value: 0.7, source: 'fromMemory' };

/** Beyond this, mud and bacteria count for more than few fish, and the sum no longer holds. */
export const longestSum_min: Sourced = { value: 120, source: 'fromMemory' };

/** Oxygen in a litre of air at 20 °C and the sea's pressure: 1.204 g of air, 23.15 % of it oxygen by mass. */
export const oxygenOfAir_g_L: Sourced = { value: 0.2787, source: 'fromMemory' };

/** Share of a bubble's oxygen that dissolves on a metre of way up, from coarse stones to fine ones. */
export const bubbleShare_frac: SourcedRange = {
  low: 0.025,
  likely: 0.033,
  high: 0.066,
  source: 'fromMemory',
};

/** How dirty water slows bubbles (alpha) and how much less it holds (beta). Fish water, from memory. */
export const fishWaterAlpha: Sourced = { value: 0.9, source: 'fromMemory' };
export const fishWaterBeta: Sourced = { value: 1, source: 'fromMemory' };

/** Water quality and shape of the fall: 0.8 is waste water that was treated; a plain weir is 1. */
export const fallQuality: Sourced = { value: 0.8, source: 'metcalfEddyCascade' };
export const fallShape: Sourced = { value: 1, source: 'fromMemory' };

/** Least air for each litre of fish tank, L/min. Seen by us nowhere but in memory. */
export const airPerLitre_L_min: Sourced = { value: 0.004, source: 'fromMemory' };

/** Oxygen that must be left where water comes out of a bed at constant flood. */
export const bedOutlet_mg_L: Sourced = { value: 2, source: 'fromMemory' };

/** Protein of feed where the bag was not read. */
export const feedProtein_frac: Sourced = { value: 0.32, source: 'fao589' };

/** What a square metre of media turns in a day, g of NH3. */
export const nitrification_g_m2_d: SourcedRange = { low: 0.2, likely: 0.57, high: 2, source: 'fromMemory' };

/** Surface of a cubic metre of media, from river gravel to volcanic stone. */
export const mediaSurface_m2_m3: SourcedRange = { low: 150, likely: 250, high: 400, source: 'fromMemory' };

/** Feed that a square metre of leafy plants takes in a day; the two sources disagree. */
export const leafyFeed_g_m2_d = { low: 40, high: 50, source: 'fao589' } as const;
/** The same of fruiting plants. */
export const fruitingFeed_g_m2_d = { low: 50, high: 80, source: 'fao589' } as const;
export const leafyFeedTrial_g_m2_d = { low: 15, high: 42, source: 'endut2010' } as const;

/** Alkalinity under which the pH can fall within days. The lower end of a range from memory. */
export const alkalinityLeast_mg_L: Sourced = { value: 60, source: 'fromMemory' };

/** A pH that moves more than this in a day harms. */
export const pHStep: Sourced = { value: 0.3, source: 'fao589' };

/** No change takes more than this at once, however alike the waters are. */
export const largestShare_frac: Sourced = { value: 0.5, source: 'commonPractice' };

/** Chloride against nitrite, by mass of both. */
export const chloridePerNitrite: Sourced = { value: 10, source: 'srac462' };

/** Ammonia nitrogen that chloramine sets free when its chlorine is bound, g for each g of chlorine. */
export const ammoniaOfChloramine: Sourced = { value: 0.198, source: 'molarMasses' };

/** Ammonia to start with, as N, before any fish: never above the second. */
export const cyclingStart_mg_L: Sourced = { value: 2, source: 'fromMemory' };
export const cyclingMost_mg_L: Sourced = { value: 4, source: 'fromMemory' };

/** Free ammonia, as NH3, from which the second kind of nitrifier slows. */
export const nitriteOxidiserSlows_mg_L = { low: 0.1, high: 1, source: 'fromMemory' } as const;

/** Share of the planned fish that come first. */
export const firstFish_frac: Sourced = { value: 0.2, source: 'kentuckyAquaponics2021' };

/** Nitrifiers slow down in colder water. */
export const nitrifiersSlowBelow_degC: Sourced = { value: 17, source: 'fao589' };
