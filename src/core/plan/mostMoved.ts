/** The step behind the lowest level: the most that the flood beds can take. */
import type { BedPlan } from './beds.ts';
import type { Step } from './figure.ts';
import { byHand, quantity } from './write.ts';

/**
 * What the flood beds take with the loosest media that the range of its voids allows.
 * @param beds all beds, worked out
 * @param most_L their sum
 * @returns one step; none where nothing floods
 * @source geometry; void fractions as each media's file or the bucket test says
 */
export function mostMovedSteps(beds: readonly BedPlan[], most_L: number): readonly Step[] {
  const flooding = beds.filter((bed) => bed.moved_L.high > 0);
  if (flooding.length === 0) return [];
  const signs = flooding.map((_, index) => (flooding.length === 1 ? '' : String(index + 1)));
  const symbols = flooding.flatMap((bed, index) => {
    const { high } = bed.bed.media.void_frac;
    return [
      quantity(`W${signs[index]}`, 'wetMedia', bed.wetMedia_L, 'L'),
      quantity(`D${signs[index]}`, 'belowDrain', bed.belowDrain_L, 'L'),
      quantity(`e${signs[index]}`, 'mostVoids', high, 'frac'),
    ];
  });
  const formula = signs.map((sign) => `(W${sign} − D${sign}) × e${sign}`).join(' + ');
  const [first] = flooding;
  const source = first?.bed.media.source ?? 'fromMemory';
  return [byHand(quantity('M', 'mostWaterMoved', most_L, 'L'), formula, symbols, source)];
}
