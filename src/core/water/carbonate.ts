/** The balance of carbon dioxide, bicarbonate and carbonate that sets the pH of fresh water. */

/** Milligrams of calcium carbonate that neutralise as much acid as a millimole of charge: half of 100.087. */
const perCharge_mg_mmol = 100.087 / 2;
const carbonDioxide_g_mol = 44.009;
const ends = { low: 2, high: 13 } as const;

function kelvinOf(water_degC: number, of: string): number {
  if (!(0 <= water_degC && water_degC <= 50)) throw new RangeError(`${of}(${water_degC} °C)`);
  return water_degC + 273.15;
}

/**
 * First acidity of carbon dioxide in water: the pH at which half of it is bicarbonate.
 * 356.3094 + 0.06091964 × T − 21834.37 ÷ T − 126.8339 × log T + 1684915 ÷ T², with T in kelvin.
 * @param water_degC 0 to 50
 * @returns about 6.3 to 6.6
 * @valid pure water; salt of ordinary tap water lowers it by some 0.03
 * @throws RangeError outside this range
 * @source plummerBusenberg1982 difference of its two equations, as the PHREEQC database holds them
 * @example pK1(25) // 6.35186415
 */
export function pK1(water_degC: number): number {
  const T = kelvinOf(water_degC, 'pK1');
  return 356.3094 + 0.06091964 * T - 21834.37 / T - 126.8339 * Math.log10(T) + 1684915 / T ** 2;
}

/**
 * Second acidity: the pH at which half of the bicarbonate is carbonate.
 * 107.8871 + 0.03252849 × T − 5151.79 ÷ T − 38.92561 × log T + 563713.9 ÷ T², with T in kelvin.
 * @param water_degC 0 to 50
 * @returns about 10.2 to 10.6
 * @valid pure water
 * @throws RangeError outside this range
 * @source plummerBusenberg1982 as the PHREEQC database holds it
 * @example pK2(25) // 10.32885438
 */
export function pK2(water_degC: number): number {
  const T = kelvinOf(water_degC, 'pK2');
  return 107.8871 + 0.03252849 * T - 5151.79 / T - 38.92561 * Math.log10(T) + 563713.9 / T ** 2;
}

/**
 * Ion product of water, as its negative logarithm.
 * 283.971 + 0.05069842 × T − 13323 ÷ T − 102.24447 × log T + 1119669 ÷ T², with T in kelvin.
 * @param water_degC 0 to 50
 * @returns about 13.3 to 14.9
 * @valid pure water
 * @throws RangeError outside this range
 * @source plummerBusenberg1982 as the PHREEQC database holds it for water
 * @example pKw(25) // 13.99953072
 */
export function pKw(water_degC: number): number {
  const T = kelvinOf(water_degC, 'pKw');
  return 283.971 + 0.05069842 * T - 13323 / T - 102.24447 * Math.log10(T) + 1119669 / T ** 2;
}

/** Shares of bicarbonate and carbonate in all carbon, and charge of the water itself in mmol/L. */
function speciesAt(pH: number, water_degC: number) {
  const H = 10 ** -pH;
  const K1 = 10 ** -pK1(water_degC);
  const K2 = 10 ** -pK2(water_degC);
  const all = H * H + K1 * H + K1 * K2;
  const water_mmol_L = (10 ** (pH - pKw(water_degC)) - H) * 1000;
  return { bicarbonate_frac: (K1 * H) / all, carbonate_frac: (K1 * K2) / all, water_mmol_L };
}

/**
 * All inorganic carbon of water with a known pH and alkalinity.
 * (Alkalinity − hydroxide + acid) ÷ (share of bicarbonate + 2 × share of carbonate).
 * @param pH 4 to 11
 * @param alkalinity_mg_L as calcium carbonate, 0 to 1000
 * @param water_degC 0 to 50
 * @returns mmol/L; 0 where the alkalinity is all hydroxide
 * @valid fresh water whose alkalinity is of carbonates: ammonia, phosphate and plant acids left out
 * @throws RangeError outside these ranges
 * @source plummerBusenberg1982 with the definition of alkalinity
 * @example inorganicCarbon_mmol_L(8, 100, 25) // 2.032479236
 */
export function inorganicCarbon_mmol_L(pH: number, alkalinity_mg_L: number, water_degC: number): number {
  if (!(4 <= pH && pH <= 11 && 0 <= alkalinity_mg_L && alkalinity_mg_L <= 1000)) {
    throw new RangeError(`inorganicCarbon_mmol_L(pH ${pH}, ${alkalinity_mg_L} mg/L)`);
  }
  const at = speciesAt(pH, water_degC);
  const carbonates = alkalinity_mg_L / perCharge_mg_mmol - at.water_mmol_L;
  return Math.max(0, carbonates) / (at.bicarbonate_frac + 2 * at.carbonate_frac);
}

