/** A crop, with what it needs, how long it takes and what it gives; each figure with the source it was taken from. */
import * as z from 'zod';
import type { Crop } from '../core/crops/crop.ts';
import type { Problem } from '../core/problem.ts';
import { key, line, number, prose, whole } from './fields.ts';
import type { Path } from './schemaAt.ts';
import { known, rising } from './sourced.ts';

const days = {
  low_d: number(0, 400, 'd'),
  likely_d: number(0, 400, 'd'),
  high_d: number(0, 400, 'd'),
  /** Citation key. */
  source: line(),
};

const degrees = number(-30, 60, 'degC');

export const cropFile = z.strictObject({
  /** Its common name in English. */
  name: line(),
  species: line(),
  /** Botanical family; those of one family share pests. */
  family: line(),
  /** As the feed that fits a planted square metre is counted. Herbs and roots count as leafy. */
  feeds: z.enum(['leafy', 'fruiting']),
  /** quick: lifted whole within some hundred days. long: its roots stay and fill the bed. */
  stays: z.enum(['quick', 'long']),
  /** No growth below this. */
  base: z.strictObject({ degC: degrees, source: line() }),
  /** Where it grows best; warmer than the upper end brings nothing more. */
  best: z.strictObject({ low_degC: degrees, high_degC: degrees, source: line() }),
  /** It dies when the mean of the nights is below the first, or the mean of the days above the second. */
  alive: z.strictObject({ low_degC: degrees, lowSource: line(), high_degC: degrees, highSource: line() }),
  /** Above this mean of the days it flowers too early, or turns bitter. */
  bolts: z.strictObject({ degC: degrees, source: line() }).optional(),
  germination: z.strictObject({
    least_degC: degrees,
    most_degC: degrees,
    limitsSource: line(),
    /** Days to emerge, and the warmth in which they hold. */
    days: z.strictObject({ ...days, from_degC: degrees, to_degC: degrees }),
    /** Seeds that come up, as a part of one. */
    success: z.strictObject({ frac: number(0.05, 1, 'frac'), source: line() }),
  }),
  /** Days from sowing to planting out. Leave it out where it is sown into the bed. */
  nursery: z.strictObject(days).optional(),
  /** Days from planting out, or from sowing into the bed, to the first picking, and the warmth in which they hold. */
  bed: z.strictObject({ ...days, from_degC: degrees, to_degC: degrees }),
  picking: z.discriminatedUnion('kind', [
    /** The whole plant at once; it stands ready for so many days. */
    z.strictObject({ kind: z.literal('once'), stands_d: whole(0, 60, 'd'), source: line() }),
    /** Cut so many times; the days are those from one cut to the next. */
    z.strictObject({ kind: z.literal('cuts'), most: whole(1, 40, ''), ...days }),
  ]),
  /** From plant to plant. */
  spacing: z.strictObject({ mm: number(10, 5_000, 'mm'), source: line() }),
  /** What one plant gives at one picking. */
  yield: z.strictObject({
    low_g: number(0.01, 100_000, 'g'),
    likely_g: number(0.01, 100_000, 'g'),
    high_g: number(0.01, 100_000, 'g'),
    source: line(),
  }),
  /** What is eaten or sold as one. A head is one plant. Leave it out where it is only weighed. */
  portion: z
    .strictObject({ unit: z.enum(['head', 'bunch']), mass_g: number(1, 20_000, 'g'), source: line() })
    .optional(),
  /** Plants lost between planting out and picking, as a part of one. */
  loss: z.strictObject({ frac: number(0, 0.9, 'frac'), source: line() }),
  /** Keys of cautions in the wording, printed wherever the crop is named. */
  cautions: z.array(key()).max(6).default([]),
  note: prose().optional(),
});

export type CropFile = z.output<typeof cropFile>;

export function checkCrop(crop: CropFile, sources: readonly string[]): readonly Problem[] {
  return [...orderProblems(crop), ...sourceProblems(crop, [], sources)];
}

