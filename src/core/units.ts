/** Litres of a US gallon: 231 cubic inches, by definition. */
export const gallon_L = 3.785411784;

/**
 * The closed list of unit suffixes. A name that carries a figure ends in one of them after an underscore;
 * a house test reads every name in the project and refuses any other suffix.
 */
export const unitSuffixes = [
  'mm',
  'mm2',
  'm',
  'm2',
  'L',
  'L_h',
  'g',
  'kg',
  'g_d',
  'kg_m3',
  'mg_L',
  'kg_L',
  'm_s2',
  'L_d',
  'frac',
  'degC',
  'degC_d',
  'd',
  'g_L',
  'pt',
  's',
  'm_s',
  'm2_s',
  'min',
  'W',
  'kWh_d',
  'kg_m2',
  'g_h',
  'L_min',
  'mg_kg_h',
  'g_m2_d',
  'm2_m3',
  'g_mol',
  'mmol_L',
  'mg_mmol',
  'h',
  'week',
  'weeks',
] as const;

export type Unit =
  | (typeof unitSuffixes)[number]
  | 'dm'
  | 'fish'
  | 'spoons'
  | 'months'
  | 'plants'
  | 'money'
  | 'ratio'
  | 'pH';
