import { gravity_m_s2 } from '../constants.ts';
import type { Step } from '../plan/figure.ts';
import { orificeFlow_L_h } from './orifice.ts';
import { lipCd, mouthCd } from './standpipe.ts';
import { weirFlow_L_h } from './weir.ts';

/**
 * How high the water stands over a standpipe whose screen is partly blocked.
 *
 * As over an open one, with the open share of its lip and of its mouth: head = the larger of (flow ÷ weir flow of the
 * open lip at 1 mm)^(2 ÷ 3) and (flow ÷ orifice flow of the open mouth at 1 mm)².
 *
 * @param bore_mm inside diameter of the pipe, mm, above 0
 * @param flow_L_h flow to be taken, L/h, 0 or more
 * @param open_frac share that is still open, above 0 to 1
 * @returns still water over the lip, mm
 * @valid as `standpipeHead_mm`; blocking counts as lost area
 * @throws RangeError where an argument is out of its range
 * @source epaSwmmHydraulics, orifices in a floor; lalHydraulics, example 3.5; gmuWeirLecture
 * @example blockedHead_mm(50, 873.1887732, 1) // 10
 */
export function blockedHead_mm(bore_mm: number, flow_L_h: number, open_frac: number): number {
  if (!(0 <= flow_L_h)) throw new RangeError(`blockedHead_mm: flow_L_h is ${flow_L_h}, must be 0 or more`);
  if (!(0 < open_frac && open_frac <= 1)) throw new RangeError(`blockedHead_mm: open_frac is ${open_frac}`);
  return Math.max(lipHead_mm(bore_mm, flow_L_h, open_frac), mouthHead_mm(bore_mm, flow_L_h, open_frac));
}

function lipHead_mm(bore_mm: number, flow_L_h: number, open_frac: number): number {
  return (flow_L_h / weirFlow_L_h(Math.PI * bore_mm * open_frac, 1, lipCd)) ** (2 / 3);
}

function mouthHead_mm(bore_mm: number, flow_L_h: number, open_frac: number): number {
  return (flow_L_h / open_frac / orificeFlow_L_h(bore_mm, 1, mouthCd)) ** 2;
}

/** The worked step of it: the lip or the mouth, whichever asks for more. Throws RangeError as `blockedHead_mm`. */
export function blockedStep(bore_mm: number, flow_L_h: number, open_frac: number): Step {
  const asLip = lipHead_mm(bore_mm, flow_L_h, open_frac) >= mouthHead_mm(bore_mm, flow_L_h, open_frac);
  return {
    kind: 'formula',
    gives: {
      sign: 'H',
      term: 'halfBlocked',
      value: blockedHead_mm(bore_mm, flow_L_h, open_frac),
      unit: 'mm',
    },
    formula: asLip
      ? '1000 × (Q ÷ 3600000 ÷ (2 ÷ 3 × C × sqrt(2 × g) × π × b × o ÷ 1000))^(2 ÷ 3)'
      : '1000 × (Q ÷ 3600000 ÷ (C × π ÷ 4 × (b ÷ 1000)^2 × o))^2 ÷ (2 × g)',
    symbols: [
      { sign: 'Q', term: 'givenFlow', value: flow_L_h, unit: 'L_h' },
      { sign: 'b', term: 'standpipeBore', value: bore_mm, unit: 'mm' },
      { sign: 'o', term: 'openShare', value: open_frac, unit: 'frac' },
      { sign: 'g', term: 'gravity', value: gravity_m_s2, unit: 'm_s2' },
      asLip
        ? { sign: 'C', term: 'lipCoefficient', value: lipCd, unit: 'ratio' }
        : { sign: 'C', term: 'mouthCoefficient', value: mouthCd, unit: 'ratio' },
    ],
    byHand: 'no',
    source: 'epaSwmmHydraulics',
  };
}
