/** The figures of the levels, each with its steps and notes. */
import type { Note } from '../note.ts';
import type { Range } from '../system.ts';
import { type BedPlan, floodsAndDrains } from './beds.ts';
import type { Figure } from './figure.ts';
import { type LowerVessel, waterBelow_L, waterSteps } from './lowerVessel.ts';
import { mostMovedSteps } from './mostMoved.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * The fish tank at its full line, less the media of baskets that stand in it.
 * @param tank the fish tank and its baskets
 * @param tankFull_L its water at the full line
 * @returns tankFull_L
 * @source geometry
 */
export function tankFullFigure(tank: LowerVessel, tankFull_L: number): Figure {
  return figure({
    key: 'tankFull_L',
    value: tankFull_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps: waterSteps(tank, tank.vessel.full_mm, quantity('T', 'tankFull', tankFull_L, 'L')),
  });
}

/**
 * The sump at its full line.
 * @param sump the sump
 * @returns sumpFull_L
 * @source geometry
 */
export function sumpFullFigure(sump: LowerVessel): Figure {
  const value = waterBelow_L(sump, sump.vessel.full_mm);
  return figure({
    key: 'sumpFull_L',
    value,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps: waterSteps(sump, sump.vessel.full_mm, quantity('S', 'sumpFull', value, 'L')),
  });
}

/**
 * Water that all flood beds take together.
 * @param beds all beds, worked out
 * @param moved its range, litres
 * @returns waterMoved_L, with a note where nothing moves
 * @source geometry
 */
export function movedFigure(beds: readonly BedPlan[], moved: Range): Figure {
  const flooding = beds.filter((bed) => floodsAndDrains(bed.bed));
  const still: Note = { code: 'levelStandsStill', level: 'info', numbers: {}, source: 'commonPractice' };
  const symbols = flooding.map((bed) => quantity(`M${bed.number}`, 'waterMoved', bed.moved_L.likely, 'L'));
  const gives = quantity('M', 'allWaterMoved', moved.likely, 'L');
  return figure({
    key: 'waterMoved_L',
    value: moved.likely,
    low: moved.low,
    high: moved.high,
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

/**
 * The lowest level of normal running: all flood beds full at once, with the loosest media.
 * @param source the pump's vessel and the baskets in it
 * @param at water of the fish tank and of the pump's vessel at their full lines, and of the latter with all beds full
 * @param moved range of what the beds take
 * @param beds the beds, worked out
 * @returns tankLow_L or sumpLow_L, the level in mm, drawdown_mm; with a sump also the tank, which stands
 * @source geometry; commonPractice for the tank that overflows into a sump
 */
export function lowFigures(
  source: LowerVessel,
  at: {
    readonly tankFull_L: number;
    readonly before_L: number;
    readonly low_L: number;
    readonly low_mm: number;
  },
  moved: Range,
  beds: readonly BedPlan[],
): readonly Figure[] {
  const { name, vessel } = source;
  const { before_L, low_L, low_mm } = at;
  const low = figure({
    key: `${name}Low_L`,
    value: low_L,
    low: low_L,
    high: before_L - moved.low,
    unit: 'L',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      ...mostMovedSteps(beds, moved.high),
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
    steps: waterSteps(source, low_mm, quantity('L', `${name}Low`, low_L, 'L')),
  });
  const drawdown = figure({
    key: 'drawdown_mm',
    value: vessel.full_mm - low_mm,
    unit: 'mm',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('d', 'drawdown', vessel.full_mm - low_mm, 'mm'),
        'f − l',
        [quantity('f', 'fullLine', vessel.full_mm, 'mm'), quantity('l', 'lowLine', low_mm, 'mm')],
        'geometry',
      ),
    ],
  });
  return name === 'sump' ? [tankStands(at.tankFull_L), low, depth, drawdown] : [low, depth, drawdown];
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

/**
 * All water of the system: at the full line, with what stays in the beds.
 * @param water_L their sum
 * @param tank_L water of the tank
 * @param sump_L water of the sump, 0 without one
 * @param standing range of what stands in the beds
 * @returns systemWater_L
 * @source geometry
 */
export function systemWaterFigure(water_L: number, tank_L: number, sump_L: number, standing: Range): Figure {
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
