/** Rules and ranges of pumps, pipes and siphons, each with where it comes from. */
import type { Sourced } from '../constants.ts';

/** The open end of the supply hangs a hand's breadth over the rim of the bed. Common practice, no source. */
export const handBreadth_mm: Sourced = { value: 100, source: 'commonPractice' };

/** Faster water takes more than it is worth and hammers (a course of irrigation, table 1133, note 1: 5 feet a second). */
export const calmVelocity_m_s: Sourced = { value: 1.5, source: 'commonPractice' };

/** Wall of plastic pipe: new as EPANET's table has it, and slimy after some months, which is from memory. */
export const roughness_mm = { fresh: 0.0015, slimy: 0.15, source: 'epanetManual' } as const;

/** How far a small pump's head strays from its leaflet: worn or blocked, and better than told. From memory. */
export const pumpHead_frac = { low: 0.8, high: 1.05, source: 'fromMemory' } as const;

/** The tank's water through the pump: once an hour, twice where fish stand close. From memory of FAO 589. */
export const turnoverWanted: Sourced = { value: 1, source: 'fromMemory' };

/** What a bucket holds that stands in every shed. Common practice, no source. */
export const bucket_L: Sourced = { value: 10, source: 'commonPractice' };

/** A timer that was not told: a quarter of an hour on, three off. Common practice, no source. */
export const usualTimer_min = { on: 15, off: 45, source: 'commonPractice' } as const;

/**
 * A bell siphon over a standpipe of 25 mm is told to start from 200 L/h (from memory of FAO 589); other bores as the
 * power two and a half, which is how weirs and orifices grow.
 */
export const starts_L_h = { bore_mm: 25, flow: 200, source: 'fromMemory' } as const;

/** Pipe of a siphon that hangs below the bed's underside where nothing was told. Common practice, no source. */
export const siphonTail_mm: Sourced = { value: 100, source: 'commonPractice' };

/** A siphon must draw this much faster than water comes in, or it does not break; and this much to be sure of it. */
export const breakMargin = {
  least: 1.1,
  source: 'ramseyDosingSiphon',
  sure: 2,
  sureSource: 'fromMemory',
} as const;

/** Edge of a drain hole in a plastic pipe: a hole with a sharp edge. */
export const holeCd: Sourced = { value: 0.6, source: 'lalHydraulics' };
