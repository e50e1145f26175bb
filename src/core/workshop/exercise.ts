/**
 * Exercise systems for a class: a tank and a bed that nobody has, with numbers that a pencil can follow. The same seed
 * gives the same class again; neighbours have other numbers, and the limit that binds changes from sheet to sheet.
 */
import { mediaPerFish_L, ruleFish_g, tableFishTank_L } from '../constants.ts';
import { volume_L } from '../geometry/container.ts';
import { densityCap_kg_L, wholeCount } from '../stocking/limits.ts';
import type { Container } from '../system.ts';
import { shuffled } from './shuffle.ts';
import { steadyCounts } from './steadyCounts.ts';

/** For whom: what is asked, and how hard the numbers are. */
export const levels = ['primary', 'secondary', 'adults'] as const;
export type Level = (typeof levels)[number];

/** Which of the limits on fish is the least. */
export type Binding = 'fishByBed' | 'fishByDensity' | 'fishByTank';

export type Exercise = {
  readonly tank: Container;
  readonly full_mm: number;
  readonly bed: Container;
  readonly waterLine_mm: number;
  readonly mediaDepth_mm: number;
  readonly binds: Binding;
};

/** From the water up to the top of the media, and from there to the rim; of the tank, from the full line to its rim. */
const over_mm = { media: 50, bedRim: 50, tankRim: 100 } as const;

/** Fewer fish make no exercise. */
const leastFish = 4;
/** The lowest water of an exercise, as a share of the full tank. */
const leastLeft_frac = 0.6;

/** Which limit binds on which sheet, in turn. Children count by the bed, so their tanks carry more than their beds do. */
const turns: Readonly<Record<Level, readonly Binding[]>> = {
  primary: ['fishByBed'],
  secondary: ['fishByBed', 'fishByDensity', 'fishByBed', 'fishByDensity', 'fishByTank'],
  adults: ['fishByDensity', 'fishByBed', 'fishByTank', 'fishByBed', 'fishByDensity'],
};

/** So many sheets on either side have other numbers. */
const neighbours = 3;

/**
 * The exercises of a class, sheet by sheet.
 * Of all that suit the level, in an order that the seed gives, the next one that binds where this sheet shall bind,
 * whose litres none of the last three sheets have, and whose fish do not hang on a digit that is rounded away by hand.
 * @param level for whom
 * @param seed a whole number, 0 or more
 * @param count sheets, 0 or more
 * @param voids_frac the most water that the media holds, as a share of its volume; by it the plan reckons how far the tank falls
 * @returns as many exercises; where a class is larger than there are exercises, they come round again
 * @valid classes of any size
 * @source commonPractice
 */
export function exercises(
  level: Level,
  seed: number,
  count: number,
  voids_frac: number,
): readonly Exercise[] {
  const all = allOf(level, voids_frac);
  const isSteady = (one: Drawn): boolean => steadyCounts(one, voids_frac);
  const pools = new Map<Binding, Drawn[]>();
  const unsteady = new Set<Binding>();
  const those = (binds: Binding) => all.filter((one) => one.binds === binds);
  const chosen: Drawn[] = [];
  while (chosen.length < count) {
    const binds = turns[level][chosen.length % turns[level].length] ?? 'fishByBed';
    const left = pools.get(binds) ?? [];
    if (left.length <= neighbours) {
      left.push(...shuffled(those(binds), seed));
      if (!left.some(isSteady)) unsteady.add(binds);
    }
    pools.set(binds, left);
    const near = chosen.slice(-neighbours);
    const at = left.findIndex((one) => near.every((other) => differs(one, other)));
    const [next] = left.splice(Math.max(0, at), 1);
    if (next === undefined) break;
    // Looked at only when its turn comes, as there are tens of thousands; where none is steady, any will do.
    if (unsteady.has(binds) || isSteady(next)) chosen.push(next);
  }
  return chosen;
}

/** An exercise with its litres. */
type Drawn = Exercise & { readonly full_L: number; readonly wet_L: number };

function differs(one: Drawn, other: Drawn): boolean {
  return one.full_L !== other.full_L && one.wet_L !== other.wet_L;
}

/** Every exercise of a level. */
function allOf(level: Level, voids_frac: number): readonly Drawn[] {
  const { tanks, beds } = measures[level];
  // There are tens of thousands of pairs, so each vessel is worked out once.
  const allBeds = beds().map(withLitres);
  return tanks()
    .map(withLitres)
    .flatMap((tank) => allBeds.flatMap((bed) => suited(tank, bed, voids_frac)));
}

