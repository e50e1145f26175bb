/** What fish, nitrifiers and solids breathe in an hour. */
import type { FishStock } from '../fish.ts';
import { nitrifierOxygen_g_d, routineRespiration_mg_kg_h } from '../water/respiration.ts';
import {
  coldWaterBelow_degC,
  coldWaterRate_mg_kg_h,
  mealFactor,
  oxygenPerNitrogen,
  solidsOxygen,
} from '../water/waterConstants.ts';
import type { Range } from '../system.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, lookup, quantity } from './write.ts';

/** The day's feed and the ammonia that comes of it; null where no ration is known. */
export type Load = { readonly feed_g_d: number; readonly tan_g_d: number } | null;

/** What a kilogram of these fish breathes: unfed, fed, after a large meal; and the step of one of the three. */
export type Breathing = Range & { readonly step: (end: keyof Range) => Step };

/**
 * What a kilogram of the fish breathes in an hour.
 * @param fish the fish, at the mass given there
 * @param water_degC 0 to 40
 * @returns low, likely, high in mg per kg and hour, with the step of each
 * @valid a wide guess: fish differ by kind, size, mood and meal
 * @source yamanaka2013 for the quiet fish; sdaJuveniles for meals; fromMemory for cold-water kinds
 */
export function breathingOf(fish: FishStock, water_degC: number): Breathing {
  const cold = fish.species.good_degC.max < coldWaterBelow_degC.value;
  if (cold) {
    const { low, likely, high, source } = coldWaterRate_mg_kg_h;
    const rates: Range = { low, likely, high };
    return { ...rates, step: (end) => lookup(quantity('r', 'breathing', rates[end], 'mg_kg_h'), source) };
  }
  const quiet = routineRespiration_mg_kg_h(fish.massNow_g, water_degC);
  const rates: Range = {
    low: quiet * mealFactor.low,
    likely: quiet * mealFactor.likely,
    high: quiet * mealFactor.high,
  };
  return { ...rates, step: (end) => warmStep(fish, water_degC, mealFactor[end], rates[end]) };
}

function warmStep(fish: FishStock, water_degC: number, times: number, rate: number): Step {
  return {
    kind: 'formula',
    gives: quantity('r', 'breathing', rate, 'mg_kg_h'),
    formula: 'x × 67.4 × m^(0 − 0.193) × 2.718281828459045^(0.0562 × T)',
    symbols: [
      quantity('x', 'mealFactor', times, 'ratio'),
      quantity('m', 'massNow', fish.massNow_g, 'g'),
      quantity('T', 'waterTemperature', water_degC, 'degC'),
    ],
    byHand: 'no',
    source: 'yamanaka2013',
  };
}

/**
 * Oxygen that the fish present and their leavings take in an hour.
 * @param fish the fish, at least one
 * @param load feed and ammonia of the day
 * @param water_degC the warm end, 0 to 40
 * @returns the demand with low, likely and high
 * @valid as breathingOf
 * @source yamanaka2013, nitrificationStoichiometry; fromMemory for the solids
 */
export function demandFigure(fish: FishStock, load: Load, water_degC: number): Figure {
  const fishMass_kg = (fish.present * fish.massNow_g) / 1000;
  const breathing = breathingOf(fish, water_degC);
  const of = (end: keyof Range): number =>
    (fishMass_kg * breathing[end]) / 1000 +
    (load === null ? 0 : nitrifierOxygen_g_d(load.tan_g_d) / 24 + (load.feed_g_d * solidsOxygen[end]) / 24);
  return figure({
    key: 'oxygenDemand_g_h',
    value: of('likely'),
    low: of('low'),
    high: of('high'),
    unit: 'g_h',
    safeSide: 'up',
    confidence: 'estimate',
    steps: demandSteps(fishMass_kg, breathing, load, of('likely')),
    notes: [
      load === null
        ? { code: 'demandWithoutFeed', level: 'info', numbers: {}, source: 'fromMemory' }
        : { code: 'demandIsWide', level: 'info', numbers: {}, source: 'fromMemory' },
    ],
  });
}

function demandSteps(
  fishMass_kg: number,
  breathing: Breathing,
  load: Load,
  demand_g_h: number,
): readonly Step[] {
  const mass = quantity('k', 'fishMass', fishMass_kg, 'kg');
  const rate = quantity('r', 'breathing', breathing.likely, 'mg_kg_h');
  const gives = quantity('D', 'oxygenDemand', demand_g_h, 'g_h');
  if (load === null)
    return [breathing.step('likely'), byHand(gives, 'k × r ÷ 1000', [mass, rate], 'geometry')];
  const nitrifiers_g_h = nitrifierOxygen_g_d(load.tan_g_d) / 24;
  const nitrifiers = quantity('N', 'nitrifierOxygen', nitrifiers_g_h, 'g_h');
  const solids = quantity('S', 'solidsOxygenHour', (load.feed_g_d * solidsOxygen.likely) / 24, 'g_h');
  const fishes = quantity('F', 'fishOxygen', (fishMass_kg * breathing.likely) / 1000, 'g_h');
  return [
    breathing.step('likely'),
    byHand(fishes, 'k × r ÷ 1000', [mass, rate], 'geometry'),
    byHand(
      nitrifiers,
      '4.57 × t ÷ 24',
      [quantity('t', 'nitrogenOfDay', load.tan_g_d, 'g_d')],
      oxygenPerNitrogen.source,
    ),
    byHand(
      solids,
      'f × s ÷ 24',
      [
        quantity('f', 'feed', load.feed_g_d, 'g_d'),
        quantity('s', 'solidsOxygen', solidsOxygen.likely, 'ratio'),
      ],
      solidsOxygen.source,
    ),
    byHand(gives, 'F + N + S', [fishes, nitrifiers, solids], 'geometry'),
  ];
}
