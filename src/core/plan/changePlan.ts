/** A water change worked through before anybody pours: pH, free ammonia, the largest step, and chlorine. */
import { unionised_mg_L, waterChange_frac } from '../constants.ts';
import type { Note } from '../note.ts';
import type { System, TapWater } from '../system.ts';
import { carbonDioxide_mg_L } from '../water/carbonate.ts';
import { largestChange_frac, type Mix, mixOf, unionisedOfMix_mg_L, type Water } from '../water/waterMix.ts';
import { ammoniaOfChloramine, largestShare_frac, pHStep } from '../water/waterConstants.ts';
import { chlorineFigures } from './chlorinePlan.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/** The two waters of a change, and where the tank's ammonia was not read, the most that its card allows. */
type Waters = { readonly tank: Water; readonly tap: Water; readonly ammonia: 'read' | 'mostAllowed' };

/**
 * What a change would do, for the quarter that the card names, and the largest one that does no harm.
 * @param system a checked system
 * @param systemWater_L all water
 * @param tanMax_mg_L most total ammonia that the readings table allows; null without fish
 * @returns figures; one without value and the reason, where readings are missing
 * @valid as mixOf; fresh water, 0 to 50 °C
 * @source plummerBusenberg1982, emerson1975
 */
export function changeFigures(
  system: System,
  systemWater_L: number,
  tanMax_mg_L: number | null,
): readonly Figure[] {
  const chlorine = chlorineFigures(system.tap ?? null, systemWater_L * waterChange_frac.quarter);
  const waters = watersOf(system, tanMax_mg_L);
  if (waters === null)
    return [noFigure('largestChange_frac', 'frac', says('changeNeedsReadings', 'info', {})), ...chlorine];
  const quarter = mixOf(waters.tank, waters.tap, waterChange_frac.quarter);
  const largest = largestChange_frac(waters.tank, waters.tap, {
    unionisedMax_mg_L: unionised_mg_L.value,
    pHStep: pHStep.value,
    most_frac: largestShare_frac.value,
  });
  return [
    dioxideFigure(waters.tank),
    pHFigure('mixPH', quarter.pH, 'mixPH'),
    pHFigure('mixSettledPH', quarter.settledPH, 'mixSettles'),
    unionisedFigure(waters, quarter),
    largestFigure(waters, quarter, largest),
    litresFigure(largest, systemWater_L),
    ...chlorine,
  ];
}

function says(code: string, level: Note['level'], numbers: Note['numbers']): Note {
  return { code, level, numbers, source: 'plummerBusenberg1982' };
}

function watersOf(system: System, tanMax_mg_L: number | null): Waters | null {
  const { pH, now_degC, alkalinity_mg_L, tan_mg_L } = system.water;
  const tap = system.tap ?? null;
  if (tap === null || pH === null || now_degC === null || now_degC < 0 || alkalinity_mg_L == null)
    return null;
  const read = tan_mg_L ?? null;
  return {
    tank: { pH, alkalinity_mg_L, water_degC: now_degC, tan_mg_L: read ?? tanMax_mg_L ?? 0 },
    tap: { ...tap, tan_mg_L: ammoniaOf(tap) },
    ammonia: read === null ? 'mostAllowed' : 'read',
  };
}

/** What chloramine sets free when its chlorine is bound. */
function ammoniaOf(tap: TapWater): number {
  return tap.disinfectant === 'chloramine' ? (tap.chlorine_mg_L ?? 0) * ammoniaOfChloramine.value : 0;
}

function computed(sign: string, term: string, value: number, unit: Figure['unit'], source: string): Step {
  return {
    kind: 'simulated',
    gives: quantity(sign, term, value, unit),
    formula: '',
    symbols: [],
    byHand: 'no',
    source,
  };
}

function dioxideFigure(tank: Water): Figure {
  const value = carbonDioxide_mg_L(tank.pH, tank.alkalinity_mg_L, tank.water_degC);
  return figure({
    key: 'carbonDioxide_mg_L',
    value,
    unit: 'mg_L',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [computed('d', 'carbonDioxide', value, 'mg_L', 'plummerBusenberg1982')],
    notes: [says('carbonDioxideFrom', 'info', { pH: tank.pH, alkalinity_mg_L: tank.alkalinity_mg_L })],
  });
}

function pHFigure(key: 'mixPH' | 'mixSettledPH', value: number, code: string): Figure {
  return figure({
    key,
    value,
    unit: 'pH',
    safeSide: 'nearest',
    confidence: 'estimate',
    steps: [computed('p', key, value, 'pH', 'plummerBusenberg1982')],
    notes: [says(code, 'info', { share_frac: waterChange_frac.quarter })],
  });
}

function unionisedFigure(waters: Waters, quarter: Mix): Figure {
  const value = unionisedOfMix_mg_L(quarter);
  const before_mg_L = unionisedOfMix_mg_L(mixOf(waters.tank, waters.tap, 0));
  const numbers = { tan_mg_L: waters.tank.tan_mg_L, before_mg_L };
  const over = says('mixPoisons', 'stop', { value_mg_L: value, limit_mg_L: unionised_mg_L.value });
  return figure({
    key: 'mixUnionised_mg_L',
    value,
    unit: 'mg_L',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [computed('u', 'mixUnionised', value, 'mg_L', 'emerson1975')],
    notes: [
      says(waters.ammonia === 'read' ? 'mixAmmoniaRead' : 'mixAmmoniaMost', 'info', numbers),
      ...(value > Math.max(unionised_mg_L.value, before_mg_L) ? [over] : []),
    ],
  });
}

function largestFigure(waters: Waters, quarter: Mix, value: number): Figure {
  const { tank, tap } = waters;
  const numbers = { tankPH: tank.pH, tapPH: tap.pH, mixPH: quarter.pH, largest_frac: value };
  const small = says(value === 0 ? 'noChangeNow' : 'smallSteps', 'caution', numbers);
  return figure({
    key: 'largestChange_frac',
    value,
    unit: 'frac',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [computed('x', 'largestChange', value, 'frac', 'plummerBusenberg1982')],
    notes: [
      says('changeLimits', 'info', { pHStep: pHStep.value, limit_mg_L: unionised_mg_L.value }),
      ...(value < waterChange_frac.quarter ? [small] : []),
    ],
  });
}

function litresFigure(largest: number, systemWater_L: number): Figure {
  const value = systemWater_L * largest;
  return figure({
    key: 'largestChange_L',
    value,
    unit: 'L',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('c', 'largestChangeLitres', value, 'L'),
        'A × x',
        [quantity('A', 'systemWater', systemWater_L, 'L'), quantity('x', 'largestChange', largest, 'frac')],
        'plummerBusenberg1982',
      ),
    ],
    notes: [says('changeFeedFirst', 'info', {})],
  });
}
