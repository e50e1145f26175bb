/** After a power cut: everything that can come down does; the lower vessel must still hold it. */
import { rim_mm } from '../geometry/rim.ts';
import type { Note } from '../note.ts';
import type { Vessel } from '../system.ts';
import type { Figure } from './figure.ts';
import { type LowerVessel, levelOf_mm, waterBelow_L } from './lowerVessel.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * Level of the lower vessel when the power is off and every bed has drained or siphoned back.
 * Full line plus the water that stood in the beds, against the rim. (The other extreme, beds that stay full, is the low line.)
 * @param lower the vessel that all water comes back to
 * @param before_L its water at the full line
 * @param standing_L most water that stands in the beds then
 * @returns height over its inside floor, null where it runs over, and the figures
 * @source geometry
 */
export function afterPowerCut(
  lower: LowerVessel,
  before_L: number,
  standing_L: number,
): { readonly mm: number | null; readonly figures: readonly Figure[] } {
  const { name, vessel } = lower;
  const water_L = before_L + standing_L;
  const rim_L = waterBelow_L(lower, rim_mm(vessel.container));
  const over_L = water_L - rim_L;
  const overflows = over_L > 1e-9 * rim_L;
  const mm = overflows ? null : levelOf_mm(lower, water_L);
  const step = byHand(
    quantity('P', 'afterPowerCut', water_L, 'L'),
    'F + K',
    [quantity('F', `${name}Full`, before_L, 'L'), quantity('K', 'standingInBeds', standing_L, 'L')],
    'geometry',
  );
  const spills: Note = {
    code: 'powerCutSpills',
    level: 'stop',
    numbers: { over_L, rim_L },
    words: { vessel: name },
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
