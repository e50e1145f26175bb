/** Feed against plants: how much bed the day's feed fertilises. */
import type { Note } from '../note.ts';
import { fedArea_m2 } from '../water/nitrogen.ts';
import { leafyFeed_g_m2_d, leafyFeedTrial_g_m2_d } from '../water/waterConstants.ts';
import type { BedPlan } from './beds.ts';
import type { Figure } from './figure.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * Bed that the day's feed fertilises, by two sources that disagree.
 * @param beds the beds, worked out
 * @param feed_g_d feed of the day, above 0
 * @returns fedArea_m2 and fedAreaTrial_m2
 * @valid leafy plants at full cover
 * @source fao589 chapter 8.1; endut2010
 */
export function fedAreaFigures(beds: readonly BedPlan[], feed_g_d: number): readonly Figure[] {
  const bed_m2 = beds.reduce((sum, one) => sum + one.surface_m2, 0);
  const least_m2 = fedArea_m2(feed_g_d, leafyFeed_g_m2_d.high);
  const small: Note = {
    code: 'moreFeedThanPlants',
    level: 'caution',
    numbers: { bed_m2, wanted_m2: least_m2 },
    source: leafyFeed_g_m2_d.source,
  };
  const disagree: Note = { code: 'areaSourcesDisagree', level: 'info', numbers: {}, source: 'endut2010' };
  const notes = bed_m2 < least_m2 ? [disagree, small] : [disagree];
  return [
    areaFigure('fedArea', feed_g_d, leafyFeed_g_m2_d, notes),
    areaFigure('fedAreaTrial', feed_g_d, leafyFeedTrial_g_m2_d, []),
  ];
}

/** The area that surely takes all the feed's nutrients is the one of the smaller rate. */
function areaFigure(
  name: 'fedArea' | 'fedAreaTrial',
  feed_g_d: number,
  rate: { readonly low: number; readonly high: number; readonly source: string },
  notes: readonly Note[],
): Figure {
  const value = fedArea_m2(feed_g_d, rate.low);
  return figure({
    key: `${name}_m2`,
    value,
    low: fedArea_m2(feed_g_d, rate.high),
    high: value,
    unit: 'm2',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('a', name, value, 'm2'),
        'f ÷ r',
        [quantity('f', 'feed', feed_g_d, 'g_d'), quantity('r', 'feedPerArea', rate.low, 'g_m2_d')],
        rate.source,
      ),
    ],
    notes,
  });
}
