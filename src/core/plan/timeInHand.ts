/** How long the fish have when pump and air stop: the short end, and never a safe waiting time. */
import type { Note } from '../note.ts';
import type { FishStock } from '../fish.ts';
import type { System } from '../system.ts';
import { timeInHand_min } from '../water/respiration.ts';
import { longestSum_min, startingShare_frac } from '../water/waterConstants.ts';
import type { Conditions } from './conditions.ts';
import type { Figure, Step } from './figure.ts';
import { breathingOf } from './oxygenDemand.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * Minutes until the fish have breathed the tank down to their lower limit.
 * Fish at the peak after a meal, the tank at its lowest, its oxygen at 70 % of saturation: the short end.
 * @param system a system with fish
 * @param fish its fish, at least one
 * @param tankLow_L lowest volume of normal running
 * @param at the conditions at the warm end
 * @returns the minutes, or nothing and the reason
 * @valid clear water; green water breathes at night more than any sum tells
 * @source yamanaka2013, sdaJuveniles, bensonKrause1984; fromMemory for the start
 */
export function timeInHandFigure(system: System, fish: FishStock, tankLow_L: number, at: Conditions): Figure {
  const key = 'timeInHand_min';
  if (system.water.green === 'green') return noFigure(key, 'min', note('greenWater', 'caution', {}));
  const start_mg_L = at.saturation_mg_L * startingShare_frac.value;
  const limit_mg_L = fish.species.limits.oxygenMin_mg_L;
  if (start_mg_L <= limit_mg_L) {
    return noFigure(key, 'min', note('noTimeInHand', 'caution', { start_mg_L, limit_mg_L }));
  }
  const summed = minutesOf(fish, tankLow_L, start_mg_L - limit_mg_L, at.water_degC);
  const minutes = Math.min(summed, longestSum_min.value);
  const grown = { ...fish, massNow_g: Math.max(fish.massNow_g, fish.massAdult_g) };
  return figure({
    key,
    value: minutes,
    unit: 'min',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [...steps(fish, tankLow_L, at, summed), ...(summed > minutes ? [capped(summed, minutes)] : [])],
    notes: [
      note('timeIsNoWait', 'info', {
        grown_min: Math.min(
          longestSum_min.value,
          minutesOf(grown, tankLow_L, start_mg_L - limit_mg_L, at.water_degC),
        ),
        limit_mg_L,
      }),
      ...(summed > minutes ? [note('timeCapped', 'info', { longest_min: longestSum_min.value })] : []),
    ],
  });
}

/** Where few fish breathe little, what else lives in the tank decides. */
function capped(summed: number, minutes: number): Step {
  const symbols = [
    quantity('t', 'timeBySum', summed, 'min'),
    quantity('m', 'longestSum', longestSum_min.value, 'min'),
  ];
  return {
    kind: 'leastOf',
    gives: quantity('h', 'timeInHand', minutes, 'min'),
    formula: 'min(t; m)',
    symbols,
    byHand: 'yes',
    source: longestSum_min.source,
  };
}

function note(code: string, level: Note['level'], numbers: Note['numbers']): Note {
  return { code, level, numbers, source: startingShare_frac.source };
}

function fishOxygen(fish: FishStock, water_degC: number): number {
  return (((fish.present * fish.massNow_g) / 1000) * breathingOf(fish, water_degC).high) / 1000;
}

function minutesOf(fish: FishStock, tankLow_L: number, spare_mg_L: number, water_degC: number): number {
  return timeInHand_min(tankLow_L, spare_mg_L, 0, fishOxygen(fish, water_degC));
}

function steps(fish: FishStock, tankLow_L: number, at: Conditions, minutes: number): readonly Step[] {
  const breathing = breathingOf(fish, at.water_degC);
  const start_mg_L = at.saturation_mg_L * startingShare_frac.value;
  const start = quantity('c', 'startingOxygen', start_mg_L, 'mg_L');
  const breathed = quantity('F', 'fishOxygen', fishOxygen(fish, at.water_degC), 'g_h');
  return [
    byHand(
      start,
      'C × s',
      [
        quantity('C', 'oxygenSaturation', at.saturation_mg_L, 'mg_L'),
        quantity('s', 'startingShare', startingShare_frac.value, 'frac'),
      ],
      startingShare_frac.source,
    ),
    breathing.step('high'),
    byHand(
      breathed,
      'k × r ÷ 1000',
      [
        quantity('k', 'fishMass', (fish.present * fish.massNow_g) / 1000, 'kg'),
        quantity('r', 'breathing', breathing.high, 'mg_kg_h'),
      ],
      'geometry',
    ),
    byHand(
      quantity('t', longestSum_min.value < minutes ? 'timeBySum' : 'timeInHand', minutes, 'min'),
      '60 × L × (c − l) ÷ (1000 × F)',
      [
        quantity('L', 'tankLow', tankLow_L, 'L'),
        start,
        quantity('l', 'oxygenMin', fish.species.limits.oxygenMin_mg_L, 'mg_L'),
        breathed,
      ],
      'geometry',
    ),
  ];
}