function orderProblems({ base, best, alive, germination, nursery, bed, picking, yield: gives }: CropFile) {
  return [
    ...rising(base.degC, best.low_degC, ['best', 'low_degC'], 'degC'),
    ...rising(best.low_degC, best.high_degC, ['best', 'high_degC'], 'degC'),
    ...rising(best.high_degC, alive.high_degC, ['alive', 'high_degC'], 'degC'),
    ...rising(alive.low_degC, best.low_degC, ['alive', 'low_degC'], 'degC'),
    ...rising(germination.least_degC, germination.most_degC, ['germination', 'most_degC'], 'degC'),
    ...rising(bed.from_degC, bed.to_degC, ['bed', 'to_degC'], 'degC'),
    ...risingDays(germination.days, ['germination', 'days']),
    ...(nursery ? risingDays(nursery, ['nursery']) : []),
    ...risingDays(bed, ['bed']),
    ...(picking.kind === 'cuts' ? risingDays(picking, ['picking']) : []),
    ...rising(gives.low_g, gives.likely_g, ['yield', 'likely_g'], 'g'),
    ...rising(gives.likely_g, gives.high_g, ['yield', 'high_g'], 'g'),
  ];
}

type Days = { readonly low_d: number; readonly likely_d: number; readonly high_d: number };

function risingDays({ low_d, likely_d, high_d }: Days, place: Path): readonly Problem[] {
  return [
    ...rising(low_d, likely_d, [...place, 'likely_d'], 'd'),
    ...rising(likely_d, high_d, [...place, 'high_d'], 'd'),
  ];
}

/** Whatever is called a source, at any depth, has a file. */
function sourceProblems(of: object, place: Path, sources: readonly string[]): readonly Problem[] {
  return Object.entries(of).flatMap(([name, value]: [string, unknown]) => {
    const at = [...place, name];
    if (typeof value === 'object' && value !== null) return sourceProblems(value, at, sources);
    return /source$/i.test(name) && typeof value === 'string' ? known(value, at, sources) : [];
  });
}

export function toCrop(id: string, file: CropFile): Crop {
  const { germination, picking, yield: gives, portion } = file;
  return {
    ...{ id, name: file.name, scientificName: file.species, family: file.family },
    ...{ feeds: file.feeds, stays: file.stays, base_degC: file.base.degC },
    best_degC: { low: file.best.low_degC, high: file.best.high_degC },
    alive_degC: { low: file.alive.low_degC, high: file.alive.high_degC },
    bolts_degC: file.bolts?.degC ?? null,
    germination: {
      least_degC: germination.least_degC,
      most_degC: germination.most_degC,
      days_d: range(germination.days),
      at_degC: { low: germination.days.from_degC, high: germination.days.to_degC },
      success_frac: germination.success.frac,
    },
    nursery_d: file.nursery ? range(file.nursery) : null,
    bed_d: range(file.bed),
    days_degC: { low: file.bed.from_degC, high: file.bed.to_degC },
    picking:
      picking.kind === 'once'
        ? { kind: 'once', stands_d: picking.stands_d }
        : { kind: 'cuts', most: picking.most, regrow_d: range(picking) },
    spacing_mm: file.spacing.mm,
    yield_g: { low: gives.low_g, likely: gives.likely_g, high: gives.high_g },
    portion: portion ? { unit: portion.unit, mass_g: portion.mass_g } : null,
    loss_frac: file.loss.frac,
    cautions: file.cautions,
    sources: sourcesOf(file),
  };
}

function range({ low_d, likely_d, high_d }: Days): Crop['bed_d'] {
  return { low: low_d, likely: likely_d, high: high_d };
}

function sourcesOf(file: CropFile): Crop['sources'] {
  const { germination, picking } = file;
  return {
    base_degC: file.base.source,
    best_degC: file.best.source,
    ...(file.bolts ? { bolts_degC: file.bolts.source } : {}),
    germination_d: germination.days.source,
    success_frac: germination.success.source,
    ...(file.nursery ? { nursery_d: file.nursery.source } : {}),
    bed_d: file.bed.source,
    picking: picking.source,
    spacing_mm: file.spacing.source,
    yield_g: file.yield.source,
    loss_frac: file.loss.source,
  };
}
