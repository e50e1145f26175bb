/** How every pumped bed fills and drains: its share of the flow, its drain, and the layers that time is counted in. */
import { type Cell, bedCells } from '../hydraulics/bedCells.ts';
import { fullPipeFlow_L_h, mouthCloses_L_h } from '../hydraulics/bellSiphon.ts';
import type { Drains, Rhythm } from '../hydraulics/filling.ts';
import { fittingK } from '../hydraulics/fittings.ts';
import { holeCd, roughness_mm, siphonTail_mm, starts_L_h } from '../hydraulics/hydraulicConstants.ts';
import { orificeFlow_L_h } from '../hydraulics/orifice.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../hydraulics/standpipe.ts';
import type { Bed, Range, System } from '../system.ts';
import type { BedPlan } from './beds.ts';
import { lowerVessel } from './lowerVessel.ts';
import { timerOf } from './timer.ts';

export type Flood = {
  readonly of: BedPlan;
  /** Into this bed, all its equal containers together. */
  readonly inflow_L_h: Range;
  /** null: its drain was not measured, so nobody can follow it. */
  readonly drains: Drains | null;
  readonly siphon: Siphon | null;
  readonly rhythm: Rhythm | null;
  /** Highest water while the pump gives this flow. */
  readonly top_mm: number;
  /** Layers for a void fraction and a flow into the bed. */
  readonly cells: (void_frac: number, inflow_L_h: number) => readonly Cell[];
};

/** A siphon's limits for one container, as bands. */
export type Siphon = {
  readonly starts_L_h: { readonly low: number; readonly high: number };
  /** What it draws when the bed is nearly down, and when it is full. */
  readonly bottom_L_h: { readonly low: number; readonly high: number };
  readonly full_L_h: { readonly low: number; readonly high: number };
};

/**
 * Every pumped bed with its share of the pump's flow.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param flow_L_h the pump's flow
 * @param viscosity_m2_s kinematic viscosity of the water
 * @returns one Flood for each bed that is pumped, in the order of the system
 * @valid the flow shared alike between all containers, since nobody told otherwise
 * @source commonPractice
 */
export function floodsOf(
  system: System,
  beds: readonly BedPlan[],
  flow_L_h: Range,
  viscosity_m2_s: number,
): readonly Flood[] {
  const fed = beds.filter(({ bed }) => bed.mode !== 'inTank');
  const containers = fed.reduce((sum, { bed }) => sum + bed.count, 0);
  const timer = timerOf(system);
  const rhythm = timer === null ? null : { on_s: timer.on_min * 60, off_s: timer.off_min * 60 };
  return fed.map((of) => {
    const share = of.bed.count / containers;
    const inflow_L_h = {
      low: flow_L_h.low * share,
      likely: flow_L_h.likely * share,
      high: flow_L_h.high * share,
    };
    return floodOf(of, { inflow_L_h, rhythm, fall_mm: fallOf(system, of.bed), viscosity_m2_s });
  });
}

type Fall = { readonly low: number; readonly high: number };

/** Pipe below the bed's underside: the usual tail, or all the way down to the water; never more than there is. */
function fallOf(system: System, bed: Bed): Fall {
  const { vessel } = lowerVessel(system);
  const high = Math.max(0, bed.above_mm - vessel.above_mm - vessel.full_mm);
  return { low: Math.min(siphonTail_mm.value, high), high };
}

type Circumstances = {
  readonly inflow_L_h: Range;
  readonly rhythm: Rhythm | null;
  readonly fall_mm: Fall;
  readonly viscosity_m2_s: number;
};

function floodOf(of: BedPlan, at: Circumstances): Flood {
  const { bed, line_mm } = of;
  const { count } = bed;
  const bore_mm = bed.standpipeBore_mm;
  const siphon = bed.mode === 'siphon' && bore_mm !== null ? siphonOf(of, bore_mm, at) : null;
  const drains = drainsOf(bed, siphon, at.inflow_L_h.likely / count);
  const topAt = (inflow_L_h: number): number =>
    line_mm + (bore_mm === null ? 0 : standpipeHead_mm(bore_mm, inflow_L_h / count));
  const drain = drainFlow(of, drains, at);
  return {
    of,
    inflow_L_h: at.inflow_L_h,
    drains,
    siphon,
    rhythm: at.rhythm,
    top_mm: Math.min(topAt(at.inflow_L_h.likely), bed.container.depth_mm),
    cells: (void_frac, inflow_L_h) =>
      bedCells({
        container: bed.container,
        count,
        void_frac,
        mediaDepth_mm: bed.mediaDepth_mm,
        drained_mm: bed.mode === 'constantFlood' ? line_mm : bed.drained_mm,
        line_mm,
        top_mm: topAt(inflow_L_h),
        lip: (overLip_mm) => (bore_mm === null ? 0 : standpipeFlow_L_h(bore_mm, overLip_mm) * count),
        drain: (depth_mm) => drain(depth_mm) * count,
      }),
  };
}

/** A siphon that the flow never starts leaves a bed that stands at its lip, as at constant flood. */
function drainsOf(bed: Bed, siphon: Siphon | null, inflow_L_h: number): Drains | null {
  if (bed.mode === 'constantFlood') return 'lip';
  if (bed.mode === 'timer') return (bed.drainHole_mm ?? null) === null ? null : 'hole';
  if (siphon === null) return null;
  return inflow_L_h < siphon.starts_L_h.low ? 'lip' : 'siphon';
}

function drainFlow(of: BedPlan, drains: Drains | null, at: Circumstances): (depth_mm: number) => number {
  const { bed } = of;
  const bore_mm = bed.standpipeBore_mm;
  if (drains === 'siphon' && bore_mm !== null) {
    const pull = siphonPull(of, bore_mm, at, 'low');
    return (depth_mm) => pull(depth_mm);
  }
  const hole_mm = bed.drainHole_mm ?? null;
  if (drains !== 'hole' || hole_mm === null) return () => 0;
  return (depth_mm) => orificeFlow_L_h(hole_mm, Math.max(0, depth_mm - bed.drained_mm), holeCd.value);
}

/** Flow of a running siphon by the depth in the bed: with a short tail and two bends, or straight down to the water. */
function siphonPull(
  of: BedPlan,
  bore_mm: number,
  at: Circumstances,
  end: 'low' | 'high',
): (depth_mm: number) => number {
  const tail_mm = at.fall_mm[end];
  const bends = end === 'low' ? 2 * fittingK.elbowShort : 0;
  const K = fittingK.entrance + fittingK.returnBend + bends + fittingK.exit;
  const wall_mm = Math.min(end === 'low' ? roughness_mm.slimy : roughness_mm.fresh, bore_mm / 20);
  const pipe = { bore_mm, length_m: (of.line_mm + tail_mm) / 1000, roughness_mm: wall_mm };
  return (depth_mm) => fullPipeFlow_L_h(pipe, K, depth_mm + tail_mm, at.viscosity_m2_s);
}

function siphonOf(of: BedPlan, bore_mm: number, at: Circumstances): Siphon {
  const [low, high] = [siphonPull(of, bore_mm, at, 'low'), siphonPull(of, bore_mm, at, 'high')];
  const told = starts_L_h.flow * (bore_mm / starts_L_h.bore_mm) ** 2.5;
  const { drained_mm } = of.bed;
  return {
    starts_L_h: { low: told, high: mouthCloses_L_h(bore_mm) },
    bottom_L_h: { low: low(drained_mm), high: high(drained_mm) },
    full_L_h: { low: low(of.line_mm), high: high(of.line_mm) },
  };
}
