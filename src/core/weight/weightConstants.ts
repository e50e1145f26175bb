/** What floors are built for, and what a leg may have to carry. */
import type { Sourced } from '../constants.ts';

/** Live load of a deck, 40 pounds a square foot, as a yardstick only. */
export const deckLoad_kg_m2: Sourced = { value: 195, source: 'deckLoads' };

/** Share of the weight on one of four legs: a quarter on level ground, a half where it rocks on two. From geometry. */
export const legShare_frac = { level: 0.25, rocking: 0.5, source: 'geometry' } as const;

/** A footprint smaller than this share of the widest plan is no foot to stand on: then it stands in a cradle. */
export const smallFoot_frac = 1 / 3;

/** All of it together no more than two grown people and what they carry: a small aquarium. From memory. */
export const smallWhole_kg: Sourced = { value: 180, source: 'fromMemory' };
