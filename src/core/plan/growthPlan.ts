/** Growth over the months: how heavy the fish will be, when they are grown, and what they will want to eat. */
import type { FishStock, Growth } from '../fish.ts';
import type { Note } from '../note.ts';
import { countedWarmth_degC, massAfter_g, warmthTo_degC_d } from '../stocking/growth.ts';
import type { System } from '../system.ts';
import type { Figure, Step } from './figure.ts';
import { aboutWeeks, deadly } from './growthNotes.ts';
import { type Stretch, stretchesOf } from './warmthOfYear.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/** Nobody plans fish for longer. */
const longest = 36;
const week_d = 7;

/** The fish at the end of one stretch, by the slowest and the quickest published growth. */
export type GrownMonth = {
  readonly label: Stretch['label'];
  readonly water_degC: number;
  /** At the beginning of the stretch. */
  readonly low_g: number;
  readonly high_g: number;
};

export type GrowthPlan = { readonly figures: readonly Figure[]; readonly months: readonly GrownMonth[] };

/**
 * When the fish are grown, and their mass month by month until then.
 * Only for kinds with a published coefficient; all others are weighed.
 * @param system a checked system
 * @returns harvestWeeks and the months; nothing without fish to grow
 * @valid as massAfter_g; warmth as warmthOfYear says
 * @source iwamaTautz1981; the coefficient's own source
 */
export function growthPlan(system: System): GrowthPlan {
  const { fish } = system;
  if (fish === null || fish.present === 0 || fish.species.use === 'ornamental') return nothing([]);
  const growth = fish.species.growth ?? null;
  if (growth === null) return nothing([weighInstead()]);
  const year = stretchesOf(system, longest);
  if (year === null) return nothing([noFigure('harvestWeeks', 'weeks', needsWarmth(growth))]);
  const slow = grow(fish, coefficient(growth, 'low'), growth, year.stretches);
  const quick = grow(fish, coefficient(growth, 'high'), growth, year.stretches);
  return {
    figures: [harvestFigure(system, fish, growth, { slow, quick, how: year.how }, year.stretches)],
    months: monthsOf(fish, year.stretches, slow, quick),
  };
}

function nothing(figures: readonly Figure[]): GrowthPlan {
  return { figures, months: [] };
}

function weighInstead(): Figure {
  const why: Note = { code: 'growthByWeighing', level: 'info', numbers: {}, source: 'jobling2003' };
  return noFigure('harvestWeeks', 'weeks', why);
}

function needsWarmth({ source }: Growth): Note {
  return { code: 'growthNeedsWarmth', level: 'info', numbers: {}, source };
}

/** As everything here reckons: printed times 1,000. */
function coefficient(growth: Growth, end: 'low' | 'high'): number {
  return (growth[end] * 1000) / growth.per;
}

/** Masses at the beginning of each stretch, and the days until grown; null where that is not within all of them. */
type Grown = { readonly masses_g: readonly number[]; readonly days_d: number | null };

function grow(fish: FishStock, by: number, growth: Growth, stretches: readonly Stretch[]): Grown {
  const wanted_degC_d = warmthTo_degC_d(fish.massNow_g, fish.massAdult_g, by);
  const masses_g: number[] = [];
  let warmth_degC_d = 0;
  let passed_d = 0;
  let days_d: number | null = wanted_degC_d === 0 ? 0 : null;
  for (const stretch of stretches) {
    masses_g.push(massAfter_g(fish.massNow_g, by, warmth_degC_d));
    const day_degC = feeds(fish, stretch)
      ? countedWarmth_degC(stretch.water_degC, growth.from_degC, growth.to_degC)
      : 0;
    const left_degC_d = wanted_degC_d - warmth_degC_d;
    if (days_d === null && day_degC > 0 && left_degC_d <= day_degC * stretch.days_d) {
      days_d = passed_d + left_degC_d / day_degC;
    }
    warmth_degC_d += day_degC * stretch.days_d;
    passed_d += stretch.days_d;
  }
  return { masses_g, days_d };
}