/**
 * The pH of water with known alkalinity and inorganic carbon, closed off from the air.
 * The pH at which both together balance, found by halving.
 * @param alkalinity_mg_L as calcium carbonate, 0 to 1000
 * @param carbon_mmol_L all inorganic carbon, 0 or more
 * @param water_degC 0 to 50
 * @returns pH, 2 to 13
 * @valid as inorganicCarbon_mmol_L
 * @throws RangeError outside these ranges
 * @source plummerBusenberg1982 with the definition of alkalinity
 * @example pHOfCarbonates(100, inorganicCarbon_mmol_L(8, 100, 25), 25) // 8
 */
export function pHOfCarbonates(alkalinity_mg_L: number, carbon_mmol_L: number, water_degC: number): number {
  if (!(0 <= alkalinity_mg_L && alkalinity_mg_L <= 1000 && 0 <= carbon_mmol_L)) {
    throw new RangeError(`pHOfCarbonates(${alkalinity_mg_L} mg/L, ${carbon_mmol_L} mmol/L)`);
  }
  return whereAlkalinityIs(alkalinity_mg_L, (pH) => {
    const at = speciesAt(pH, water_degC);
    return carbon_mmol_L * (at.bicarbonate_frac + 2 * at.carbonate_frac) + at.water_mmol_L;
  });
}

/**
 * Carbon dioxide dissolved in water.
 * What of the inorganic carbon is neither bicarbonate nor carbonate, as CO2.
 * @param pH 4 to 11
 * @param alkalinity_mg_L as calcium carbonate, 0 to 1000
 * @param water_degC 0 to 50
 * @returns mg/L
 * @valid as inorganicCarbon_mmol_L
 * @throws RangeError outside these ranges
 * @source plummerBusenberg1982 with the definition of alkalinity
 * @example carbonDioxide_mg_L(7, 100, 25) // 19.75380667
 */
export function carbonDioxide_mg_L(pH: number, alkalinity_mg_L: number, water_degC: number): number {
  const at = speciesAt(pH, water_degC);
  const share = Math.max(0, 1 - at.bicarbonate_frac - at.carbonate_frac);
  return inorganicCarbon_mmol_L(pH, alkalinity_mg_L, water_degC) * share * carbonDioxide_g_mol;
}

/**
 * The pH of water with known alkalinity that is kept at a level of carbon dioxide.
 * The pH at which bicarbonate, carbonate and hydroxide beside this carbon dioxide make the alkalinity.
 * @param alkalinity_mg_L as calcium carbonate, 0 to 1000
 * @param dioxide_mg_L carbon dioxide, above 0
 * @param water_degC 0 to 50
 * @returns pH, 2 to 13
 * @valid a tank whose fish and air hold its carbon dioxide where it was
 * @throws RangeError outside these ranges
 * @source plummerBusenberg1982 with the definition of alkalinity
 * @example pHAtCarbonDioxide(100, carbonDioxide_mg_L(7, 100, 25), 25) // 7
 */
export function pHAtCarbonDioxide(alkalinity_mg_L: number, dioxide_mg_L: number, water_degC: number): number {
  if (!(0 <= alkalinity_mg_L && alkalinity_mg_L <= 1000 && 0 < dioxide_mg_L)) {
    throw new RangeError(`pHAtCarbonDioxide(${alkalinity_mg_L}, ${dioxide_mg_L})`);
  }
  const dioxide = dioxide_mg_L / carbonDioxide_g_mol;
  const K1 = 10 ** -pK1(water_degC);
  const K2 = 10 ** -pK2(water_degC);
  return whereAlkalinityIs(alkalinity_mg_L, (pH) => {
    const H = 10 ** -pH;
    return dioxide * (K1 / H) * (1 + (2 * K2) / H) + speciesAt(pH, water_degC).water_mmol_L;
  });
}

/** Alkalinity rises with pH in both balances, so halving finds the one place. */
function whereAlkalinityIs(alkalinity_mg_L: number, charge_mmol_L: (pH: number) => number): number {
  let { low, high }: { low: number; high: number } = ends;
  for (let i = 0; i < 48; i += 1) {
    const middle = (low + high) / 2;
    if (charge_mmol_L(middle) * perCharge_mg_mmol < alkalinity_mg_L) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
