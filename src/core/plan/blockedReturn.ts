/** Return blocked or broken while the pump runs: what the pump leaves, and whether the fish live in that. */
import type { Note } from '../note.ts';
import { densityCap_kg_L } from '../stocking/limits.ts';
import type { System } from '../system.ts';
import type { Figure } from './figure.ts';
import { fishTank, levelOf_mm, lowerVessel, waterBelow_L, waterSteps } from './lowerVessel.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * Figures for a blocked or broken return: the pump empties its vessel down to the intake.
 * @param system a checked system
 * @param tankFull_L volume of the tank at its full line
 * @param low_mm lowest level of normal running in the pump's vessel
 * @returns cover over the intake, litres left, litres that the fish need; none without a pump
 * @source geometry; fao589 for the density that the fish bear
 */
export function blockedFigures(system: System, tankFull_L: number, low_mm: number): readonly Figure[] {
  if (system.pump === null) return [];
  const lower = lowerVessel(system);
  const { intake_mm } = system.pump;
  const left_L = waterBelow_L(lower, intake_mm);
  const blocked = figure({
    key: 'blockedReturn_L',
    value: left_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps: waterSteps(lower, intake_mm, quantity('B', 'belowIntake', left_L, 'L')),
    notes: blockedNotes(system, tankFull_L, left_L, low_mm),
  });
  const cover_mm = low_mm - intake_mm;
  const cover = figure({
    key: 'intakeCover_mm',
    value: cover_mm,
    unit: 'mm',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('c', 'intakeCover', cover_mm, 'mm'),
        'l − i',
        [quantity('l', 'lowLine', low_mm, 'mm'), quantity('i', 'intake', intake_mm, 'mm')],
        'geometry',
      ),
    ],
  });
  return [cover, blocked, ...needFigures(system, tankFull_L)];
}

/** Litres that the fish present need so as not to be crowded beyond the published density. */
function need_L(system: System, tankFull_L: number): number {
  const fish = system.fish;
  return fish === null ? 0 : (fish.present * fish.massNow_g) / 1000 / densityCap_kg_L(tankFull_L);
}

function needFigures(system: System, tankFull_L: number): readonly Figure[] {
  const { fish } = system;
  if (fish === null || fish.present === 0 || system.sump) return [];
  const value = need_L(system, tankFull_L);
  return [
    figure({
      key: 'fishNeed_L',
      value,
      unit: 'L',
      safeSide: 'up',
      confidence: 'rule',
      steps: [
        byHand(
          quantity('N', 'fishNeed', value, 'L'),
          'n × m ÷ 1000 ÷ c',
          [
            quantity('n', 'fishPresent', fish.present, 'fish'),
            quantity('m', 'massNow', fish.massNow_g, 'g'),
            quantity('c', 'densityCap', densityCap_kg_L(tankFull_L), 'kg_L'),
          ],
          'fao589',
        ),
      ],
    }),
  ];
}

function blockedNotes(system: System, tankFull_L: number, left_L: number, low_mm: number): readonly Note[] {
  if (system.sump) {
    return [{ code: 'blockedEmptiesSump', level: 'info', numbers: { left_L }, source: 'geometry' }];
  }
  if (system.fish === null || system.fish.present === 0) return [];
  const wanted_L = need_L(system, tankFull_L);
  if (left_L * (1 + 1e-9) >= wanted_L) {
    return [{ code: 'blockedFishLive', level: 'info', numbers: { left_L, wanted_L }, source: 'fao589' }];
  }
  const intake_mm = levelOf_mm(fishTank(system), wanted_L);
  if (intake_mm < low_mm) {
    return [
      { code: 'raiseIntake', level: 'stop', numbers: { left_L, wanted_L, intake_mm }, source: 'fao589' },
    ];
  }
  return [{ code: 'tankTooSmallForFish', level: 'stop', numbers: { left_L, wanted_L }, source: 'fao589' }];
}
