/** Ornamental fish: the published rules disagree six-fold, so their whole band is shown and its low end recommended. */
import { area_m2 } from '../geometry/container.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import type { Figure, Table } from './figure.ts';
import type { Levels } from './levels.ts';
import { byHand, figure, quantity } from './write.ts';

/** Water surface or water that a metre of fish wants, tail included, as keepers' pages print it; none is better founded. */
const areaRules_m2 = [
  { key: 'squareFootAnInch', perMetre_m2: 3.6576 },
  { key: 'thirtySquareInches', perMetre_m2: 0.762 },
  { key: 'twentyFourSquareInches', perMetre_m2: 0.6096 },
] as const;
const volumeRules_L = [
  { key: 'tenGallonsAnInch', perMetre_L: 1490.319 },
  { key: 'fiveGallonsAnInch', perMetre_L: 745.16 },
] as const;

/**
 * Length of all ornamental fish together, grown, tails included.
 * @param system a checked system
 * @param levels its levels
 * @returns ornamentalLength_mm, the least of the rules; nothing for other fish
 * @valid small kinds; none of the rules is more than a habit
 * @source commonPractice
 */
export function ornamentalFigures(system: System, levels: Levels): readonly Figure[] {
  if (system.fish?.species.use !== 'ornamental') return [];
  const rules = lengths(system, levels);
  const all = rules.map((one) => one.length_mm);
  const least = rules.reduce((a, b) => (b.length_mm < a.length_mm ? b : a));
  const sixfold: Note = {
    code: 'ornamentalRulesDisagree',
    level: 'info',
    numbers: {},
    source: 'commonPractice',
  };
  return [
    figure({
      key: 'ornamentalLength_mm',
      value: least.length_mm,
      low: least.length_mm,
      high: Math.max(...all),
      unit: 'mm',
      safeSide: 'down',
      confidence: 'rule',
      steps: [least.step],
      notes: [sixfold],
    }),
  ];
}

/**
 * Every rule with what it gives here.
 * @param system a checked system
 * @param levels its levels
 * @returns one table; none for other fish
 * @source commonPractice
 */
export function ornamentalTables(system: System, levels: Levels): readonly Table[] {
  if (system.fish?.species.use !== 'ornamental') return [];
  return [
    {
      key: 'ornamentalRules',
      columns: [
        { key: 'rule', unit: 'ratio' },
        { key: 'fishLength', unit: 'mm' },
      ],
      rows: lengths(system, levels).map((one) => [one.key, one.length_mm]),
    },
  ];
}

function lengths(system: System, levels: Levels) {
  const { container, full_mm, count } = system.tank;
  const surface_m2 = area_m2(container, full_mm) * count;
  const byArea = areaRules_m2.map(({ key, perMetre_m2 }) => {
    const length_mm = (surface_m2 / perMetre_m2) * 1000;
    const symbols = [
      quantity('A', 'tankSurface', surface_m2, 'm2'),
      quantity('a', 'surfacePerFish', perMetre_m2, 'm2'),
    ];
    return { key, length_mm, step: byHand(gives(length_mm), 'A ÷ a × 1000', symbols, 'commonPractice') };
  });
  const byVolume = volumeRules_L.map(({ key, perMetre_L }) => {
    const length_mm = (levels.tankLow_L / perMetre_L) * 1000;
    const symbols = [
      quantity('L', 'tankLow', levels.tankLow_L, 'L'),
      quantity('v', 'waterPerLength', perMetre_L, 'L'),
    ];
    return { key, length_mm, step: byHand(gives(length_mm), 'L ÷ v × 1000', symbols, 'commonPractice') };
  });
  return [...byArea, ...byVolume];
}

function gives(length_mm: number) {
  return quantity('f', 'ornamentalLength', length_mm, 'mm');
}
