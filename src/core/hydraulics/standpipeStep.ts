import { gravity_m_s2 } from '../constants.ts';
import type { Quantity, Step } from '../plan/figure.ts';
import { lipCd, mouthCd, standpipeFlow_L_h, standpipeHead_mm } from './standpipe.ts';
import { weirFlow_L_h } from './weir.ts';

/**
 * The worked step of the water over a standpipe's lip: the weir's formula or the mouth's, whichever counts.
 * Not for the pencil, since a weir wants the power two thirds. Throws RangeError as `standpipeHead_mm`.
 */
export function standpipeStep(bore_mm: number, flow_L_h: number): Step {
  const head_mm = standpipeHead_mm(bore_mm, flow_L_h);
  const asWeir = weirFlow_L_h(Math.PI * bore_mm, head_mm, lipCd) <= standpipeFlow_L_h(bore_mm, head_mm);
  return {
    kind: 'formula',
    gives: { sign: 'H', term: 'overLip', value: head_mm, unit: 'mm' },
    formula: asWeir ? weirFormula : mouthFormula,
    symbols: [
      { sign: 'Q', term: 'givenFlow', value: flow_L_h, unit: 'L_h' },
      { sign: 'b', term: 'standpipeBore', value: bore_mm, unit: 'mm' },
      { sign: 'g', term: 'gravity', value: gravity_m_s2, unit: 'm_s2' },
      asWeir ? coefficient('lipCoefficient', lipCd) : coefficient('mouthCoefficient', mouthCd),
    ],
    byHand: 'no',
    source: 'epaSwmmHydraulics',
  };
}

const weirFormula = '1000 × (Q ÷ 3600000 ÷ (2 ÷ 3 × C × sqrt(2 × g) × π × b ÷ 1000))^(2 ÷ 3)';
const mouthFormula = '1000 × (Q ÷ 3600000 ÷ (C × π ÷ 4 × (b ÷ 1000)^2))^2 ÷ (2 × g)';

function coefficient(term: string, value: number): Quantity {
  return { sign: 'C', term, value, unit: 'ratio' };
}
