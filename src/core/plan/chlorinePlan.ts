/** Chlorine and chloramine of new water: what binds them, by product, and the test that has the last word. */
import type { Note } from '../note.ts';
import type { TapWater } from '../system.ts';
import { dechlorinator_g, dechlorinators } from '../water/dosing.ts';
import { ammoniaOfChloramine } from '../water/waterConstants.ts';
import type { Figure, Table } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * Thiosulfate crystals for the new water of a change.
 * @param tap the tap water; null where nothing is known of it
 * @param change_L new water
 * @returns dechlorinator_g, without value where no chlorine was tested
 * @valid pure crystals (pentahydrate); a liquid product by its own label
 * @source molarMasses
 */
export function chlorineFigures(tap: TapWater | null, change_L: number): readonly Figure[] {
  if (tap === null) return [];
  const says = (code: string, numbers: Note['numbers'] = {}): Note => ({
    code,
    level: 'info',
    numbers,
    source: 'awwaFieldGuide',
  });
  const zero = says('chlorineMustReadZero');
  const freed = says('chloramineStays', {
    freed_mg_L: (tap.chlorine_mg_L ?? 0) * ammoniaOfChloramine.value,
  });
  const chloramine = tap.disinfectant === 'chloramine' || tap.disinfectant === 'unknown' ? [freed] : [];
  if (tap.chlorine_mg_L === null) return [noFigure('dechlorinator_g', 'g', says('chlorineNotTested'))];
  const [crystals] = dechlorinators;
  const value = dechlorinator_g(tap.chlorine_mg_L, change_L, crystals.mass_g_mol, crystals.molesPerChlorine);
  return [
    figure({
      key: 'dechlorinator_g',
      value,
      unit: 'g',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [
        byHand(
          quantity('g', 'dechlorinator', value, 'g'),
          'c × V ÷ 1000 ÷ 70.906 × M × z',
          [
            quantity('c', 'chlorine', tap.chlorine_mg_L, 'mg_L'),
            quantity('V', 'waterChange', change_L, 'L'),
            quantity('M', 'dechlorinatorMass', crystals.mass_g_mol, 'g_mol'),
            quantity('z', 'dechlorinatorMoles', crystals.molesPerChlorine, 'ratio'),
          ],
          'molarMasses',
        ),
      ],
      notes: [zero, says('pipelineFigureTooSmall'), ...chloramine],
    }),
  ];
}

/**
 * Grams of each product for the new water of a change.
 * @param tap the tap water; null where nothing is known of it
 * @param change_L new water
 * @returns one table, or none where no chlorine was tested
 * @source molarMasses
 */
export function chlorineTables(tap: TapWater | null, change_L: number): readonly Table[] {
  const chlorine_mg_L = tap?.chlorine_mg_L ?? null;
  if (chlorine_mg_L === null) return [];
  return [
    {
      key: 'dechlorinatorByProduct',
      columns: [
        { key: 'product', unit: 'ratio' },
        { key: 'perChange', unit: 'g' },
      ],
      rows: dechlorinators.map((one) => [
        one.key,
        dechlorinator_g(chlorine_mg_L, change_L, one.mass_g_mol, one.molesPerChlorine),
      ]),
    },
  ];
}
