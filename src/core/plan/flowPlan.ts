/** Water moving: what the pump gives, how the beds fill and drain by it, and how low the vessel falls meanwhile. */
import { blockedHead_mm, blockedStep } from '../hydraulics/halfBlocked.ts';
import { waterViscosity_m2_s } from '../hydraulics/waterProperties.ts';
import type { Note } from '../note.ts';
import type { Range, System } from '../system.ts';
import type { BedPlan } from './beds.ts';
import type { Figure, Trace } from './figure.ts';
import { floodLevels } from './floodLevels.ts';
import { floodsOf } from './floods.ts';
import type { Levels } from './levels.ts';
import { pumpWork, warmth_degC } from './pumpPlan.ts';
import { siphonFigures } from './siphonPlan.ts';
import { figure, noFigure } from './write.ts';

/** A screen that leaves half of the standpipe open. */
const halfOpen_frac = 0.5;

export type FlowPlan = {
  readonly figures: readonly Figure[];
  readonly traces: readonly Trace[];
  /** null where nothing is pumped, or the pump is too weak. */
  readonly flow_L_h: Range | null;
};

/**
 * All figures and traces of moving water.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param levels its levels
 * @returns those of the pump, of every pumped bed, of the levels; nothing without a pump
 * @valid what each figure's own function says
 * @source see the figures
 */
export function flowPlan(system: System, beds: readonly BedPlan[], levels: Levels): FlowPlan {
  const work = pumpWork(system, levels);
  const blocked = beds.flatMap((bed) => blockedScreenFigures(system, bed));
  if (system.pump === null || work.figures.length === 0) return { figures: [], traces: [], flow_L_h: null };
  if (work.flow_L_h === null) {
    const none: Note = { code: 'noFlowNoLevels', level: 'info', numbers: {}, source: 'epanetManual' };
    const missing = [noFigure('levelLowest_mm', 'mm', none), noFigure('returnFlow_L_h', 'L_h', none)];
    return { figures: [...work.figures, ...blocked, ...missing], traces: [], flow_L_h: null };
  }
  const floods = floodsOf(system, beds, work.flow_L_h, waterViscosity_m2_s(warmth_degC(system)));
  const shared = floods.reduce((sum, flood) => sum + flood.of.bed.count, 0);
  const followed = floodLevels(system, floods, levels, work.flow_L_h.likely);
  return {
    figures: [
      ...work.figures,
      ...floods.flatMap((flood) => siphonFigures(flood, shared)),
      ...blocked,
      ...followed.figures,
    ],
    traces: followed.traces,
    flow_L_h: work.flow_L_h,
  };
}

/** Leaves and stones lie on the screen, and the whole flow comes to this bed. */
function blockedScreenFigures(system: System, of: BedPlan): readonly Figure[] {
  const { bed } = of;
  if (system.pump === null || bed.standpipeBore_mm === null || bed.mode === 'inTank') return [];
  const over_mm = blockedHead_mm(bed.standpipeBore_mm, system.pump.flow_L_h, halfOpen_frac);
  const surface_mm = of.line_mm + over_mm;
  const spills: Note = {
    code: 'screenBlockedSpills',
    level: 'stop',
    numbers: { surface_mm, rim_mm: bed.container.depth_mm },
    words: { bed: bed.name },
    source: 'epaSwmmHydraulics',
  };
  return [
    figure({
      key: `bed${of.number}.halfBlocked_mm`,
      value: over_mm,
      unit: 'mm',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [blockedStep(bed.standpipeBore_mm, system.pump.flow_L_h, halfOpen_frac)],
      notes: surface_mm >= bed.container.depth_mm ? [spills] : [],
    }),
  ];
}
