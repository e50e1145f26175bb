/** After a power cut: everything that can come down does; the lower vessel must still hold it. */
import { rim_L } from '../geometry/container.ts';
import type { Note } from '../note.ts';
import type { System, Vessel } from '../system.ts';
import type { Figure } from './figure.ts';
import { depthTogether_mm, full_L } from './vessel.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * Level of the lower vessel when the power is off and every bed has drained or siphoned back.
 * Full line plus the water that stood in the beds, against the rim. (The other extreme, beds that stay full, is the low line.)
 * @param system a checked system
 * @param water_L all water that can come together in the lower vessel
 * @param displaced_L room that stones standing in that vessel take
 * @returns height over its inside floor, null where it runs over, and the figures
 * @source geometry
 */
export function afterPowerCut(
  system: System,
  water_L: number,
  displaced_L: number,
): { readonly mm: number | null; readonly figures: readonly Figure[] } {
  const vessel = system.sump ?? system.tank;
  const rim = rim_L(vessel.container) * vessel.count - displaced_L;
  const over_L = water_L - rim;
  const overflows = over_L > 1e-9 * rim;
  const mm = overflows ? null : depthTogether_mm(vessel, water_L + displaced_L);
  const before_L = full_L(vessel) - displaced_L;
  const step = byHand(
    quantity('P', 'afterPowerCut', water_L, 'L'),
    'F + K',
    [
      quantity('F', system.sump ? 'sumpFull' : 'tankFull', before_L, 'L'),
      quantity('K', 'standingInBeds', water_L - before_L, 'L'),
    ],
    'geometry',
  );
  const spills: Note = {
    code: 'powerCutSpills',
    level: 'stop',
    numbers: { over_L, rim_L: rim },
    words: { vessel: system.sump ? 'sump' : 'tank' },
    source: 'geometry',
  };
  const cut = figure({
    key: 'afterPowerCut_L',
    value: water_L,
    unit: 'L',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [step],
    notes: overflows ? [spills] : [],
  });
  return { mm, figures: [cut, freeboard(vessel, mm, spills)] };
}

function freeboard(vessel: Vessel, mm: number | null, spills: Note): Figure {
  if (mm === null) return noFigure('freeboard_mm', 'mm', spills);
  const value = vessel.container.depth_mm - mm;
  return figure({
    key: 'freeboard_mm',
    value,
    unit: 'mm',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('f', 'freeboard', value, 'mm'),
        'R − p',
        [
          quantity('R', 'rimHeight', vessel.container.depth_mm, 'mm'),
          quantity('p', 'levelAfterPowerCut', mm, 'mm'),
        ],
        'geometry',
      ),
    ],
  });
}
