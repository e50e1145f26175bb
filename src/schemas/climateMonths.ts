/** What of a climate the crops feel. */
import type { ClimateFile } from './climate.ts';

/** Means and nights of the twelve months, as the crops feel them. */
export function monthsOf({ min_degC, max_degC }: Pick<ClimateFile, 'min_degC' | 'max_degC'>): {
  readonly mean_degC: readonly number[];
  readonly night_degC: readonly number[];
} {
  const mean_degC = min_degC.map((min, month) => (min + (max_degC[month] ?? min)) / 2);
  return { mean_degC, night_degC: min_degC };
}
