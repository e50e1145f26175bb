/** Where the water stands: full, low, after a power cut, and with the return blocked while the pump runs. */
import { tankPerBed } from '../constants.ts';
import { volumeStep } from '../geometry/volumeStep.ts';
import type { Note } from '../note.ts';
import type { System, Vessel } from '../system.ts';
import { type BedPlan, floodsAndDrains } from './beds.ts';
import { blockedFigures } from './blockedReturn.ts';
import type { Figure } from './figure.ts';
import { afterPowerCut } from './powerCut.ts';
import { depthTogether_mm, full_L, timesStep } from './vessel.ts';
import { byHand, figure, quantity } from './write.ts';

/** The levels as bare numbers, for the rules and the drawing; the figures carry the steps. */
export type Levels = {
  readonly tankFull_L: number;
  readonly tankLow_L: number;
  /** Level of the vessel that gives the beds their water: the sump, or the tank. */
  readonly sourceLow_mm: number;
  /** null where it would run over the rim. */
  readonly afterPowerCut_mm: number | null;
  readonly systemWater_L: number;
  readonly figures: readonly Figure[];
};

/**
 * All levels of a system.
 * Every litre is counted once: what the beds take is missing below, what they give back is added.
 * @param system a checked system
 * @param beds its beds, worked out
 * @returns levels and their figures
 * @valid pipes are not counted; a cut in the power lasts long enough for everything to come down
 * @source geometry; commonPractice for the twice-the-bed rule
 */
export function levels(system: System, beds: readonly BedPlan[]): Levels {
  const source = system.sump ?? system.tank;
  const displaced_L = sum(beds, (bed) => bed.displaced_L);
  const tankFull_L = full_L(system.tank) - displaced_L;
  const sourceFull_L = system.sump ? full_L(system.sump) : tankFull_L;
  const moved = {
    low: sum(beds, (bed) => bed.moved_L.low),
    likely: sum(beds, (bed) => bed.moved_L.likely),
    high: sum(beds, (bed) => bed.moved_L.high),
  };
  const sourceLow_L = sourceFull_L - moved.high;
  const inSource_L = system.sump ? 0 : displaced_L;
  const sourceLow_mm = depthTogether_mm(source, sourceLow_L + inSource_L);
  const tankLow_L = system.sump ? tankFull_L : sourceLow_L;
  const standing = standing_L(beds);
  const systemWater_L = tankFull_L + (system.sump ? sourceFull_L : 0) + standing.likely;
  const cut = afterPowerCut(system, sourceFull_L + standing.high, inSource_L);
  return {
    tankFull_L,
    tankLow_L,
    sourceLow_mm,
    afterPowerCut_mm: cut.mm,
    systemWater_L,
    figures: [
      tankFullFigure(system.tank, tankFull_L, displaced_L),
      ...(system.sump ? [sumpFullFigure(system.sump)] : []),
      movedFigure(beds, moved),
      ...lowFigures(system, sourceFull_L, sourceLow_L, sourceLow_mm, moved),
      ...tankToBedFigures(system, beds, tankFull_L + (system.sump ? sourceFull_L : 0)),
      ...cut.figures,
      ...blockedFigures(system, tankFull_L, sourceLow_mm),
      systemWaterFigure(systemWater_L, tankFull_L, system.sump ? sourceFull_L : 0, standing),
    ],
  };
}

function sum<T>(of: readonly T[], value: (one: T) => number): number {
  return of.reduce((total, one) => total + value(one), 0);
}

/** Water that stands in the beds while the lower vessel stands at its full line. */
function standing_L(beds: readonly BedPlan[]): { low: number; likely: number; high: number } {
  const still = beds.filter((bed) => bed.bed.mode !== 'inTank');
  return {
    low: sum(still, (bed) => bed.left_L.low),
    likely: sum(still, (bed) => bed.left_L.likely),
    high: sum(still, (bed) => bed.left_L.high),
  };
}

function tankFullFigure(tank: Vessel, tankFull_L: number, displaced_L: number): Figure {
  const gross_L = tankFull_L + displaced_L;
  const steps = [
    volumeStep(tank.container, tank.full_mm),
    ...timesStep(tank.count, gross_L / tank.count, quantity('T', 'tankFull', gross_L, 'L')),
  ];
  if (displaced_L > 0) {
    const symbols = [
      quantity('V', 'oneContainer', gross_L, 'L'),
      quantity('S', 'stoneInTank', displaced_L, 'L'),
    ];
    steps.push(byHand(quantity('T', 'tankFull', tankFull_L, 'L'), 'V − S', symbols, 'geometry'));
  }
  return figure({
    key: 'tankFull_L',
    value: tankFull_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps,
  });
}

function sumpFullFigure(sump: Vessel): Figure {
  const value = full_L(sump);
  const steps = [
    volumeStep(sump.container, sump.full_mm),
    ...timesStep(sump.count, value / sump.count, quantity('S', 'sumpFull', value, 'L')),
  ];
  return figure({ key: 'sumpFull_L', value, unit: 'L', safeSide: 'down', confidence: 'measured', steps });
}

