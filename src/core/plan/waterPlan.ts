/** Limits of the readings, the top-up that is still normal, and the litres of a water change. */
import { commonTan_mg_L, dailyLoss_frac, unionised_mg_L, waterChange_frac } from '../constants.ts';
import type { Note } from '../note.ts';
import type { Species } from '../fish.ts';
import type { System } from '../system.ts';
import { tanAtUnionised_mg_L, unionised_frac } from '../water/ammonia.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, lookup, quantity } from './write.ts';

/**
 * Top-up limit, water change in two sizes, and the limits for the fish that are there.
 * @param system a checked system
 * @param systemWater_L water of tank and beds together
 * @returns figures; the readings only where fish were chosen
 * @valid fresh water
 * @source fao589 sections 3.3 to 3.4; emerson1975 and ufIfasFa16 for ammonia
 */
export function waterFigures(system: System, systemWater_L: number): readonly Figure[] {
  const species = system.fish?.species;
  return [
    topUp(systemWater_L),
    change('waterChange_L', systemWater_L, waterChange_frac.quarter),
    change('smallChange_L', systemWater_L, waterChange_frac.tenth),
    ...(species ? readings(system, species) : []),
  ];
}

function topUp(systemWater_L: number): Figure {
  const value = systemWater_L * dailyLoss_frac.high;
  return figure({
    key: 'topUpLimit_L_d',
    value,
    low: systemWater_L * dailyLoss_frac.low,
    high: value,
    unit: 'L_d',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('t', 'topUpLimit', value, 'L_d'),
        'A × x',
        [
          quantity('A', 'systemWater', systemWater_L, 'L'),
          quantity('x', 'dailyLoss', dailyLoss_frac.high, 'frac'),
        ],
        dailyLoss_frac.source,
      ),
    ],
  });
}

function change(key: 'waterChange_L' | 'smallChange_L', systemWater_L: number, share: number): Figure {
  const value = systemWater_L * share;
  return figure({
    key,
    value,
    unit: 'L',
    safeSide: 'down',
    confidence: 'rule',
    steps: [
      byHand(
        quantity('c', key.replace('_L', ''), value, 'L'),
        'A × x',
        [quantity('A', 'systemWater', systemWater_L, 'L'), quantity('x', 'changeShare', share, 'frac')],
        waterChange_frac.source,
      ),
    ],
  });
}

function readings(system: System, species: Species): readonly Figure[] {
  const { limits } = species;
  const one = (key: string, value: number, unit: 'mg_L' | 'pH', safeSide: 'up' | 'down'): Figure =>
    figure({
      key,
      value,
      unit,
      safeSide,
      confidence: 'estimate',
      steps: [lookup(quantity('x', key.replace('_mg_L', ''), value, unit), limits.source)],
    });
  return [
    tanLimit(system, species),
    one('nitriteMax_mg_L', limits.nitriteMax_mg_L, 'mg_L', 'down'),
    one('nitrateMax_mg_L', limits.nitrateMax_mg_L, 'mg_L', 'down'),
    one('oxygenMin_mg_L', limits.oxygenMin_mg_L, 'mg_L', 'up'),
    one('pHMin', limits.pHMin, 'pH', 'up'),
    one('pHMax', limits.pHMax, 'pH', 'down'),
  ];
}

/** The smallest of the common limit, the kind's own, and the one from un-ionised ammonia at this pH and warmth. */
function tanLimit(system: System, species: Species): Figure {
  const pH = system.water.pH ?? species.limits.pHMax;
  const water_degC = Math.max(system.water.now_degC ?? species.good_degC.max, species.good_degC.max);
  const share = unionised_frac(pH, water_degC);
  const byUnionised = tanAtUnionised_mg_L(unionised_mg_L.value, pH, water_degC);
  const kind = species.limits.tanMax_mg_L;
  const value = Math.min(commonTan_mg_L.value, kind, byUnionised);
  const solved = byHand(
    quantity('u', 'tanByUnionised', byUnionised, 'mg_L'),
    'a ÷ y',
    [
      quantity('a', 'unionisedMax', unionised_mg_L.value, 'mg_L'),
      quantity('y', 'unionisedShare', share, 'frac'),
    ],
    unionised_mg_L.source,
  );
  const least: Step = {
    kind: 'leastOf',
    gives: quantity('x', 'tanMax', value, 'mg_L'),
    formula: 'min(c; s; u)',
    symbols: [
      quantity('c', 'tanCommon', commonTan_mg_L.value, 'mg_L'),
      quantity('s', 'tanKind', kind, 'mg_L'),
      quantity('u', 'tanByUnionised', byUnionised, 'mg_L'),
    ],
    byHand: 'yes',
    source: commonTan_mg_L.source,
  };
  const at: Note = {
    code: system.water.pH === null ? 'tanAtWorstPH' : 'tanAtPH',
    level: 'info',
    numbers: { pH, water_degC },
    source: 'emerson1975',
  };
  return figure({
    key: 'tanMax_mg_L',
    value,
    unit: 'mg_L',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [unionisedStep(share, pH, water_degC), solved, least],
    notes: [at],
  });
}

function unionisedStep(share: number, pH: number, water_degC: number): Step {
  return {
    ...lookup(quantity('y', 'unionisedShare', share, 'frac'), 'emerson1975'),
    kind: 'formula',
    formula: '1 ÷ (1 + 10^(0.09018 + 2729.92 ÷ (T + 273.15) − p))',
    symbols: [quantity('p', 'pH', pH, 'pH'), quantity('T', 'waterTemperature', water_degC, 'degC')],
  };
}
