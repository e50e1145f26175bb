/** The first weeks without fish: how much ammonia, how many weeks, how many fish first. */
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import { unionised_frac } from '../water/ammonia.ts';
import { ammoniaProducts, cyclingDose_g } from '../water/dosing.ts';
import { inForm_mg_L } from '../water/nitrogenForms.ts';
import {
  cyclingMost_mg_L,
  cyclingStart_mg_L,
  firstFish_frac,
  nitriteOxidiserSlows_mg_L,
  nitrifiersSlowBelow_degC,
} from '../water/waterConstants.ts';
import type { Figure } from './figure.ts';
import { cyclingWeeks } from './startUpTables.ts';
import { byHand, figure, lookup, noFigure, quantity } from './write.ts';

/**
 * Start-up without fish.
 * @param system a checked system
 * @param systemWater_L all water
 * @param fishPlanned fish that the plan carries; null where there is no number
 * @returns cyclingDose_g, doseUnionised_mg_L, cyclingWeeks, firstFish
 * @valid an empty, chlorine-free system with everything running; adults only
 * @source fao589, kentuckyAquaponics2021; targets fromMemory
 */
export function startUpFigures(
  system: System,
  systemWater_L: number,
  fishPlanned: number | null,
): readonly Figure[] {
  if ((system.fish?.present ?? 0) > 0) {
    return [noFigure('cyclingDose_g', 'g', says('noAmmoniaWithFish', 'info', {}))];
  }
  return [
    doseFigure(systemWater_L),
    ...doseUnionised(system),
    weeksFigure(system),
    ...firstFishFigures(fishPlanned),
  ];
}

function says(code: string, level: Note['level'], numbers: Note['numbers'], source = 'fromMemory'): Note {
  return { code, level, numbers, source };
}

function doseFigure(systemWater_L: number): Figure {
  const [salt] = ammoniaProducts;
  const value = cyclingDose_g(systemWater_L, cyclingStart_mg_L.value, salt.nitrogen_frac);
  return figure({
    key: 'cyclingDose_g',
    value,
    unit: 'g',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('g', 'cyclingDose', value, 'g'),
        'A × c ÷ 1000 ÷ n',
        [
          quantity('A', 'systemWater', systemWater_L, 'L'),
          quantity('c', 'cyclingStart', cyclingStart_mg_L.value, 'mg_L'),
          quantity('n', 'nitrogenShare', salt.nitrogen_frac, 'frac'),
        ],
        'molarMasses',
      ),
    ],
    notes: [
      says('doseAdultsOnly', 'info', {}),
      says('doseStops', 'info', { most_mg_L: cyclingMost_mg_L.value }),
      says('startUpIsNotRunning', 'info', {}),
    ],
  });
}

/** Free ammonia of the dose slows the second kind of nitrifier. */
function doseUnionised(system: System): readonly Figure[] {
  const { pH, now_degC } = system.water;
  if (pH === null || now_degC === null || now_degC < 0) return [];
  const share = unionised_frac(pH, now_degC);
  const ammonia_mg_L = inForm_mg_L(cyclingStart_mg_L.value, 'N', 'NH3');
  const value = ammonia_mg_L * share;
  const { low, high, source } = nitriteOxidiserSlows_mg_L;
  const numbers = { low_mg_L: low, high_mg_L: high };
  const ammonia = quantity('A', 'ammoniaOfDose', ammonia_mg_L, 'mg_L');
  return [
    figure({
      key: 'doseUnionised_mg_L',
      value,
      unit: 'mg_L',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [
        byHand(
          ammonia,
          'c × 17.031 ÷ 14.007',
          [quantity('c', 'cyclingStart', cyclingStart_mg_L.value, 'mg_L')],
          'molarMasses',
        ),
        byHand(
          quantity('u', 'doseUnionised', value, 'mg_L'),
          'A × y',
          [ammonia, quantity('y', 'unionisedShare', share, 'frac')],
          'emerson1975',
        ),
      ],
      notes: [
        value < low
          ? says('doseIsMild', 'info', numbers, source)
          : says('doseSlows', 'caution', numbers, source),
      ],
    }),
  ];
}

function weeksFigure(system: System): Figure {
  const range = cyclingWeeks(system.water.now_degC);
  if (range === null) {
    const numbers = { below_degC: nitrifiersSlowBelow_degC.value };
    return noFigure('cyclingWeeks', 'weeks', says('cyclingTooCold', 'info', numbers, 'fao589'));
  }
  const { low, high } = range;
  return figure({
    key: 'cyclingWeeks',
    value: high,
    low,
    high,
    unit: 'weeks',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [lookup(quantity('w', 'cyclingWeeks', high, 'weeks'), 'kentuckyAquaponics2021')],
    notes: [says('cyclingBySign', 'info', {}, 'fao589'), says('cyclingOrder', 'info', {}, 'fao589')],
  });
}

function firstFishFigures(fishPlanned: number | null): readonly Figure[] {
  if (fishPlanned === null || fishPlanned === 0) return [];
  const value = Math.floor(fishPlanned * firstFish_frac.value * (1 + 1e-9));
  return [
    figure({
      key: 'firstFish',
      value,
      unit: 'fish',
      safeSide: 'down',
      confidence: 'rule',
      steps: [
        byHand(
          quantity('n', 'firstFish', value, 'fish'),
          'floor(p × s)',
          [
            quantity('p', 'fishPlanned', fishPlanned, 'fish'),
            quantity('s', 'firstShare', firstFish_frac.value, 'frac'),
          ],
          firstFish_frac.source,
        ),
      ],
      notes: [
        says('firstFishAfter', 'info', {}, 'kentuckyAquaponics2021'),
        says('stockingStages', 'info', {}),
      ],
    }),
  ];
}
