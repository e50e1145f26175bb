/** Grams of what a keeper may add, each by its own chemistry. Never in class, never by children or sitters. */

/** Half a mole of calcium carbonate neutralises one charge. */
const perCharge_g = 100.087 / 2;
/** A mole of chlorine as the tests count it, Cl2. */
const chlorine_g_mol = 70.906;
const chlorideOfSalt_frac = 35.453 / 58.443;

/** What raises alkalinity: grams of a mole, and how many acids a mole neutralises. */
export type Buffer = { readonly key: string; readonly mass_g_mol: number; readonly charges: number };

export const buffers: readonly [Buffer, ...Buffer[]] = [
  { key: 'potassiumBicarbonate', mass_g_mol: 100.115, charges: 1 },
  { key: 'sodiumBicarbonate', mass_g_mol: 84.007, charges: 1 },
  { key: 'calciumCarbonate', mass_g_mol: 100.087, charges: 2 },
  { key: 'calciumHydroxide', mass_g_mol: 74.093, charges: 2 },
];

/**
 * Grams of a buffer that make up for alkalinity.
 * Alkalinity ÷ 50.04 × molar mass ÷ charges.
 * @param alkalinity_g as calcium carbonate, 0 or more
 * @param mass_g_mol molar mass of the pure product, above 0
 * @param charges acids that a mole neutralises, 1 or more
 * @returns g of the pure product
 * @valid all of it dissolves: calcium carbonate does so slowly, and only below pH 7 or so
 * @throws RangeError outside these ranges
 * @source molarMasses standard atomic weights
 * @example bufferDose_g(100.087, 84.007, 1) // 168.014
 */
export function bufferDose_g(alkalinity_g: number, mass_g_mol: number, charges: number): number {
  if (!(0 <= alkalinity_g && 0 < mass_g_mol && 1 <= charges)) {
    throw new RangeError(`bufferDose_g(${alkalinity_g}, ${mass_g_mol}, ${charges})`);
  }
  return ((alkalinity_g / perCharge_g) * mass_g_mol) / charges;
}

/**
 * Salt that brings chloride to its ratio over nitrite.
 * (Ratio × nitrite as NO2 − chloride that is there) ÷ 0.6066, times the water; none where there is enough.
 * @param nitrite_mg_L as NO2, not as nitrogen, 0 or more
 * @param chloride_mg_L chloride that is there, 0 or more
 * @param ratio chloride to nitrite, above 0
 * @param water_L all water of the system, 0 or more
 * @returns g of pure sodium chloride, without additives
 * @valid fish whose gills take chloride before nitrite; not bass and sunfish
 * @throws RangeError outside these ranges
 * @source srac462 the ratio; molarMasses for the share of chloride
 * @example salt_g(2, 10, 10, 500) // 8.242320819
 */
export function salt_g(nitrite_mg_L: number, chloride_mg_L: number, ratio: number, water_L: number): number {
  if (!(0 <= nitrite_mg_L && 0 <= chloride_mg_L && 0 < ratio && 0 <= water_L)) {
    throw new RangeError(`salt_g(${nitrite_mg_L}, ${chloride_mg_L}, ${ratio}, ${water_L})`);
  }
  return (Math.max(0, ratio * nitrite_mg_L - chloride_mg_L) / chlorideOfSalt_frac / 1000) * water_L;
}

/** What binds chlorine: grams of a mole, and how many moles one mole of chlorine takes at the most. */
export type Dechlorinator = {
  readonly key: string;
  readonly mass_g_mol: number;
  readonly molesPerChlorine: number;
};

/** Thiosulfate binds up to four chlorines, but counts on half of one: then none is left over. */
export const dechlorinators: readonly [Dechlorinator, ...Dechlorinator[]] = [
  { key: 'thiosulfateCrystals', mass_g_mol: 248.18, molesPerChlorine: 2 },
  { key: 'ascorbicAcid', mass_g_mol: 176.12, molesPerChlorine: 1 },
  { key: 'sodiumAscorbate', mass_g_mol: 198.11, molesPerChlorine: 1 },
];

/**
 * Grams of a product that bind the chlorine of new water.
 * Chlorine × water × molar mass × moles for one of chlorine ÷ 70.906.
 * @param chlorine_mg_L total chlorine of the new water, as Cl2, 0 or more
 * @param water_L new water, 0 or more
 * @param mass_g_mol molar mass of the pure product, above 0
 * @param molesPerChlorine moles of the product for one of chlorine, above 0
 * @returns g of the pure product
 * @valid ends only when the test reads zero; takes no ammonia away
 * @throws RangeError outside these ranges
 * @source molarMasses and the reactions
 * @example dechlorinator_g(1, 100, 176.12, 1) // 0.24838518603
 */
export function dechlorinator_g(
  chlorine_mg_L: number,
  water_L: number,
  mass_g_mol: number,
  molesPerChlorine: number,
): number {
  if (!(0 <= chlorine_mg_L && 0 <= water_L && 0 < mass_g_mol && 0 < molesPerChlorine)) {
    throw new RangeError(`dechlorinator_g(${chlorine_mg_L}, ${water_L}, ${mass_g_mol})`);
  }
  return ((chlorine_mg_L * water_L) / 1000 / chlorine_g_mol) * mass_g_mol * molesPerChlorine;
}

/** What starts nitrifiers without fish: grams of nitrogen in a gram. */
export const ammoniaProducts = [
  { key: 'ammoniumChloride', nitrogen_frac: 14.007 / 53.491 },
  { key: 'ammoniaWater5', nitrogen_frac: (0.05 * 14.007) / 17.031 },
  { key: 'ammoniaWater10', nitrogen_frac: (0.1 * 14.007) / 17.031 },
] as const;

/**
 * Grams of an ammonia product that bring the water of a system to a level.
 * Water × level ÷ share of nitrogen.
 * @param water_L all water of the system, 0 or more
 * @param wanted_mg_L total ammonia, as N, 0 or more
 * @param nitrogen_frac nitrogen in a gram of the product, above 0 to 0.83
 * @returns g of the product
 * @valid no fish in the water; product without soap or scent
 * @throws RangeError outside these ranges
 * @source molarMasses standard atomic weights
 * @example cyclingDose_g(500, 2, 14.007 / 53.491) // 3.818876276
 */
export function cyclingDose_g(water_L: number, wanted_mg_L: number, nitrogen_frac: number): number {
  if (!(0 <= water_L && 0 <= wanted_mg_L && 0 < nitrogen_frac && nitrogen_frac <= 0.83)) {
    throw new RangeError(`cyclingDose_g(${water_L}, ${wanted_mg_L}, ${nitrogen_frac})`);
  }
  return ((wanted_mg_L / 1000) * water_L) / nitrogen_frac;
}
