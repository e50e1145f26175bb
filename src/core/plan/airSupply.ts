/** What the air stones and the falling return water bring in, at the least oxygen that the fish bear. */
import type { Note } from '../note.ts';
import type { AirStones, Range, System } from '../system.ts';
import { fieldTransfer_g_h, oxygenAfterFall_mg_L, standardTransfer_g_h } from '../water/aeration.ts';
import {
  bubbleShare_frac,
  fallQuality,
  fallShape,
  fishWaterAlpha,
  fishWaterBeta,
  oxygenOfAir_g_L,
} from '../water/waterConstants.ts';
import type { Conditions } from './conditions.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * What stones of this depth bring into the tank with this much air.
 * @param air flow and depth
 * @param at the conditions at the warm end
 * @param oxygen_mg_L oxygen that the water has
 * @param share which end of the range of bubbles
 * @returns g of oxygen an hour, below zero where the water gives oxygen away
 * @valid as fieldTransfer_g_h
 * @source asceAeration
 * @example stones_g_h({ flow_L_min: 0, depth_mm: 500 }, { water_degC: 20, pressureLeft_frac: 1, saturation_mg_L: 9 }, 5, 'low') // 0
 */
export function stones_g_h(
  air: Pick<AirStones, 'flow_L_min' | 'depth_mm'>,
  at: Pick<Conditions, 'water_degC' | 'pressureLeft_frac' | 'saturation_mg_L'>,
  oxygen_mg_L: number,
  share: keyof Range,
): number {
  const standard_g_h = standardTransfer_g_h(
    air.flow_L_min,
    air.depth_mm,
    bubbleShare_frac[share],
    at.pressureLeft_frac,
  );
  return fieldTransfer_g_h(
    standard_g_h,
    fishWaterAlpha.value,
    fishWaterBeta.value,
    at.saturation_mg_L,
    oxygen_mg_L,
    at.water_degC,
  );
}

/**
 * Supply by stones and by the fall of the return water, beside the demand.
 * @param system a system with fish
 * @param at the conditions at the warm end
 * @param oxygenMin_mg_L least oxygen that the fish bear
 * @param moving what is breathed, and what the pump gives; null where it gives nothing
 * @returns oxygenSupply_g_h, and fallOxygen_g_h where water falls
 * @valid as fieldTransfer_g_h and oxygenAfterFall_mg_L
 * @source asceAeration, metcalfEddyCascade; efficiencies fromMemory
 */
export function supplyFigures(
  system: System,
  at: Conditions,
  oxygenMin_mg_L: number,
  moving: { readonly demand_g_h: number; readonly flow_L_h: number | null },
): readonly Figure[] {
  const key = 'oxygenSupply_g_h';
  if (at.saturation_mg_L <= oxygenMin_mg_L) {
    const numbers = { saturation_mg_L: at.saturation_mg_L, limit_mg_L: oxygenMin_mg_L };
    return [noFigure(key, 'g_h', says('tooWarmForAir', 'caution', numbers))];
  }
  const fall = fallFigure(system, at, oxygenMin_mg_L, moving.flow_L_h);
  const falls = fall === null ? [] : [fall];
  const air = system.air ?? null;
  if (air === null) return [noFigure(key, 'g_h', says('airNotGiven', 'info', {})), ...falls];
  return [stonesFigure(air, at, oxygenMin_mg_L, moving.demand_g_h, fall?.high ?? 0), ...falls];
}

function says(code: string, level: Note['level'], numbers: Note['numbers']): Note {
  return { code, level, numbers, source: bubbleShare_frac.source };
}

function stonesFigure(
  air: AirStones,
  at: Conditions,
  oxygenMin_mg_L: number,
  demand_g_h: number,
  fall_g_h: number,
): Figure {
  const value = stones_g_h(air, at, oxygenMin_mg_L, 'likely');
  const short = says('airShort', 'caution', { supply_g_h: value, demand_g_h });
  return figure({
    key: 'oxygenSupply_g_h',
    value,
    low: stones_g_h(air, at, oxygenMin_mg_L, 'low'),
    high: stones_g_h(air, at, oxygenMin_mg_L, 'high') + fall_g_h,
    unit: 'g_h',
    safeSide: 'down',
    confidence: 'estimate',
    steps: stonesSteps(air, at, oxygenMin_mg_L, value),
    notes: [says('fallOnlyAtBest', 'info', {}), ...(value < demand_g_h ? [short] : [])],
  });
}

