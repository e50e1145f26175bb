/** What a keeper may add: buffer, salt against nitrite, and how to read a kit. The keeper's side only. */
import { waterChange_frac } from '../constants.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import { afterChanges_mg_L } from '../water/dilution.ts';
import { bufferDose_g, buffers, salt_g } from '../water/dosing.ts';
import { alkalinityUsed_g_d } from '../water/nitrogen.ts';
import { inForm_mg_L } from '../water/nitrogenForms.ts';
import { chloridePerNitrite } from '../water/waterConstants.ts';
import type { Figure, Table } from './figure.ts';
import type { Load } from './oxygenDemand.ts';
import { byHand, figure, quantity } from './write.ts';

const days = 7;
/** Nitrite readings that the salt table runs through, as NO2. Above the last one, salt is no help any more. */
const nitrites_mg_L = [0.5, 1, 2, 5, 10] as const;
/** Readings that the table of forms runs through. */
const readings_mg_L = [0.25, 0.5, 1, 2, 4] as const;

/**
 * Buffer of a week by the first product of the list, and salt for a milligram of nitrite.
 * @param system a checked system
 * @param systemWater_L all water
 * @param load the day's load; null gives no buffer
 * @returns bufferWeek_g and saltPerNitrite_g
 * @valid pure products
 * @source molarMasses, srac462
 */
export function dosingFigures(system: System, systemWater_L: number, load: Load): readonly Figure[] {
  return [...(load === null ? [] : [bufferFigure(load.tan_g_d)]), saltFigure(system, systemWater_L)];
}

function bufferFigure(tan_g_d: number): Figure {
  const used_g_d = alkalinityUsed_g_d(tan_g_d);
  const value = bufferDose_g(used_g_d * days, buffers[0].mass_g_mol, buffers[0].charges);
  return figure({
    key: 'bufferWeek_g',
    value,
    low: 0,
    high: value,
    unit: 'g',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('b', 'bufferWeek', value, 'g'),
        'k × 7 ÷ 50.0435 × M ÷ z',
        [
          quantity('k', 'alkalinityUsed', used_g_d, 'g_d'),
          quantity('M', 'bufferMass', buffers[0].mass_g_mol, 'g_mol'),
          quantity('z', 'bufferCharges', buffers[0].charges, 'ratio'),
        ],
        'molarMasses',
      ),
    ],
    notes: [
      { code: 'bufferSlowly', level: 'info', numbers: {}, source: 'fao589' },
      { code: 'bufferNotWithAmmonia', level: 'info', numbers: {}, source: 'emerson1975' },
      { code: 'bufferSodium', level: 'info', numbers: {}, source: 'fromMemory' },
      { code: 'bufferHydroxide', level: 'info', numbers: {}, source: 'fromMemory' },
    ],
  });
}

function saltFigure(system: System, systemWater_L: number): Figure {
  const value = salt_g(1, 0, chloridePerNitrite.value, systemWater_L);
  const chloride_mg_L = system.water.chloride_mg_L ?? null;
  const asNitrogen_g = salt_g(inForm_mg_L(1, 'N', 'NO2'), 0, chloridePerNitrite.value, systemWater_L);
  const note = (code: string, numbers: Note['numbers'] = {}): Note => ({
    code,
    level: 'info',
    numbers,
    source: chloridePerNitrite.source,
  });
  return figure({
    key: 'saltPerNitrite_g',
    value,
    unit: 'g',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('s', 'saltPerNitrite', value, 'g'),
        'R ÷ (35.453 ÷ 58.443) × A ÷ 1000',
        [
          quantity('R', 'chloridePerNitrite', chloridePerNitrite.value, 'ratio'),
          quantity('A', 'systemWater', systemWater_L, 'L'),
        ],
        chloridePerNitrite.source,
      ),
    ],
    notes: [
      note('nitriteForm', { asNO2_g: value, asNitrogen_g }),
      ...(chloride_mg_L === null ? [] : [note('chlorideThere', coveredBy(chloride_mg_L))]),
      note('saltStays'),
      note('saltNotForBass'),
      ...(system.fish ? [] : [note('saltOnlyWithFish')]),
    ],
  });
}

/** Nitrite that the chloride in the water already stands against. */
function coveredBy(chloride_mg_L: number): Note['numbers'] {
  return { chloride_mg_L, nitrite_mg_L: chloride_mg_L / chloridePerNitrite.value };
}

/**
 * Tables for the keeper: buffer by product, salt by nitrite reading, readings in their forms, changes.
 * @param systemWater_L all water
 * @param load the day's load; null gives no buffer table
 * @param chloride_mg_L chloride that is in the water already; null where nobody tested it
 * @returns tables; what several changes leave of a substance among them
 * @source molarMasses, srac462
 */
export function dosingTables(
  systemWater_L: number,
  load: Load,
  chloride_mg_L: number | null,
): readonly Table[] {
  return [
    ...(load === null ? [] : [bufferTable(load.tan_g_d)]),
    saltTable(systemWater_L, chloride_mg_L),
    formsTable(),
    leftTable(),
  ];
}

function bufferTable(tan_g_d: number): Table {
  const week_g = alkalinityUsed_g_d(tan_g_d) * days;
  return {
    key: 'bufferByProduct',
    columns: [
      { key: 'product', unit: 'ratio' },
      { key: 'perWeek', unit: 'g' },
    ],
    rows: buffers.map((one) => [one.key, bufferDose_g(week_g, one.mass_g_mol, one.charges)]),
  };
}

/** Both ways of counting the same reading side by side, so that nobody takes one for the other. */
function saltTable(systemWater_L: number, chloride_mg_L: number | null): Table {
  const salt = (nitrite_mg_L: number, there_mg_L: number): number =>
    salt_g(nitrite_mg_L, there_mg_L, chloridePerNitrite.value, systemWater_L);
  return {
    key: 'saltByNitrite',
    columns: [
      { key: 'nitriteAsNO2', unit: 'mg_L' },
      { key: 'nitriteAsN', unit: 'mg_L' },
      { key: 'saltWithoutChloride', unit: 'g' },
      { key: 'saltStillWanted', unit: 'g' },
    ],
    rows: nitrites_mg_L.map((one) => [
      one,
      inForm_mg_L(one, 'NO2', 'N'),
      salt(one, 0),
      chloride_mg_L === null ? null : salt(one, chloride_mg_L),
    ]),
  };
}

function formsTable(): Table {
  return {
    key: 'readingForms',
    columns: [
      { key: 'asNitrogen', unit: 'mg_L' },
      { key: 'asNH3', unit: 'mg_L' },
      { key: 'asNH4', unit: 'mg_L' },
      { key: 'asNO2', unit: 'mg_L' },
      { key: 'asNO3', unit: 'mg_L' },
    ],
    rows: readings_mg_L.map((one) => [
      one,
      ...(['NH3', 'NH4', 'NO2', 'NO3'] as const).map((form) => inForm_mg_L(one, 'N', form)),
    ]),
  };
}

/** What is left of 100 mg/L of anything after several changes with water that holds none of it. */
function leftTable(): Table {
  const left = (share_frac: number, times: number): number => afterChanges_mg_L(100, 0, share_frac, times);
  return {
    key: 'leftAfterChanges',
    columns: [
      { key: 'changes', unit: 'ratio' },
      { key: 'leftByQuarters', unit: 'mg_L' },
      { key: 'leftByTenths', unit: 'mg_L' },
    ],
    rows: [1, 2, 3, 4, 5, 6].map((times) => [
      times,
      left(waterChange_frac.quarter, times),
      left(waterChange_frac.tenth, times),
    ]),
  };
}
