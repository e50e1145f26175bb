/** Constants of nature and rules of the trade, each with where it comes from. */
import type { SourceKey } from './note.ts';

/** A number that somebody else stands for. */
export type Sourced = { readonly value: number; readonly source: SourceKey };

/** Standard acceleration of free fall (3rd CGPM, 1901), m/s2. */
export const gravity_m_s2 = 9.80665;

/** The stocking rules speak of fish of this adult mass. Common practice, no source. */
export const ruleFish_g: Sourced = { value: 500, source: 'commonPractice' };

/** Wet media that carries one rule fish. Common practice, no source. */
export const mediaPerFish_L: Sourced = { value: 25, source: 'commonPractice' };

/** Tank water that one rule fish wants at the lowest level of normal running. Common practice, no source. */
export const waterPerFish_L: Sourced = { value: 20, source: 'commonPractice' };

/** No table-size fish in a tank that holds less than this at its full line. Common practice, no source. */
export const tableFishTank_L: Sourced = { value: 500, source: 'commonPractice' };

/** How often the flood-and-drain beds' volume must go into the tank's full volume. Common practice, no source. */
export const tankPerBed: Sourced = { value: 2, source: 'commonPractice' };

/** Most fish mass in a litre of tank (Somerville et al. 2014, section 7.3.3, p. 109, as quoted with the page). */
export const density_kg_L: Sourced = { value: 0.02, source: 'fao589' };

/** The same in tanks under 500 L (Somerville et al. 2014, p. 125, as quoted with the page). */
export const densitySmallTank_kg_L: Sourced = { value: 0.01, source: 'fao589' };

/** Full-line volume from which the higher density counts (Somerville et al. 2014, p. 125). */
export const smallTank_L: Sourced = { value: 500, source: 'fao589' };

/** Daily ration of fish in grow-out, share of body mass (Somerville et al. 2014, section 7.2). */
export const rationGrowOut_frac = { low: 0.01, high: 0.02, source: 'fao589' } as const;

/** The grow-out ration speaks of fish heavier than this (Somerville et al. 2014, section 7.2, as quoted). */
export const rationFrom_g: Sourced = { value: 50, source: 'fao589' };

/** Water that a system loses in a day, share of all its water (Somerville et al. 2014, section 3.4, p. 29, as quoted). */
export const dailyLoss_frac = { low: 0.01, high: 0.03, source: 'fao589' } as const;

/** Un-ionised ammonia above this harms fish, as NH3 (Francis-Floyd et al., UF/IFAS FA16). */
export const unionised_mg_L: Sourced = { value: 0.05, source: 'ufIfasFa16' };

/** Total ammonia above which the feed stops, whatever the fish (Somerville et al. 2014, table 3.2). */
export const commonTan_mg_L: Sourced = { value: 1, source: 'fao589' };

/** A partial water change, and the small step where tap and tank differ. Common practice, no source. */
export const waterChange_frac = { quarter: 0.25, tenth: 0.1, source: 'commonPractice' } as const;
