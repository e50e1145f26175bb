/** How many fish: three limits side by side, the least of them, and what binds. */
import { mediaPerFish_L, ruleFish_g, tableFishTank_L, waterPerFish_L } from '../constants.ts';
import type { Note } from '../note.ts';
import { densityCap_kg_L, wholeCount } from '../stocking/limits.ts';
import type { FishStock } from '../fish.ts';
import type { System } from '../system.ts';
import type { Figure, Quantity, Step } from './figure.ts';
import type { Levels } from './levels.ts';
import { byHand, figure, noFigure, quantity, numberOf } from './write.ts';

/** Adult mass that the limits are worked out for while no fish were chosen: the rule's own fish. */
const ruleFishAdult_g = ruleFish_g.value;

/**
 * The limits on fish, the planned count and the count present.
 * @param system a checked system
 * @param wetMedia_L wet media of all beds together
 * @param levels the system's levels
 * @returns fishByBed, fishByTank, fishByDensity, fishPlanned, fishPresent
 * @valid table-size kinds; ornamental fish get the supplier's word instead of a number
 * @source commonPractice for bed and tank; fao589 for the density
 */
export function fishFigures(system: System, wetMedia_L: number, levels: Levels): readonly Figure[] {
  const { fish } = system;
  if (fish?.species.use === 'ornamental') return [...ornamental(), ...present(fish, null)];
  const adult_g = fish?.massAdult_g ?? ruleFishAdult_g;
  const limits = [byBed(system, wetMedia_L, adult_g), byTank(levels, adult_g), byDensity(levels, adult_g)];
  const planned = leastOf(limits);
  return [...limits, planned, ...(fish ? present(fish, numberOf(planned)) : [])];
}

function ornamental(): readonly Figure[] {
  const why: Note = { code: 'supplierWord', level: 'info', numbers: {}, source: 'commonPractice' };
  return ['fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned'].map((key) => noFigure(key, 'fish', why));
}

/** Litres for one fish: the rule's, for a fish of 500 g, grow with the adult mass. */
function ofMass_L(rule_L: number, adult_g: number): number {
  return (rule_L * adult_g) / ruleFishAdult_g;
}

function shareStep(sign: string, term: string, rule_L: number, adult_g: number): readonly Step[] {
  if (adult_g === ruleFishAdult_g) return [];
  const symbols = [quantity('r', `${term}Rule`, rule_L, 'L'), quantity('m', 'massAdult', adult_g, 'g')];
  const gives = quantity(sign, term, ofMass_L(rule_L, adult_g), 'L');
  return [byHand(gives, 'r × m ÷ 500', symbols, 'commonPractice')];
}

function countFigure(key: string, steps: readonly Step[], count: number, notes: readonly Note[]): Figure {
  return figure({ key, value: count, unit: 'fish', safeSide: 'down', confidence: 'rule', steps, notes });
}

function countStep(key: string, count: number, amount: Quantity, share: Quantity, source: string): Step {
  const gives = quantity('n', key, count, 'fish');
  return byHand(gives, `floor(${amount.sign} ÷ ${share.sign})`, [amount, share], source);
}

function byBed(system: System, wetMedia_L: number, adult_g: number): Figure {
  const one_L = ofMass_L(mediaPerFish_L.value, adult_g);
  const count = wholeCount(wetMedia_L, one_L);
  const amount = quantity('W', 'wetMedia', wetMedia_L, 'L');
  const share = quantity('v', 'mediaPerFish', one_L, 'L');
  const steps = [
    ...shareStep('v', 'mediaPerFish', mediaPerFish_L.value, adult_g),
    countStep('fishByBed', count, amount, share, mediaPerFish_L.source),
  ];
  const unforced: Note = { code: 'noForcedFlow', level: 'caution', numbers: {}, source: 'commonPractice' };
  const basketsOnly = system.beds.length > 0 && system.beds.every((bed) => bed.mode === 'inTank');
  return countFigure('fishByBed', steps, count, basketsOnly ? [unforced] : []);
}

