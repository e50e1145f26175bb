/** The air pump that grown fish want, and how many stones. */
import type { Note } from '../note.ts';
import type { FishStock } from '../fish.ts';
import type { System } from '../system.ts';
import { airPerLitre_L_min, bubbleShare_frac } from '../water/waterConstants.ts';
import { stones_g_h } from './airSupply.ts';
import type { Conditions } from './conditions.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, noFigure, numberOf, quantity } from './write.ts';

/** Air that one stone makes into bubbles, L/min. From memory. */
const perStone_L_min = 4;
/** One stone can clog unseen. */
export const leastStones = 2;

/**
 * Air pump and stones for the fish present, once they are grown.
 * By oxygen or by the litres of the tank, whichever wants more air.
 * @param system a system with fish
 * @param fish its fish, at least one
 * @param tankFull_L volume of the fish tank at its full line
 * @param at the conditions at the warm end
 * @param demand the demand of today
 * @returns airPump_L_min and airStones
 * @valid as fieldTransfer_g_h
 * @source asceAeration; the air of a litre and of a stone fromMemory
 */
export function airPumpFigures(
  system: System,
  fish: FishStock,
  tankFull_L: number,
  at: Conditions,
  demand: Figure,
): readonly Figure[] {
  const { oxygenMin_mg_L } = fish.species.limits;
  if (at.saturation_mg_L <= oxygenMin_mg_L) return [noFigure('airPump_L_min', 'L_min', tooWarm(at, fish))];
  const times = Math.max(1, fish.massAdult_g / fish.massNow_g);
  const depth_mm = system.air?.depth_mm ?? system.tank.full_mm;
  const perLitre = (end: 'low' | 'likely' | 'high'): number =>
    stones_g_h({ flow_L_min: 1, depth_mm }, at, oxygenMin_mg_L, end);
  const wanted = (demand_g_h: number, end: 'low' | 'likely' | 'high'): number =>
    (demand_g_h * times) / perLitre(end);
  const byOxygen = wanted(numberOf(demand), 'likely');
  const byTank = airPerLitre_L_min.value * tankFull_L;
  const value = Math.max(byOxygen, byTank);
  const steps =
    byOxygen < byTank
      ? [tankStep(tankFull_L, value)]
      : oxygenSteps(numberOf(demand), times, fish, perLitre('likely'), value);
  const pump = figure({
    key: 'airPump_L_min',
    value,
    low: Math.max(byTank, wanted(demand.low ?? 0, 'high')),
    high: Math.max(byTank, wanted(demand.high ?? 0, 'low')),
    unit: 'L_min',
    safeSide: 'up',
    confidence: 'estimate',
    steps,
    notes: pumpNotes(system),
  });
  return [pump, stonesFigure(value)];
}

function tooWarm(at: Conditions, fish: FishStock): Note {
  return {
    code: 'tooWarmForAir',
    level: 'caution',
    numbers: { saturation_mg_L: at.saturation_mg_L, limit_mg_L: fish.species.limits.oxygenMin_mg_L },
    source: bubbleShare_frac.source,
  };
}

function tankStep(tankFull_L: number, value: number): Step {
  return byHand(
    quantity('q', 'airPump', value, 'L_min'),
    'V × 4 ÷ 1000',
    [quantity('V', 'tankFull', tankFull_L, 'L')],
    airPerLitre_L_min.source,
  );
}

function oxygenSteps(
  demand_g_h: number,
  times: number,
  fish: FishStock,
  perLitre_g_h: number,
  value: number,
): readonly Step[] {
  const today = quantity('D', 'oxygenDemand', demand_g_h, 'g_h');
  const grown = quantity('G', 'grownDemand', demand_g_h * times, 'g_h');
  const masses = [
    quantity('M', 'massAdult', fish.massAdult_g, 'g'),
    quantity('m', 'massNow', fish.massNow_g, 'g'),
  ];
  const growth = times > 1 ? byHand(grown, 'D × M ÷ m', [today, ...masses], 'geometry') : null;
  const demand = growth === null ? today : grown;
  const gives = quantity('q', 'airPump', value, 'L_min');
  const one = quantity('A', 'oxygenOfOneLitre', perLitre_g_h, 'g_h');
  const flow = byHand(gives, `${demand.sign} ÷ A`, [demand, one], 'asceAeration');
  return growth === null ? [flow] : [growth, flow];
}

function pumpNotes(system: System): readonly Note[] {
  const still = system.beds.some((bed) => bed.mode === 'constantFlood' || bed.mode === 'inTank');
  const code = still ? 'airAtConstantFlood' : 'airOfDrainingBeds';
  return [
    { code, level: 'info', numbers: {}, source: 'commonPractice' },
    { code: 'airPumpAbove', level: 'info', numbers: {}, source: 'commonPractice' },
  ];
}

function stonesFigure(air_L_min: number): Figure {
  const byAir = Math.floor(air_L_min / perStone_L_min) + 1;
  const value = Math.max(leastStones, byAir);
  const gives = quantity('n', 'airStones', value, 'ratio');
  const flow = quantity('q', 'airPump', air_L_min, 'L_min');
  const step: Step =
    byAir >= leastStones
      ? byHand(gives, 'floor(q ÷ 4) + 1', [flow], 'fromMemory')
      : { kind: 'lookup', gives, formula: '', symbols: [], byHand: 'no', source: 'fromMemory' };
  return figure({
    key: 'airStones',
    value,
    unit: 'ratio',
    safeSide: 'up',
    confidence: 'rule',
    steps: [step],
  });
}
