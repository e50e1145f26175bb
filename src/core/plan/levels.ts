/** Where the water stands: full, low, after a power cut, and with the return blocked while the pump runs. */
import { tankPerBed } from '../constants.ts';
import type { Note } from '../note.ts';
import type { Range, System } from '../system.ts';
import { type BedPlan, floodsAndDrains } from './beds.ts';
import { blockedFigures } from './blockedReturn.ts';
import type { Figure } from './figure.ts';
import {
  lowFigures,
  movedFigure,
  sumpFullFigure,
  systemWaterFigure,
  tankFullFigure,
} from './levelFigures.ts';
import { fishTank, levelOf_mm, lowerVessel, waterBelow_L } from './lowerVessel.ts';
import { afterPowerCut } from './powerCut.ts';
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
  const source = lowerVessel(system);
  const tank = fishTank(system);
  const tankFull_L = waterBelow_L(tank, tank.vessel.full_mm);
  const sourceFull_L = waterBelow_L(source, source.vessel.full_mm);
  const moved = {
    low: sum(beds, (bed) => bed.moved_L.low),
    likely: sum(beds, (bed) => bed.moved_L.likely),
    high: sum(beds, (bed) => bed.moved_L.high),
  };
  const sourceLow_L = sourceFull_L - moved.high;
  const sourceLow_mm = levelOf_mm(source, sourceLow_L);
  const tankLow_L = system.sump ? tankFull_L : sourceLow_L;
  const standing = standing_L(beds);
  const systemWater_L = tankFull_L + (system.sump ? sourceFull_L : 0) + standing.likely;
  const cut = afterPowerCut(source, sourceFull_L, standing.high);
  return {
    tankFull_L,
    tankLow_L,
    sourceLow_mm,
    afterPowerCut_mm: cut.mm,
    systemWater_L,
    figures: [
      tankFullFigure(tank, tankFull_L),
      ...(system.sump ? [sumpFullFigure(source)] : []),
      movedFigure(beds, moved),
      ...lowFigures(
        source,
        { tankFull_L, before_L: sourceFull_L, low_L: sourceLow_L, low_mm: sourceLow_mm },
        moved,
        beds,
      ),
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
function standing_L(beds: readonly BedPlan[]): Range {
  const still = beds.filter((bed) => bed.bed.mode !== 'inTank');
  return {
    low: sum(still, (bed) => bed.left_L.low),
    likely: sum(still, (bed) => bed.left_L.likely),
    high: sum(still, (bed) => bed.left_L.high),
  };
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