function stonesSteps(air: AirStones, at: Conditions, oxygenMin_mg_L: number, value: number): readonly Step[] {
  const { likely, source } = bubbleShare_frac;
  const standard_g_h = standardTransfer_g_h(air.flow_L_min, air.depth_mm, likely, at.pressureLeft_frac);
  const standard = quantity('S', 'standardTransfer', standard_g_h, 'g_h');
  return [
    byHand(
      standard,
      'q × 60 × o × p × e × d ÷ 1000',
      [
        quantity('q', 'airFlow', air.flow_L_min, 'L_min'),
        quantity('o', 'oxygenOfAir', oxygenOfAir_g_L.value, 'g_L'),
        quantity('p', 'pressureLeft', at.pressureLeft_frac, 'frac'),
        quantity('e', 'bubbleShare', likely, 'frac'),
        quantity('d', 'stoneDepth', air.depth_mm, 'mm'),
      ],
      source,
    ),
    {
      kind: 'formula',
      gives: quantity('A', 'oxygenSupply', value, 'g_h'),
      formula: 'S × a × (b × C − c) ÷ 9.09 × 1.024^(T − 20)',
      symbols: [
        standard,
        quantity('a', 'alpha', fishWaterAlpha.value, 'ratio'),
        quantity('b', 'beta', fishWaterBeta.value, 'ratio'),
        quantity('C', 'oxygenSaturation', at.saturation_mg_L, 'mg_L'),
        quantity('c', 'oxygenMin', oxygenMin_mg_L, 'mg_L'),
        quantity('T', 'waterTemperature', at.water_degC, 'degC'),
      ],
      byHand: 'no',
      source: 'asceAeration',
    },
  ];
}

/** How far the return falls through air over the tank's full line; the lowest bed counts. */
function fall_mm(system: System): number {
  const pumped = system.beds.filter((bed) => bed.mode !== 'inTank');
  if (system.sump !== null || pumped.length === 0) return 0;
  const surface_mm = system.tank.above_mm + system.tank.full_mm;
  return Math.max(0, Math.min(...pumped.map((bed) => bed.above_mm)) - surface_mm);
}

function fallFigure(
  system: System,
  at: Conditions,
  oxygenMin_mg_L: number,
  flow_L_h: number | null,
): Figure | null {
  const height_mm = fall_mm(system);
  if (height_mm === 0 || flow_L_h === null) return null;
  const after_mg_L = oxygenAfterFall_mg_L(
    at.saturation_mg_L,
    oxygenMin_mg_L,
    height_mm,
    fallQuality.value,
    fallShape.value,
    at.water_degC,
  );
  const value = (flow_L_h * (after_mg_L - oxygenMin_mg_L)) / 1000;
  const after = quantity('A', 'oxygenAfterFall', after_mg_L, 'mg_L');
  const before = quantity('c', 'oxygenMin', oxygenMin_mg_L, 'mg_L');
  const fall: Step = {
    kind: 'formula',
    gives: after,
    formula: 'C − (C − c) ÷ (1 + 0.11 × a × b × (1 + 0.046 × T) × h ÷ 304.8)',
    symbols: [
      quantity('C', 'oxygenSaturation', at.saturation_mg_L, 'mg_L'),
      before,
      quantity('a', 'fallQuality', fallQuality.value, 'ratio'),
      quantity('b', 'fallShape', fallShape.value, 'ratio'),
      quantity('T', 'waterTemperature', at.water_degC, 'degC'),
      quantity('h', 'fallHeight', height_mm, 'mm'),
    ],
    byHand: 'no',
    source: fallQuality.source,
  };
  const flow = quantity('Q', 'pumpFlow', flow_L_h, 'L_h');
  const gives = quantity('F', 'fallOxygen', value, 'g_h');
  return figure({
    key: 'fallOxygen_g_h',
    value,
    low: 0,
    high: value,
    unit: 'g_h',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [fall, byHand(gives, 'Q × (A − c) ÷ 1000', [flow, after, before], 'geometry')],
    notes: [says('fallUnderWater', 'info', {})],
  });
}
