/** Air: what the water holds, what is breathed, what comes in, the air pump, and the time in hand. */
import type { Note } from '../note.ts';
import type { Range, System } from '../system.ts';
import { bedCeiling_g_d } from '../water/respiration.ts';
import { bedOutlet_mg_L, oxygenOfAir_g_L, startingShare_frac } from '../water/waterConstants.ts';
import { airPumpFigures } from './airPump.ts';
import { supplyFigures } from './airSupply.ts';
import { type Conditions, conditionsOf } from './conditions.ts';
import type { Figure } from './figure.ts';
import type { Levels } from './levels.ts';
import { demandFigure, type Load } from './oxygenDemand.ts';
import { timeInHandFigure } from './timeInHand.ts';
import { byHand, figure, lookup, noFigure, numberOf, quantity } from './write.ts';

/**
 * All figures of air.
 * @param system a checked system
 * @param levels its levels
 * @param load feed and ammonia of the day; null where no ration is known
 * @param flow_L_h what the pump really gives; null where nothing is pumped or the pump is too weak
 * @returns figures; those of fish only where fish are present
 * @valid 0 to 40 °C, up to 5,000 m
 * @source see the figures
 */
export function airFigures(
  system: System,
  levels: Levels,
  load: Load,
  flow_L_h: Range | null,
): readonly Figure[] {
  const at = conditionsOf(system);
  const drawn = drawnFigures(levels);
  if ('code' in at) return [noFigure('oxygenSaturation_mg_L', 'mg_L', at), ...drawn];
  return [
    saturationFigure(at),
    ...fishAir(system, levels, { load, at, flow_L_h }),
    ...ceilingFigures(system, { load, at, flow_L_h }),
    ...drawn,
  ];
}

/** Load of the day, conditions of the water, flow of the pump. */
type Running = { readonly load: Load; readonly at: Conditions; readonly flow_L_h: Range | null };

function fishAir(system: System, levels: Levels, { load, at, flow_L_h }: Running): readonly Figure[] {
  const { fish } = system;
  if (fish === null || fish.present === 0) return [];
  const demand = demandFigure(fish, load, at.water_degC);
  return [
    demand,
    ...supplyFigures(system, at, fish.species.limits.oxygenMin_mg_L, {
      demand_g_h: numberOf(demand),
      flow_L_h: flow_L_h?.likely ?? null,
    }),
    ...airPumpFigures(system, fish, levels.tankFull_L, at, demand),
    timeInHandFigure(system, fish, levels.tankLow_L, at),
  ];
}

function saturationFigure(at: Conditions): Figure {
  return figure({
    key: 'oxygenSaturation_mg_L',
    value: at.saturation_mg_L,
    unit: 'mg_L',
    safeSide: 'down',
    confidence: 'rule',
    steps: [lookup(quantity('C', 'oxygenSaturation', at.saturation_mg_L, 'mg_L'), 'bensonKrause1984')],
    notes: [at.at],
  });
}

/** What beds at constant flood can turn with the oxygen that the pump brings them: their share of the flow, as if every bed got the same. */
function ceilingFigures(system: System, { load, at, flow_L_h }: Running): readonly Figure[] {
  const pumped = system.beds.filter((bed) => bed.mode !== 'inTank');
  const still = pumped.filter((bed) => bed.mode === 'constantFlood');
  if (flow_L_h === null || still.length === 0) return [];
  const share = still.length / pumped.length;
  const still_L_h = flow_L_h.likely * share;
  const oxygenIn_mg_L = at.saturation_mg_L * startingShare_frac.value;
  const value = bedCeiling_g_d(still_L_h, oxygenIn_mg_L, bedOutlet_mg_L.value);
  if (oxygenIn_mg_L <= bedOutlet_mg_L.value) return [];
  const wanted_g_d = (load?.tan_g_d ?? 0) * share;
  const starves: Note = {
    code: 'bedStarves',
    level: 'caution',
    numbers: { ceiling_g_d: value, wanted_g_d },
    source: bedOutlet_mg_L.source,
  };
  const flow = byHand(
    quantity('q', 'stillFlow', still_L_h, 'L_h'),
    'Q × n ÷ N',
    [
      quantity('Q', 'pumpFlow', flow_L_h.likely, 'L_h'),
      quantity('n', 'stillBeds', still.length, 'ratio'),
      quantity('N', 'pumpedBeds', pumped.length, 'ratio'),
    ],
    'commonPractice',
  );
  const ceiling = byHand(
    quantity('t', 'bedCeiling', value, 'g_d'),
    'q × (C × s − o) ÷ 4.57 × 24 ÷ 1000',
    [
      quantity('q', 'stillFlow', still_L_h, 'L_h'),
      quantity('C', 'oxygenSaturation', at.saturation_mg_L, 'mg_L'),
      quantity('s', 'startingShare', startingShare_frac.value, 'frac'),
      quantity('o', 'bedOutlet', bedOutlet_mg_L.value, 'mg_L'),
    ],
    bedOutlet_mg_L.source,
  );
  return [
    figure({
      key: 'bedCeiling_g_d',
      value,
      unit: 'g_d',
      safeSide: 'down',
      confidence: 'estimate',
      steps: [flow, ceiling],
      notes: [
        { code: 'ceilingIsNoPromise', level: 'info', numbers: {}, source: bedOutlet_mg_L.source },
        ...(value < wanted_g_d ? [starves] : []),
      ],
    }),
  ];
}

/** Air that draining beds draw in; how much of its oxygen ends in the water, nobody has told us. */
function drawnFigures(levels: Levels): readonly Figure[] {
  const moved = levels.figures.find((one) => one.key === 'waterMoved_L')?.value ?? 0;
  if (moved === 0) return [];
  const value = moved * oxygenOfAir_g_L.value;
  return [
    figure({
      key: 'bedAirDrawn_g',
      value,
      low: 0,
      high: value,
      unit: 'g',
      safeSide: 'down',
      confidence: 'estimate',
      steps: [
        byHand(
          quantity('B', 'bedAirDrawn', value, 'g'),
          'W × o',
          [
            quantity('W', 'waterMoved', moved, 'L'),
            quantity('o', 'oxygenOfAir', oxygenOfAir_g_L.value, 'g_L'),
          ],
          oxygenOfAir_g_L.source,
        ),
      ],
      notes: [{ code: 'bedAirNotCounted', level: 'info', numbers: {}, source: 'fromMemory' }],
    }),
  ];
}
