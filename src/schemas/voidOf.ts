/** Share of a bed's media that water can fill: the keeper's bucket test, or else the media's file. */
import type { Range } from '../core/system.ts';
import type { BedFile } from './bed.ts';
import { entry, type Facts } from './facts.ts';

export function voidOf(bed: BedFile, facts: Facts): Range | null {
  const { bucketTest } = bed;
  if (bucketTest) {
    const share = bucketTest.water_L / bucketTest.media_L;
    return { low: share, likely: share, high: share };
  }
  return entry(facts.media, bed.media)?.void_frac ?? null;
}
