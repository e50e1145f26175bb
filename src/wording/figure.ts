/** A figure in words: its name, and its value or the range in which it lies. */
import type { Figure } from '../core/plan/figure.ts';
import { type Catalogue, say } from './catalogue.ts';
import { amount, range, type UnitSystem } from './quantity.ts';

/** The name of a figure; a bed's figure says which bed, where there are several. */
export function figureName(key: string, beds: number, catalogue: Catalogue): string {
  const ofBed = /^bed(\d+)\.(.+)$/.exec(key);
  if (ofBed === null) return say(catalogue, `figures.${key}`);
  const name = say(catalogue, `figures.${ofBed[2]}`);
  return beds === 1 ? name : say(catalogue, 'figures.ofBed', { name, number: ofBed[1] ?? '' });
}

/** The value in the reader's units, or the range in which it lies, rounded to the safe side. */
export function figureValue(figure: Figure, catalogue: Catalogue, units: UnitSystem): string {
  const { value, low, high, unit, safeSide } = figure;
  if (value === null) return say(catalogue, 'words.unknown');
  if (low === undefined || high === undefined || low === high) return amount(value, unit, safeSide, units);
  return range({ low, high }, unit, safeSide, units, say(catalogue, 'words.to'));
}
