/** Which wishes about places were given up, and where, in lines that sheet and page share. */
import type { Relaxed } from '../core/turnover/turnover.ts';
import { cropName, season, type TurnoverInput } from './turnoverSheet.ts';
import { weeksText } from './weeksText.ts';

/** What can harm first. */
const wishes: readonly Relaxed['wish'][] = ['clearing', 'cells', 'everySowing', 'family', 'oneStrip'];

/** One line for each kind of wish, with crops and weeks; none where all places are as wished. */
export function relaxedLines(input: TurnoverInput): readonly string[] {
  const { plan } = input;
  return wishes.flatMap((wish) => {
    const some = plan.relaxed.filter((one) => one.wish === wish);
    const crops = [...new Set(some.map(({ crop }) => crop))];
    const where = crops.map((crop) => {
      const own = some.filter((one) => one.crop === crop).map(({ week }) => week);
      return season(input, 'relaxed.where', { crop: cropName(input, crop), weeks: weeksText(input, own) });
    });
    return where.length === 0 ? [] : [season(input, `relaxed.${wish}`, { where: where.join('; ') })];
  });
}