/**
 * Whether fish are fed in such water: neither too cold nor so warm that somebody is called.
 * @param fish the fish
 * @param at the water
 * @returns true where they are fed
 * @source fao589
 */
export function feeds(fish: FishStock, at: { readonly water_degC: number }): boolean {
  const { noFeedBelow_degC, callAbove_degC } = fish.species;
  return noFeedBelow_degC <= at.water_degC && at.water_degC <= callAbove_degC;
}

/** Months until the slowest are grown, or all of them where they never are. */
function monthsOf(
  fish: FishStock,
  stretches: readonly Stretch[],
  slow: Grown,
  quick: Grown,
): readonly GrownMonth[] {
  // Fish that are grown are taken out.
  const most_g = Math.max(fish.massNow_g, fish.massAdult_g);
  let passed_d = 0;
  return stretches.flatMap((stretch, index) => {
    const over = slow.days_d !== null && slow.days_d < passed_d;
    passed_d += stretch.days_d;
    const low_g = slow.masses_g[index];
    const high_g = quick.masses_g[index];
    if (over || low_g === undefined || high_g === undefined) return [];
    return [
      { label: stretch.label, water_degC: stretch.water_degC, low_g, high_g: Math.min(high_g, most_g) },
    ];
  });
}

type Both = { readonly slow: Grown; readonly quick: Grown; readonly how: Note };

function harvestFigure(
  system: System,
  fish: FishStock,
  growth: Growth,
  { slow, quick, how }: Both,
  stretches: readonly Stretch[],
): Figure {
  const numbers = { from_degC: growth.from_degC, to_degC: growth.to_degC };
  const held: Note = { code: 'growthHolds', level: 'info', numbers, source: growth.source };
  if (slow.days_d === null) {
    const never: Note = { code: 'growthTooCold', level: 'caution', numbers, source: growth.source };
    return figure({ ...notGrown(), notes: [never, ...deadly(fish, stretches, Infinity), how] });
  }
  const low = quick.days_d === null ? slow.days_d : quick.days_d;
  return figure({
    key: 'harvestWeeks',
    value: slow.days_d / week_d,
    low: low / week_d,
    high: slow.days_d / week_d,
    unit: 'weeks',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [harvestStep(fish, growth, slow.days_d, stretches)],
    notes: [...aboutWeeks(system, low, slow.days_d), ...deadly(fish, stretches, slow.days_d), how, held],
  });
}

function notGrown() {
  return {
    key: 'harvestWeeks',
    value: null,
    unit: 'weeks',
    safeSide: 'nearest',
    confidence: 'none',
    steps: [],
  } as const;
}

/** With a pencil where the water is the same all the time; else it was added up month by month. */
function harvestStep(fish: FishStock, growth: Growth, days_d: number, all: readonly Stretch[]): Step {
  const gives = quantity('w', 'harvestWeeks', days_d / week_d, 'weeks');
  const symbols = [
    quantity('M', 'massAdult', fish.massAdult_g, 'g'),
    quantity('m', 'massNow', fish.massNow_g, 'g'),
    quantity('c', 'growthCoefficient', coefficient(growth, 'low'), 'ratio'),
  ];
  const first = all[0]?.water_degC ?? 0;
  const even = all.every((one) => one.water_degC === first);
  if (!even || days_d === 0) {
    return { kind: 'simulated', gives, formula: '', symbols, byHand: 'no', source: 'iwamaTautz1981' };
  }
  const day_degC = countedWarmth_degC(first, growth.from_degC, growth.to_degC);
  return byHand(
    gives,
    '(M^(1 ÷ 3) − m^(1 ÷ 3)) × 1000 ÷ c ÷ T ÷ 7',
    [...symbols, quantity('T', 'countedWarmth', day_degC, 'degC')],
    'iwamaTautz1981',
  );
}