type Moved = { readonly low: number; readonly likely: number; readonly high: number };

function movedFigure(beds: readonly BedPlan[], moved: Moved): Figure {
  const flooding = beds.filter((bed) => floodsAndDrains(bed.bed));
  const still: Note = { code: 'levelStandsStill', level: 'info', numbers: {}, source: 'commonPractice' };
  const symbols = flooding.map((bed) => quantity(`M${bed.number}`, 'waterMoved', bed.moved_L.likely, 'L'));
  const gives = quantity('M', 'allWaterMoved', moved.likely, 'L');
  return figure({
    key: 'waterMoved_L',
    value: moved.likely,
    ...moved,
    unit: 'L',
    safeSide: 'up',
    confidence: 'estimate',
    steps:
      flooding.length === 0
        ? []
        : [byHand(gives, symbols.map((s) => s.sign).join(' + '), symbols, 'geometry')],
    notes: flooding.length === 0 ? [still] : [],
  });
}

function lowFigures(
  system: System,
  before_L: number,
  low_L: number,
  low_mm: number,
  moved: Moved,
): readonly Figure[] {
  const name = system.sump ? 'sump' : 'tank';
  const source = system.sump ?? system.tank;
  const low = figure({
    key: `${name}Low_L`,
    value: low_L,
    low: low_L,
    high: before_L - moved.low,
    unit: 'L',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('L', `${name}Low`, low_L, 'L'),
        'F − M',
        [quantity('F', `${name}Full`, before_L, 'L'), quantity('M', 'mostWaterMoved', moved.high, 'L')],
        'geometry',
      ),
    ],
  });
  const depth = figure({
    key: `${name}Low_mm`,
    value: low_mm,
    unit: 'mm',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [volumeStep(source.container, low_mm)],
  });
  const drawdown = figure({
    key: 'drawdown_mm',
    value: source.full_mm - low_mm,
    unit: 'mm',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('d', 'drawdown', source.full_mm - low_mm, 'mm'),
        'f − l',
        [quantity('f', 'fullLine', source.full_mm, 'mm'), quantity('l', 'lowLine', low_mm, 'mm')],
        'geometry',
      ),
    ],
  });
  return system.sump ? [tankStands(full_L(system.tank)), low, depth, drawdown] : [low, depth, drawdown];
}

/** With a sump the fish tank overflows all the time, so its lowest volume is its full one. */
function tankStands(value: number): Figure {
  return figure({
    key: 'tankLow_L',
    value,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps: [
      byHand(quantity('L', 'tankLow', value, 'L'), 'F', [quantity('F', 'tankFull', value, 'L')], 'geometry'),
    ],
    notes: [{ code: 'tankOverflows', level: 'info', numbers: {}, source: 'commonPractice' }],
  });
}

function tankToBedFigures(system: System, beds: readonly BedPlan[], water_L: number): readonly Figure[] {
  const bed_L = sum(beds, (bed) => (floodsAndDrains(bed.bed) ? bed.wetMedia_L : 0));
  if (bed_L === 0) return [];
  const wanted_L = bed_L * tankPerBed.value;
  const short: Note = {
    code: system.sump ? 'waterUnderTwiceBedSump' : 'tankUnderTwiceBed',
    level: 'caution',
    numbers: { tankFull_L: water_L, wanted_L },
    source: tankPerBed.source,
  };
  return [
    figure({
      key: 'tankWanted_L',
      value: wanted_L,
      unit: 'L',
      safeSide: 'up',
      confidence: 'rule',
      steps: [
        byHand(
          quantity('T', 'tankWanted', wanted_L, 'L'),
          'r × B',
          [quantity('r', 'tankPerBed', tankPerBed.value, 'ratio'), quantity('B', 'floodBeds', bed_L, 'L')],
          tankPerBed.source,
        ),
      ],
      notes: water_L * (1 + 1e-9) < wanted_L ? [short] : [],
    }),
  ];
}

function systemWaterFigure(water_L: number, tank_L: number, sump_L: number, standing: Moved): Figure {
  const symbols = [
    quantity('F', 'tankFull', tank_L, 'L'),
    ...(sump_L > 0 ? [quantity('S', 'sumpFull', sump_L, 'L')] : []),
    quantity('K', 'standingInBeds', standing.likely, 'L'),
  ];
  return figure({
    key: 'systemWater_L',
    value: water_L,
    low: tank_L + sump_L + standing.low,
    high: tank_L + sump_L + standing.high,
    unit: 'L',
    safeSide: 'nearest',
    confidence: standing.low === standing.high ? 'measured' : 'estimate',
    steps: [
      byHand(
        quantity('A', 'systemWater', water_L, 'L'),
        symbols.map((s) => s.sign).join(' + '),
        symbols,
        'geometry',
      ),
    ],
  });
}
