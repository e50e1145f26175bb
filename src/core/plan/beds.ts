/** What each bed holds: wet media, the water in it, the dry layer above, the water over its lip. */
import { volume_L } from '../geometry/container.ts';
import { volumeStep } from '../geometry/volumeStep.ts';
import { standpipeHead_mm } from '../hydraulics/standpipe.ts';
import { standpipeStep } from '../hydraulics/standpipeStep.ts';
import type { Note } from '../note.ts';
import type { Bed, Range, System } from '../system.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, quantity } from './write.ts';

/** One bed worked out: the numbers that the other parts of the plan build on, and its figures. */
export type BedPlan = {
  readonly bed: Bed;
  readonly number: number;
  readonly line_mm: number;
  readonly wetMedia_L: number;
  /** Water in the wet media. */
  readonly held_L: Range;
  /** Water that leaves with every draining; 0 where the level stands still. */
  readonly moved_L: Range;
  /** Water that stays below the drain. */
  readonly left_L: Range;
  /** Water that the stones of a basket push aside in the tank. */
  readonly displaced_L: number;
  readonly figures: readonly Figure[];
};

/**
 * Every bed of a system, worked out in the order of the system.
 * @param system a checked system
 * @returns one BedPlan a bed
 * @valid a system that `schemas` has checked
 * @source geometry; void fractions as each media's file says
 */
export function bedPlans(system: System): readonly BedPlan[] {
  return system.beds.map((bed, index) => bedPlan(system, bed, index + 1));
}

/**
 * Whether a bed fills and empties in turns.
 * @param bed a bed
 * @returns true for the siphon and the timer
 * @source commonPractice
 */
export function floodsAndDrains(bed: Bed): boolean {
  return bed.mode === 'siphon' || bed.mode === 'timer';
}

/**
 * Height of the highest water over the bed's inside floor.
 * The lip of the standpipe; for a basket the tank's full line, at most the media's top.
 * @param system the system the bed is part of
 * @param bed one of its beds
 * @returns mm over the bed's inside floor
 * @source geometry
 */
export function bedLine_mm(system: System, bed: Bed): number {
  if (bed.mode !== 'inTank') return bed.waterLine_mm;
  return Math.max(0, Math.min(bed.mediaDepth_mm, system.tank.full_mm - bed.above_mm));
}

function bedPlan(system: System, bed: Bed, number: number): BedPlan {
  const line_mm = bedLine_mm(system, bed);
  const one_L = volume_L(bed.container, line_mm);
  const wetMedia_L = one_L * bed.count;
  const drained_L = floodsAndDrains(bed) ? volume_L(bed.container, bed.drained_mm) * bed.count : wetMedia_L;
  const base = {
    bed,
    number,
    line_mm,
    wetMedia_L,
    held_L: times(bed.media.void_frac, wetMedia_L),
    moved_L: times(bed.media.void_frac, wetMedia_L - drained_L),
    left_L: times(bed.media.void_frac, drained_L),
    displaced_L: bed.mode === 'inTank' ? wetMedia_L * (1 - bed.media.void_frac.low) : 0,
  };
  const figures = [
    wetMediaFigure(base, one_L),
    heldFigure(base),
    dryLayerFigure(base),
    ...(floodsAndDrains(bed) ? [movedFigure(base, drained_L)] : []),
    ...overLipFigures(base, system),
  ];
  return { ...base, figures };
}

type Base = Omit<BedPlan, 'figures'>;

function key(of: Base, name: string): string {
  return `bed${of.number}.${name}`;
}

function wetMediaFigure(of: Base, one_L: number): Figure {
  const steps: Step[] = [volumeStep(of.bed.container, of.line_mm)];
  if (of.bed.count > 1) {
    steps.push(
      byHand(
        quantity('W', 'wetMedia', of.wetMedia_L, 'L'),
        'n × V',
        [quantity('n', 'equalContainers', of.bed.count, 'ratio'), quantity('V', 'oneContainer', one_L, 'L')],
        'geometry',
      ),
    );
  }
  return figure({
    key: key(of, 'wetMedia_L'),
    value: of.wetMedia_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps,
  });
}

