/** Seasons drawn at random, with crops that grow by a rule of their own: what the planner makes of them is all that counts. */
import fc from 'fast-check';
import type { Crop } from '../../src/core/crops/crop.ts';
import type { Grown } from '../../src/core/crops/growth.ts';
import type { TurnoverTask } from '../../src/core/turnover/turnover.ts';

/** Sowing to planting and planting to picking take so many days, whenever it is. */
export type FixedCrop = {
  readonly nursery: number;
  readonly bed: number;
  readonly stands: number;
  readonly cuts: number;
  readonly regrow: number;
  readonly spacing: number;
  readonly family: string;
};

const families = ['Asteraceae', 'Brassicaceae', 'Apiaceae'];

export function cropOf(id: string, of: FixedCrop): Crop {
  const around = (days: number) => ({ low: Math.max(0, days - 2), likely: days, high: days + 2 });
  return {
    ...{ id, name: id, scientificName: id, family: of.family, feeds: 'leafy', stays: 'quick' },
    ...{
      base_degC: 4,
      best_degC: { low: 12, high: 22 },
      alive_degC: { low: -2, high: 35 },
      bolts_degC: null,
    },
    germination: {
      ...{ least_degC: 2, most_degC: 35, success_frac: 0.8 },
      ...{ days_d: around(5), at_degC: { low: 12, high: 22 } },
    },
    nursery_d: of.nursery === 0 ? null : around(of.nursery),
    bed_d: around(of.bed),
    days_degC: { low: 12, high: 22 },
    picking:
      of.cuts === 1
        ? { kind: 'once', stands_d: of.stands }
        : { kind: 'cuts', most: of.cuts, regrow_d: around(of.regrow) },
    ...{ spacing_mm: of.spacing, yield_g: { low: 100, likely: 150, high: 200 } },
    ...{ portion: { unit: 'head', mass_g: 150 }, loss_frac: 0.1, cautions: [], sources: {} },
  };
}

/** Grows as its own days say. */
export function fixedGrowth(crop: Crop, sow_d: number): Grown {
  const plantOut_d = sow_d + (crop.nursery_d?.likely ?? 0);
  const ready_d = plantOut_d + crop.bed_d.likely;
  const { picking } = crop;
  const regrow = picking.kind === 'cuts' ? picking.regrow_d.likely : 0;
  const times = picking.kind === 'cuts' ? picking.most : 1;
  return {
    ...{ state: 'grows', sow_d, plantOut_d, ready_d, readyFrom_d: ready_d - 2, readyTo_d: ready_d + 2 },
    picks_d: Array.from({ length: times }, (_, at) => ready_d + at * regrow),
    standsTo_d: ready_d + (picking.kind === 'once' ? picking.stands_d : 0),
    ...{ livesTo_d: Number.POSITIVE_INFINITY, hot_d: null },
  };
}

type Size = {
  readonly crops: number;
  readonly weeks: number;
  readonly places: number;
  readonly most: number;
};

/** Seasons up to a size; crops that fit into it. */
export function tasks({ crops, weeks, places, most }: Size): fc.Arbitrary<TurnoverTask> {
  const crop = fc.record({
    nursery: fc.constantFrom(0, 0, 7, 14),
    bed: fc.integer({ min: 7, max: Math.min(35, (weeks - 1) * 7) }),
    stands: fc.constantFrom(0, 0, 7, 10),
    cuts: fc.constantFrom(1, 1, 1, 2, 3),
    regrow: fc.integer({ min: 5, max: 14 }),
    spacing: fc.constantFrom(200, 200, 200, 100, 250),
    family: fc.constantFrom(...families),
  });
  return fc
    .record({
      crops: fc.array(crop, { minLength: 1, maxLength: crops }),
      weeks: fc.integer({ min: 3, max: weeks }),
      beds: fc.array(
        fc.record({
          places: fc.integer({ min: 1, max: places }),
          mode: fc.constantFrom('siphon' as const, 'constantFlood' as const),
        }),
        { minLength: 1, maxLength: 2 },
      ),
      // In tenths: doubles are mostly too small to be anything, and seasons in which nothing is wanted try nothing.
      amounts: fc.array(fc.integer({ min: 0, max: most * 10 }), { minLength: 1, maxLength: 60 }),
      cells: fc.option(fc.integer({ min: 1, max: 20 }), { nil: null, freq: 4 }),
      holiday: fc.option(fc.integer({ min: 1, max: weeks - 1 }), { nil: null, freq: 3 }),
      rest_d: fc.constantFrom(0, 3, 3, 8),
      rotation: fc.constantFrom('wanted' as const, 'ignored' as const),
    })
    .map((drawn) => taskOf(drawn));
}

type Drawn = {
  readonly crops: readonly FixedCrop[];
  readonly weeks: number;
  readonly beds: readonly { readonly places: number; readonly mode: 'siphon' | 'constantFlood' }[];
  readonly amounts: readonly number[];
  readonly cells: number | null;
  readonly holiday: number | null;
  readonly rest_d: number;
  readonly rotation: 'wanted' | 'ignored';
};

function taskOf({ crops, weeks, beds, amounts, cells, holiday, rest_d, rotation }: Drawn): TurnoverTask {
  const amount = (at: number): number => (amounts[at % amounts.length] ?? 0) / 10;
  return {
    ...{ id: 'drawn', name: 'Drawn', placeName: 'Nowhere', firstMonday_d: 22_280, weeks, workday: 5 },
    place: {
      ...{ latitude: 50, mean_degC: Array.from({ length: 12 }, () => 17), water_degC: null },
      ...{ night_degC: Array.from({ length: 12 }, () => 12), nursery: 'outdoors', shortDays: 'ignored' },
    },
    place_mm: 200,
    beds: beds.map((bed, at) => ({ name: `Bed ${at + 1}`, ...bed, area_m2: bed.places * 0.04 })),
    nurseryCells: cells,
    wishes: crops.map((crop, at) => ({
      crop: cropOf(`crop${at}`, crop),
      unit: 'head',
      perWeek: Array.from({ length: weeks }, (_, week) => amount(at * 7 + week)),
    })),
    holidays:
      holiday !== null && holiday < weeks ? [{ name: 'Away', from_week: holiday, to_week: holiday }] : [],
    ...{ rotation, rest_d, feed_g_d: null },
  };
}
