/** One reading, several ways to count it: as the whole molecule or as its nitrogen. */

/** How a test counts what it finds. */
export type NitrogenForm = 'N' | 'NH3' | 'NH4' | 'NO2' | 'NO3';

const nitrogen_g_mol = 14.007;
const hydrogen_g_mol = 1.008;
const oxygen_g_mol = 15.999;

const molecule: Readonly<Record<NitrogenForm, number>> = {
  N: nitrogen_g_mol,
  NH3: nitrogen_g_mol + 3 * hydrogen_g_mol,
  NH4: nitrogen_g_mol + 4 * hydrogen_g_mol,
  NO2: nitrogen_g_mol + 2 * oxygen_g_mol,
  NO3: nitrogen_g_mol + 3 * oxygen_g_mol,
};

/**
 * A reading counted in another form.
 * Reading × molar mass of the wanted form ÷ molar mass of the form it was read in.
 * @param reading_mg_L what the test reads, 0 or more
 * @param readAs the form in which the test counts
 * @param wanted the form that is wanted
 * @returns mg/L
 * @valid one nitrogen atom in each form
 * @throws RangeError below zero
 * @source molarMasses standard atomic weights
 * @example inForm_mg_L(1, 'N', 'NO2') // 3.284429214
 * @example inForm_mg_L(1, 'N', 'NH3') // 1.215892054
 */
export function inForm_mg_L(reading_mg_L: number, readAs: NitrogenForm, wanted: NitrogenForm): number {
  if (!(0 <= reading_mg_L)) throw new RangeError(`inForm_mg_L(${reading_mg_L})`);
  return (reading_mg_L * molecule[wanted]) / molecule[readAs];
}