type Vessel = { readonly container: Container; readonly water_mm: number };
type Filled = Vessel & { readonly water_L: number };

function withLitres(vessel: Vessel): Filled {
  return { ...vessel, water_L: volume_L(vessel.container, vessel.water_mm) };
}

function suited(tank: Filled, bed: Filled, voids_frac: number): readonly Drawn[] {
  const { water_L: full_L } = tank;
  const { water_L: wet_L } = bed;
  const low_L = full_L - voids_frac * wet_L;
  const binds = bindingOf(full_L, low_L, wet_L);
  if (low_L < leastLeft_frac * full_L || binds === null) return [];
  const { container: tankIs, water_mm: full_mm } = tank;
  const { container: bedIs, water_mm: waterLine_mm } = bed;
  const mediaDepth_mm = waterLine_mm + over_mm.media;
  return [{ tank: tankIs, full_mm, bed: bedIs, waterLine_mm, mediaDepth_mm, binds, full_L, wet_L }];
}

/** The least limit; null where two are equal, or so few fish come out that the sheet is no use. */
function bindingOf(full_L: number, low_L: number, wet_L: number): Binding | null {
  const byBed = wholeCount(wet_L, mediaPerFish_L.value);
  if (byBed < leastFish) return null;
  if (full_L < tableFishTank_L.value) return 'fishByTank';
  const byDensity = wholeCount(densityCap_kg_L(full_L) * low_L * 1000, ruleFish_g.value);
  if (byDensity < leastFish || byBed === byDensity) return null;
  return byBed < byDensity ? 'fishByBed' : 'fishByDensity';
}

/** Every length from one to another, both counted. */
function steps(from: number, to: number, by: number): readonly number[] {
  return Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, at) => from + at * by);
}

function boxes(
  lengths: readonly number[],
  widths: readonly number[],
  waters: readonly number[],
  rim_mm: number,
) {
  return lengths.flatMap((length_mm) =>
    widths
      .filter((width_mm) => width_mm <= length_mm)
      .flatMap((width_mm) =>
        waters.map((water_mm): Vessel => {
          const depth_mm = water_mm + rim_mm;
          return { container: { shape: 'box', length_mm, width_mm, depth_mm }, water_mm };
        }),
      ),
  );
}

function drums(diameters: readonly number[], waters: readonly number[], rim_mm: number): readonly Vessel[] {
  return diameters.flatMap((diameter_mm) =>
    waters.map((water_mm): Vessel => {
      return { container: { shape: 'cylinder', diameter_mm, depth_mm: water_mm + rim_mm }, water_mm };
    }),
  );
}

/** Drums on their sides, cut a hand's breadth over the middle, with the water at the middle: a half of a circle to work with. */
function halfDrums(diameters: readonly number[], lengths: readonly number[]): readonly Vessel[] {
  return diameters.flatMap((diameter_mm) =>
    lengths.map((length_mm): Vessel => {
      const water_mm = diameter_mm / 2;
      const depth_mm = water_mm + over_mm.media + over_mm.bedRim;
      return { container: { shape: 'lyingCylinder', diameter_mm, length_mm, depth_mm }, water_mm };
    }),
  );
}

const bedRim_mm = over_mm.media + over_mm.bedRim;

/** What each level may be given. Boxes in whole decimetres for children; round ones only where π is known. */
const measures: Readonly<
  Record<Level, { readonly tanks: () => readonly Vessel[]; readonly beds: () => readonly Vessel[] }>
> = {
  primary: {
    tanks: () => boxes(steps(900, 1300, 100), steps(700, 1000, 100), steps(600, 800, 100), over_mm.tankRim),
    beds: () => boxes(steps(600, 1400, 100), steps(500, 1200, 100), steps(200, 300, 100), bedRim_mm),
  },
  secondary: {
    tanks: () => boxes(steps(700, 1300, 50), steps(600, 1000, 100), steps(500, 750, 50), over_mm.tankRim),
    beds: () => boxes(steps(500, 1400, 100), steps(400, 1200, 100), steps(200, 300, 50), bedRim_mm),
  },
  adults: {
    tanks: () => [
      ...boxes(steps(800, 1200, 100), steps(600, 1000, 100), steps(550, 750, 50), over_mm.tankRim),
      ...drums(steps(900, 1200, 50), steps(550, 750, 50), over_mm.tankRim),
    ],
    beds: () => [
      ...boxes(steps(600, 1400, 100), steps(450, 1250, 100), steps(200, 300, 50), bedRim_mm),
      ...halfDrums(steps(540, 600, 20), steps(700, 900, 50)),
    ],
  },
};