/** The trade wants no table-size fish under 500 L; above that, 20 L each at the lowest level. */
function byTank(levels: Levels, adult_g: number): Figure {
  if (levels.tankFull_L * (1 + 1e-9) < tableFishTank_L.value) return tankTooSmall(levels);
  const one_L = ofMass_L(waterPerFish_L.value, adult_g);
  const count = wholeCount(levels.tankLow_L, one_L);
  const amount = quantity('L', 'tankLow', levels.tankLow_L, 'L');
  const share = quantity('w', 'waterPerFish', one_L, 'L');
  const steps = [
    ...shareStep('w', 'waterPerFish', waterPerFish_L.value, adult_g),
    countStep('fishByTank', count, amount, share, waterPerFish_L.source),
  ];
  return countFigure('fishByTank', steps, count, []);
}

function tankTooSmall(levels: Levels): Figure {
  const numbers = { tankFull_L: levels.tankFull_L, wanted_L: tableFishTank_L.value };
  const step: Step = {
    kind: 'lookup',
    gives: quantity('n', 'fishByTank', 0, 'fish'),
    formula: '',
    symbols: [
      quantity('F', 'tankFull', levels.tankFull_L, 'L'),
      quantity('T', 'tableFishTank', tableFishTank_L.value, 'L'),
    ],
    byHand: 'no',
    source: tableFishTank_L.source,
  };
  const note: Note = { code: 'noTableFishHere', level: 'caution', numbers, source: tableFishTank_L.source };
  return countFigure('fishByTank', [step], 0, [note]);
}

function byDensity(levels: Levels, adult_g: number): Figure {
  const density_kg_L = densityCap_kg_L(levels.tankFull_L);
  const cap_kg = density_kg_L * levels.tankLow_L;
  const count = wholeCount(cap_kg * 1000, adult_g);
  const cap = byHand(
    quantity('k', 'fishMassCap', cap_kg, 'kg'),
    'L × c',
    [quantity('L', 'tankLow', levels.tankLow_L, 'L'), quantity('c', 'densityCap', density_kg_L, 'kg_L')],
    'fao589',
  );
  const whole = byHand(
    quantity('n', 'fishByDensity', count, 'fish'),
    'floor(k × 1000 ÷ m)',
    [quantity('k', 'fishMassCap', cap_kg, 'kg'), quantity('m', 'massAdult', adult_g, 'g')],
    'fao589',
  );
  return countFigure('fishByDensity', [cap, whole], count, []);
}

function leastOf(limits: readonly Figure[]): Figure {
  const least = limits.reduce((a, b) => (numberOf(b) < numberOf(a) ? b : a));
  const count = numberOf(least);
  const signs = ['b', 't', 'd'];
  const symbols = limits.map((limit, i) => quantity(signs[i] ?? 'x', limit.key, numberOf(limit), 'fish'));
  const step: Step = {
    kind: 'leastOf',
    gives: quantity('n', 'fishPlanned', count, 'fish'),
    formula: `min(${symbols.map((s) => s.sign).join('; ')})`,
    symbols,
    byHand: 'yes',
    source: 'commonPractice',
  };
  const binds: Note = {
    code: `binds.${least.key}`,
    level: 'info',
    numbers: { fishPlanned: count },
    source: 'commonPractice',
  };
  const word: Note = { code: 'supplierFirst', level: 'info', numbers: {}, source: 'commonPractice' };
  return countFigure('fishPlanned', [step], count, [binds, word]);
}

function present(fish: FishStock, planned: number | null): readonly Figure[] {
  const tooMany: Note = {
    code: 'moreFishThanPlanned',
    level: 'caution',
    numbers: { fishPresent: fish.present, fishPlanned: planned ?? 0 },
    source: 'commonPractice',
  };
  const mass_kg = (fish.present * fish.massNow_g) / 1000;
  return [
    figure({
      key: 'fishPresent',
      value: fish.present,
      unit: 'fish',
      safeSide: 'up',
      confidence: 'measured',
      steps: [],
      notes: planned !== null && fish.present > planned ? [tooMany] : [],
    }),
    figure({
      key: 'fishMass_kg',
      value: mass_kg,
      unit: 'kg',
      safeSide: 'up',
      confidence: 'measured',
      steps: [
        byHand(
          quantity('k', 'fishMass', mass_kg, 'kg'),
          'n × m ÷ 1000',
          [quantity('n', 'fishPresent', fish.present, 'fish'), quantity('m', 'massNow', fish.massNow_g, 'g')],
          'geometry',
        ),
      ],
    }),
  ];
}
