/** What the pump has to do and what it gives: lift, loss in the pipe, flow, the bucket that checks it, energy. */
import { waterViscosity_m2_s } from '../hydraulics/waterProperties.ts';
import { bucket_L, handBreadth_mm, turnoverWanted } from '../hydraulics/hydraulicConstants.ts';
import { bucket_s } from '../hydraulics/power.ts';
import type { Note } from '../note.ts';
import type { Range, System } from '../system.ts';
import { energyFigures } from './energyPlan.ts';
import type { Figure } from './figure.ts';
import type { Levels } from './levels.ts';
import { lowerVessel } from './lowerVessel.ts';
import { dutyFigure, pipeLossFigure } from './pumpDuty.ts';
import { on_frac } from './timer.ts';
import { byHand, figure, quantity } from './write.ts';

/** What the rest of the plan builds on; null where nothing is pumped or the flow is not known. */
export type PumpWork = { readonly flow_L_h: Range | null; readonly figures: readonly Figure[] };

/**
 * Figures of the pump.
 * @param system a checked system
 * @param levels its levels
 * @returns lift_m, pipeLoss_m, pumpFlow_L_h, bucket10L_s, turnover, energy_kWh_d, energyCostYear; none without a pump
 * @valid one pump that feeds beds which stand higher than its water
 * @source epanetManual, chapters 3 and 12
 */
export function pumpWork(system: System, levels: Levels): PumpWork {
  const { pump } = system;
  const fed = system.beds.filter((bed) => bed.mode !== 'inTank');
  if (pump === null || fed.length === 0) return { flow_L_h: null, figures: [] };
  const lift = liftFigure(system, levels);
  const lift_m = { low: lift.low ?? 0, likely: lift.value ?? 0, high: lift.high ?? 0 };
  const work = { pump, lift_m, viscosity_m2_s: waterViscosity_m2_s(warmth_degC(system)) };
  const duty = dutyFigure(work);
  const { value, low, high } = duty;
  const flow_L_h = value === null ? null : { low: low ?? value, likely: value, high: high ?? value };
  return {
    flow_L_h,
    figures: [
      lift,
      duty,
      pipeLossFigure(work, flow_L_h),
      ...(flow_L_h === null ? [] : [bucketFigure(flow_L_h), turnoverFigure(system, levels, flow_L_h)]),
      ...energyFigures(system),
    ],
  };
}

/**
 * Warmth of the water that is pumped.
 * As measured; where nobody measured, that of a mild day. Ice is not pumped, so 0 is the least.
 * @param system a checked system
 * @returns degC
 * @valid up to 50
 * @source commonPractice
 * @example warmth_degC({ water: { now_degC: 26 } }) // 26
 */
export function warmth_degC(system: Pick<System, 'water'>): number {
  return Math.max(0, system.water.now_degC ?? 20);
}

/** From the water to the open end of the supply, a hand's breadth over the rim of the highest bed. */
function liftFigure(system: System, levels: Levels): Figure {
  const { vessel } = lowerVessel(system);
  const fed = system.beds.filter((bed) => bed.mode !== 'inTank');
  const top = fed.reduce((best, bed) => (rimOver(bed) > rimOver(best) ? bed : best));
  const outlet_mm = rimOver(top) + handBreadth_mm.value;
  const from = (level_mm: number): number => Math.max(0, outlet_mm - vessel.above_mm - level_mm) / 1000;
  const value = from(levels.sourceLow_mm);
  const step = byHand(
    quantity('H', 'lift', value, 'm'),
    '(u + r + h − v − l) ÷ 1000',
    [
      quantity('u', 'underside', top.above_mm, 'mm'),
      quantity('r', 'rimHeight', top.container.depth_mm, 'mm'),
      quantity('h', 'handBreadth', handBreadth_mm.value, 'mm'),
      quantity('v', 'vesselFloor', vessel.above_mm, 'mm'),
      quantity('l', 'lowLine', levels.sourceLow_mm, 'mm'),
    ],
    handBreadth_mm.source,
  );
  return figure({
    key: 'lift_m',
    value,
    low: Math.min(value, from(vessel.full_mm)),
    high: Math.max(value, from(system.pump?.intake_mm ?? 0)),
    unit: 'm',
    safeSide: 'up',
    confidence: 'measured',
    steps: [step],
  });
}

function rimOver(bed: System['beds'][number]): number {
  return bed.above_mm + bed.container.depth_mm;
}

/** The check that anybody can do: hold a bucket under the pipe's end and count. */
function bucketFigure(flow_L_h: Range): Figure {
  const value = bucket_s(bucket_L.value, flow_L_h.likely);
  return figure({
    key: 'bucket10L_s',
    value,
    // Where the weak end gives nothing at all there is no longest time, and a note of the flow says so.
    ...(flow_L_h.low > 0
      ? { low: bucket_s(bucket_L.value, flow_L_h.high), high: bucket_s(bucket_L.value, flow_L_h.low) }
      : {}),
    unit: 's',
    safeSide: 'nearest',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('t', 'bucketTime', value, 's'),
        'b ÷ Q × 3600',
        [quantity('b', 'bucket', bucket_L.value, 'L'), quantity('Q', 'pumpFlow', flow_L_h.likely, 'L_h')],
        'cengel2006',
      ),
    ],
  });
}

/** How often an hour the tank's water goes through the pump. */
function turnoverFigure(system: System, levels: Levels, flow_L_h: Range): Figure {
  const on = on_frac(system);
  const times = (flow: number): number => (flow * on) / levels.tankFull_L;
  const slow: Note = {
    code: 'turnoverSlow',
    level: 'caution',
    numbers: { tankFull_L: levels.tankFull_L, wanted_L_h: levels.tankFull_L * turnoverWanted.value },
    source: turnoverWanted.source,
  };
  return figure({
    key: 'turnover',
    value: times(flow_L_h.likely),
    low: times(flow_L_h.low),
    high: times(flow_L_h.high),
    unit: 'ratio',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('n', 'turnover', times(flow_L_h.likely), 'ratio'),
        'Q × d ÷ T',
        [
          quantity('Q', 'pumpFlow', flow_L_h.likely, 'L_h'),
          quantity('d', 'timeOn', on, 'frac'),
          quantity('T', 'tankFull', levels.tankFull_L, 'L'),
        ],
        turnoverWanted.source,
      ),
    ],
    notes: times(flow_L_h.likely) < turnoverWanted.value * (1 - 1e-9) ? [slow] : [],
  });
}
