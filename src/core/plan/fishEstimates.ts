/** Two estimates beside the rules for how many fish: by the oxygen that is brought in, and by what leafy beds take up. */
import { rationGrowOut_frac } from '../constants.ts';
import type { FishStock } from '../fish.ts';
import type { Note } from '../note.ts';
import { wholeCount } from '../stocking/limits.ts';
import type { System } from '../system.ts';
import { leafyFeed_g_m2_d } from '../water/waterConstants.ts';
import type { BedPlan } from './beds.ts';
import { conditionsOf } from './conditions.ts';
import type { Figure, Step, Table } from './figure.ts';
import { loadOf } from './nitrogenPlan.ts';
import { demandFigure } from './oxygenDemand.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * Grown fish that the air stones and the plants keep up with.
 * They never make room for more fish than the rules do, and say so where they stand below them.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param found the plan's figures so far
 * @returns fishByOxygen where the air stones were measured, and fishByFeedArea
 * @valid grown fish at the published ration; leafy plants at full cover
 * @source asceAeration, yamanaka2013; fao589 chapter 8.1
 */
export function fishEstimates(
  system: System,
  beds: readonly BedPlan[],
  found: readonly Figure[],
): readonly Figure[] {
  const { fish } = system;
  if (fish === null || fish.present === 0 || fish.species.use === 'ornamental') return [];
  const planned = worked(found, 'fishPlanned');
  const supply = found.find((one) => one.key === 'oxygenSupply_g_h');
  return [...byOxygen(system, fish, supply, planned), byFeedArea(fish, beds, planned)];
}

/**
 * Rules and estimates side by side.
 * @param figures all figures of the plan
 * @returns one table; none where there is no number of fish
 * @source see the figures
 */
export function fishLimitTables(figures: readonly Figure[]): readonly Table[] {
  const planned = worked(figures, 'fishPlanned');
  if (planned === null) return [];
  const rules = ['fishByBed', 'fishByTank', 'fishByDensity'];
  const rows = [...rules, 'fishByOxygen', 'fishByFeedArea'].flatMap((key) => {
    const one = figures.find((each) => each.key === key);
    if (one === undefined || one.value === null) return [];
    const counts = rules.includes(key) ? 'rule' : 'estimate';
    const binds = counts === 'rule' && one.value === planned ? 'binds' : null;
    return [[key, counts, one.value, one.low ?? null, one.high ?? null, binds]];
  });
  return [
    {
      key: 'fishLimits',
      columns: [
        { key: 'limit', unit: 'ratio' },
        { key: 'counts', unit: 'ratio' },
        { key: 'fish', unit: 'fish' },
        { key: 'low', unit: 'fish' },
        { key: 'high', unit: 'fish' },
        { key: 'binds', unit: 'ratio' },
      ],
      rows,
    },
  ];
}

function worked(figures: readonly Figure[], key: string): number | null {
  return figures.find((one) => one.key === key)?.value ?? null;
}

/** One grown fish at the planned ration breathes so much; the stones bring so much. */
function byOxygen(
  system: System,
  fish: FishStock,
  supply: Figure | undefined,
  planned: number | null,
): readonly Figure[] {
  const at = conditionsOf(system);
  if (supply?.value == null || 'code' in at) return [];
  const one = { ...fish, present: 1, massNow_g: fish.massAdult_g };
  const load = loadOf(system, fish.massAdult_g * rationGrowOut_frac.low);
  const demand = demandFigure(one, load, at.water_degC);
  const each_g_h = demand.value ?? 0;
  const count = (supply_g_h: number, demand_g_h: number): number =>
    wholeCount(Math.max(0, supply_g_h), demand_g_h);
  const value = count(supply.value, each_g_h);
  return [
    figure({
      key: 'fishByOxygen',
      value,
      low: Math.min(value, count(supply.low ?? supply.value, demand.high ?? each_g_h)),
      high: Math.max(value, count(supply.high ?? supply.value, demand.low ?? each_g_h)),
      unit: 'fish',
      safeSide: 'down',
      confidence: 'estimate',
      steps: [
        breathStep(fish, each_g_h, at.water_degC),
        byHand(
          quantity('n', 'fishByOxygen', value, 'fish'),
          'floor(A ÷ D)',
          [
            quantity('A', 'oxygenSupply', Math.max(0, supply.value), 'g_h'),
            quantity('D', 'breathOfOne', each_g_h, 'g_h'),
          ],
          'geometry',
        ),
      ],
      notes: belowPlan('oxygenBelowPlan', value, planned, 'asceAeration'),
    }),
  ];
}

/** As oxygenDemand_g_h, for one grown fish. */
function breathStep(fish: FishStock, each_g_h: number, water_degC: number): Step {
  return {
    kind: 'lookup',
    gives: quantity('D', 'breathOfOne', each_g_h, 'g_h'),
    formula: '',
    symbols: [
      quantity('m', 'massAdult', fish.massAdult_g, 'g'),
      quantity('T', 'waterTemperature', water_degC, 'degC'),
    ],
    byHand: 'no',
    source: 'yamanaka2013',
  };
}

function byFeedArea(fish: FishStock, beds: readonly BedPlan[], planned: number | null): Figure {
  const bed_m2 = beds.reduce((sum, one) => sum + one.surface_m2, 0);
  const ration = rationGrowOut_frac;
  const count = (feed_g_m2_d: number, ration_frac: number): number =>
    wholeCount(bed_m2 * feed_g_m2_d, fish.massAdult_g * ration_frac);
  const value = count(leafyFeed_g_m2_d.low, ration.low);
  return figure({
    key: 'fishByFeedArea',
    value,
    low: count(leafyFeed_g_m2_d.low, ration.high),
    high: count(leafyFeed_g_m2_d.high, ration.low),
    unit: 'fish',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('n', 'fishByFeedArea', value, 'fish'),
        'floor(b × y ÷ m ÷ r)',
        [
          quantity('b', 'bedArea', bed_m2, 'm2'),
          quantity('y', 'feedPerArea', leafyFeed_g_m2_d.low, 'g_m2_d'),
          quantity('m', 'massAdult', fish.massAdult_g, 'g'),
          quantity('r', 'plannedRation', ration.low, 'frac'),
        ],
        leafyFeed_g_m2_d.source,
      ),
    ],
    notes: [
      { code: 'feedAreaIsNoLimit', level: 'info', numbers: {}, source: leafyFeed_g_m2_d.source },
      ...belowPlan('feedAreaBelowPlan', value, planned, leafyFeed_g_m2_d.source),
    ],
  });
}

function belowPlan(code: string, value: number, planned: number | null, source: string): readonly Note[] {
  if (planned === null || planned <= value) return [];
  return [{ code, level: 'caution', numbers: { fish: value, fishPlanned: planned }, source }];
}
