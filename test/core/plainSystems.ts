/** A plain system in round numbers, for tests that change one thing in it and look at what the plan says. */
import { planOf } from '../../src/core/plan/planOf.ts';
import type { Figure, Plan } from '../../src/core/plan/figure.ts';
import type { FishStock } from '../../src/core/fish.ts';
import type { Bed, Container, System, Vessel } from '../../src/core/system.ts';

export function box(length_mm: number, width_mm: number, depth_mm: number): Container {
  return { shape: 'box', length_mm, width_mm, depth_mm };
}

/** A square metre of water, 700 mm deep: 700 L. */
export const tank: Vessel = { container: box(1000, 1000, 800), count: 1, full_mm: 700, above_mm: 0 };

/** A square metre of media, wet to 300 mm: 300 L, of which 120 L are water (0.35 to 0.45 of it: 105 to 135 L). */
export const bed: Bed = {
  name: 'Long bed',
  container: box(1000, 1000, 360),
  count: 1,
  mode: 'siphon',
  media: {
    id: 'gravel',
    name: 'Gravel',
    void_frac: { low: 0.35, likely: 0.4, high: 0.45 },
    voidFrom: 'file',
    source: 'commonPractice',
  },
  mediaDepth_mm: 330,
  waterLine_mm: 300,
  drained_mm: 0,
  standpipeBore_mm: null,
  above_mm: 900,
};

/** Of half the size along and across and up to the rim of the tank: 175 L wet media, of which 113.75 L are stone. */
export const basket: Bed = {
  ...bed,
  name: 'Basket',
  mode: 'inTank',
  container: box(500, 500, 780),
  mediaDepth_mm: 780,
  waterLine_mm: 700,
  above_mm: 0,
};

export const tableFish: FishStock = {
  species: {
    id: 'pondFish',
    name: 'Pond fish',
    use: 'table',
    good_degC: { min: 20, max: 28 },
    alive_degC: { min: 8, max: 34 },
    noFeedBelow_degC: 15,
    callAbove_degC: 31,
    temperatureSource: 'fromMemory',
    noFeedSource: 'fromMemory',
    callAboveSource: 'fromMemory',
    limits: {
      tanMax_mg_L: 2,
      nitriteMax_mg_L: 1,
      nitrateMax_mg_L: 150,
      oxygenMin_mg_L: 5,
      pHMin: 6.5,
      pHMax: 8,
      source: 'fao589',
    },
  },
  present: 10,
  massNow_g: 200,
  massAdult_g: 500,
  keeperRation_frac: null,
};

export const ornamentalFish: FishStock = {
  ...tableFish,
  species: { ...tableFish.species, use: 'ornamental' },
};

export const plain: System = {
  id: 'plain',
  name: 'Plain',
  place: '',
  tank,
  sump: null,
  beds: [bed],
  pump: { flow_L_h: 900, intake_mm: 100 },
  fish: tableFish,
  spoon_g: 4,
  water: { pH: 7, now_degC: 24 },
};

export function planned(change: Partial<System>): Plan {
  return planOf({ ...plain, ...change });
}

export function figureOf(plan: Plan, key: string): Figure {
  const found = plan.figures[key];
  if (found === undefined) throw new Error(`there is no ${key}`);
  return found;
}

export function valueIn(plan: Plan, key: string): number | null {
  return figureOf(plan, key).value;
}

/** Codes of the notes of a figure, in their order. */
export function codesOf(plan: Plan, key: string): readonly string[] {
  return figureOf(plan, key).notes.map((note) => note.code);
}
