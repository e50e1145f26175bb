/** The figures of one bed, each with its steps and notes. */
import { surfaceSteps } from '../geometry/surfaceSteps.ts';
import { volumeStep } from '../geometry/volumeStep.ts';
import { standpipeHead_mm } from '../hydraulics/standpipe.ts';
import { standpipeStep } from '../hydraulics/standpipeStep.ts';
import type { Note } from '../note.ts';
import type { Bed, Pump, Range } from '../system.ts';
import type { Figure } from './figure.ts';
import { timesStep } from './vessel.ts';
import { byHand, figure, quantity } from './write.ts';

/** The water and the media of one bed. */
export type BedWater = {
  readonly bed: Bed;
  readonly number: number;
  readonly line_mm: number;
  readonly wetMedia_L: number;
  /** Wet media that never drains: what lies below the drain, all of it where the level stands still. */
  readonly belowDrain_L: number;
  /** Water surface at the line, all equal containers together. */
  readonly surface_m2: number;
  /** Water in the wet media. */
  readonly held_L: Range;
  /** Water that leaves with every draining; 0 where the level stands still. */
  readonly moved_L: Range;
  /** Water that stays below the drain. */
  readonly left_L: Range;
};

/**
 * The figures of a bed.
 * @param of its water and media
 * @param volumes litres of one container to the water line, and of all to the drain; null where the level stands
 * @param pump the system's pump
 * @returns wet media, water held, dry layer; water moved where the bed drains; over the lip where pump and bore are known
 * @source geometry; void fractions as each media's file says; standpipeHead_mm for the lip
 */
export function bedFigures(
  of: BedWater,
  volumes: { readonly one_L: number; readonly drained_L: number | null },
  pump: Pump | null,
): readonly Figure[] {
  return [
    wetMediaFigure(of, volumes.one_L),
    heldFigure(of),
    dryLayerFigure(of),
    ...(volumes.drained_L === null ? [] : [movedFigure(of, volumes.drained_L)]),
    ...overLipFigures(of, pump),
  ];
}

function key(of: BedWater, name: string): string {
  return `bed${of.number}.${name}`;
}

function wetMediaFigure(of: BedWater, one_L: number): Figure {
  const { container, count } = of.bed;
  const steps = [
    ...surfaceSteps(container, of.line_mm),
    volumeStep(container, of.line_mm),
    ...timesStep(count, one_L, quantity('W', 'wetMedia', of.wetMedia_L, 'L')),
  ];
  return figure({
    key: key(of, 'wetMedia_L'),
    value: of.wetMedia_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps,
  });
}

function heldFigure(of: BedWater): Figure {
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

function voidIsRange(of: BedWater): Note {
  const { void_frac, source, name } = of.bed.media;
  return {
    code: 'voidIsRange',
    level: 'info',
    numbers: { low_frac: void_frac.low, high_frac: void_frac.high },
    words: { media: name },
    source,
  };
}

function movedFigure(of: BedWater, drained_L: number): Figure {
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

function dryLayerFigure(of: BedWater): Figure {
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
function dryLayerNotes(of: BedWater, dry_mm: number): readonly Note[] {
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
function overLipFigures(of: BedWater, pump: Pump | null): readonly Figure[] {
  const { bed } = of;
  if (pump === null || bed.standpipeBore_mm === null || bed.mode === 'inTank') return [];
  const overLip_mm = standpipeHead_mm(bed.standpipeBore_mm, pump.flow_L_h);
  const surface_mm = of.line_mm + overLip_mm;
  return [
    figure({
      key: key(of, 'overLip_mm'),
      value: overLip_mm,
      unit: 'mm',
      safeSide: 'up',
      confidence: 'estimate',
      steps: [standpipeStep(bed.standpipeBore_mm, pump.flow_L_h)],
      notes: overLipNotes(of, surface_mm),
    }),
  ];
}

function overLipNotes(of: BedWater, surface_mm: number): readonly Note[] {
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
