/** The water that goes: to the air, to the plants, over the rim. */
import { dailyLoss_frac } from '../constants.ts';
import type { Figure } from './figure.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * Water that a week takes.
 * @param systemWater_L all water
 * @returns weeklyLoss_L
 * @valid no leak; hot, dry or windy places lose more
 * @source fao589 section 3.4
 */
export function lossFigures(systemWater_L: number): readonly Figure[] {
  const all = quantity('A', 'systemWater', systemWater_L, 'L');
  const share = quantity('x', 'dailyLoss', dailyLoss_frac.high, 'frac');
  const week_L = systemWater_L * dailyLoss_frac.high * 7;
  return [
    figure({
      key: 'weeklyLoss_L',
      value: week_L,
      low: systemWater_L * dailyLoss_frac.low * 7,
      high: week_L,
      unit: 'L',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [
        byHand(quantity('w', 'weeklyLoss', week_L, 'L'), 'A × x × 7', [all, share], dailyLoss_frac.source),
      ],
      notes: [{ code: 'barrelCovered', level: 'info', numbers: {}, source: 'cpscBuckets' }],
    }),
  ];
}