function heldFigure(of: Base): Figure {
  const { void_frac, source, voidFrom } = of.bed.media;
  return figure({
    key: key(of, 'waterHeld_L'),
    value: of.held_L.likely,
    low: of.held_L.low,
    high: of.held_L.high,
    unit: 'L',
    safeSide: 'up',
    confidence: voidFrom === 'bucketTest' ? 'measured' : 'estimate',
    steps: [
      byHand(
        quantity('H', 'waterHeld', of.held_L.likely, 'L'),
        'W × e',
        [
          quantity('W', 'wetMedia', of.wetMedia_L, 'L'),
          quantity('e', 'voidFraction', void_frac.likely, 'frac'),
        ],
        source,
      ),
    ],
    notes: voidFrom === 'bucketTest' ? [] : [voidIsRange(of)],
  });
}

function voidIsRange(of: Base): Note {
  const { void_frac, source, name } = of.bed.media;
  return {
    code: 'voidIsRange',
    level: 'info',
    numbers: { low_frac: void_frac.low, high_frac: void_frac.high },
    words: { media: name },
    source,
  };
}

function movedFigure(of: Base, drained_L: number): Figure {
  return figure({
    key: key(of, 'waterMoved_L'),
    value: of.moved_L.likely,
    low: of.moved_L.low,
    high: of.moved_L.high,
    unit: 'L',
    safeSide: 'up',
    confidence: of.bed.media.voidFrom === 'bucketTest' ? 'measured' : 'estimate',
    steps: [
      byHand(
        quantity('M', 'waterMoved', of.moved_L.likely, 'L'),
        '(W − D) × e',
        [
          quantity('W', 'wetMedia', of.wetMedia_L, 'L'),
          quantity('D', 'belowDrain', drained_L, 'L'),
          quantity('e', 'voidFraction', of.bed.media.void_frac.likely, 'frac'),
        ],
        of.bed.media.source,
      ),
    ],
  });
}

function dryLayerFigure(of: Base): Figure {
  const dry_mm = of.bed.mediaDepth_mm - of.line_mm;
  return figure({
    key: key(of, 'dryLayer_mm'),
    value: dry_mm,
    unit: 'mm',
    safeSide: 'nearest',
    confidence: 'measured',
    steps: [
      byHand(
        quantity('d', 'dryLayer', dry_mm, 'mm'),
        'm − w',
        [
          quantity('m', 'mediaDepth', of.bed.mediaDepth_mm, 'mm'),
          quantity('w', 'waterLine', of.line_mm, 'mm'),
        ],
        'geometry',
      ),
    ],
    notes: dryLayerNotes(of, dry_mm),
  });
}

/** FAO 589 speaks of 20 to 50 mm of dry media; a thinner layer grows algae and wets the leaves. */
function dryLayerNotes(of: Base, dry_mm: number): readonly Note[] {
  if (of.bed.mode === 'inTank' || dry_mm >= 20) return [];
  return [
    {
      code: 'dryLayerThin',
      level: 'caution',
      numbers: { dryLayer_mm: dry_mm },
      words: { bed: of.bed.name },
      source: 'fao589',
    },
  ];
}

/** How high the water stands over the lip when one bed has to take all that the pump gives. */
function overLipFigures(of: Base, system: System): readonly Figure[] {
  const { bed } = of;
  if (system.pump === null || bed.standpipeBore_mm === null || bed.mode === 'inTank') return [];
  const overLip_mm = standpipeHead_mm(bed.standpipeBore_mm, system.pump.flow_L_h);
  const surface_mm = of.line_mm + overLip_mm;
  return [
    figure({
      key: key(of, 'overLip_mm'),
      value: overLip_mm,
      unit: 'mm',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [standpipeStep(bed.standpipeBore_mm, system.pump.flow_L_h)],
      notes: overLipNotes(of, surface_mm),
    }),
  ];
}

function overLipNotes(of: Base, surface_mm: number): readonly Note[] {
  const { bed } = of;
  const numbers = { surface_mm, mediaDepth_mm: bed.mediaDepth_mm, rim_mm: bed.container.depth_mm };
  const words = { bed: bed.name };
  if (surface_mm >= bed.container.depth_mm) {
    return [{ code: 'standpipeTooSmall', level: 'stop', numbers, words, source: 'epaSwmmHydraulics' }];
  }
  if (surface_mm > bed.mediaDepth_mm) {
    return [{ code: 'waterOverMedia', level: 'caution', numbers, words, source: 'epaSwmmHydraulics' }];
  }
  return [];
}

function times(range: Range, by: number): Range {
  return { low: range.low * by, likely: range.likely * by, high: range.high * by };
}
