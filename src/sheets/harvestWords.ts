/** What the season gives and what falls short, in lines that sheet and page share. */
import type { CropWeeks, ShortBy } from '../core/turnover/cropWeeks.ts';
import { counted, harvestText } from '../wording/harvest.ts';
import { cropName, saidIn, season, type TurnoverInput } from './turnoverSheet.ts';

const reasons: readonly ShortBy[] = [
  'room',
  'trays',
  'clearing',
  'tooEarly',
  'unsown',
  'between',
  'sownBefore',
  'season',
  'holiday',
  'refused',
];

type Totals = 'crop' | 'met' | 'total' | 'wanted' | 'most';

/** Crop, what was asked for, how much of it is picked in its week, and what is picked in all. */
export function totalWords(
  input: TurnoverInput,
  { crop, unit, totals }: CropWeeks,
): Readonly<Record<Totals, string>> {
  const said = { catalogue: input.words.catalogue, units: input.units };
  return {
    crop: cropName(input, crop),
    met: harvestText(input.figures.met[crop] ?? 0, unit, said),
    total: harvestText(totals.picked, unit, said),
    wanted: harvestText(totals.wanted, unit, said),
    most: harvestText(totals.most, unit, said),
  };
}

/** One line for each crop; what is picked in all only where that is more. */
export function totalLines(input: TurnoverInput): readonly string[] {
  return input.plan.crops.map((crop) => {
    const words = totalWords(input, crop);
    return season(input, words.met === words.total ? 'harvest.line' : 'harvest.lineMore', words);
  });
}

/** One line for each crop and reason, with the number of weeks. */
export function shortLines(input: TurnoverInput): readonly string[] {
  const lines = input.plan.crops.flatMap(({ crop }) =>
    reasons.flatMap((why) => {
      const weeks = input.plan.short.filter((one) => one.crop === crop && one.why === why);
      if (weeks.length === 0) return [];
      const values = { crop: cropName(input, crop), weeks: counted('weeks', weeks.length, saidIn(input)) };
      return [season(input, `harvest.why.${why}`, values)];
    }),
  );
  return lines.length === 0 ? [season(input, 'harvest.nothingShort')] : lines;
}
