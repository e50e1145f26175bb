/** The worked steps of a sloping container's measures at the water surface; `volumeStep` goes on from them. */
import type { Quantity, Step } from '../plan/figure.ts';
import type { Container } from '../system.ts';
import { rim_mm, wetDepth_mm } from './rim.ts';
import { surfaceAt, surfaceDiameter_mm, topOf } from './surface.ts';

/**
 * One step a sloping measure (length and width, or diameter); none where the wall is upright or the water
 * stands at the rim, for then a measure of the container itself is the answer.
 * Throws RangeError for a depth below 0.
 */
export function surfaceSteps(container: Container, depth_mm: number): readonly Step[] {
  const h = wetDepth_mm(container, depth_mm);
  return slopesOf(container, h).filter((step) => step !== null);
}

function slopesOf(container: Container, h: number): readonly (Step | null)[] {
  const rim = rim_mm(container);
  if (container.shape === 'taperedRound') {
    const { floorDiameter_mm, topDiameter_mm } = container;
    const at_mm = surfaceDiameter_mm(container, h);
    return [
      slopeStep('D', 'Diameter', { floor_mm: floorDiameter_mm, top_mm: topDiameter_mm, at_mm, h, rim }),
    ];
  }
  if (!('floorLength_mm' in container)) return [];
  const { floorLength_mm, floorWidth_mm } = container;
  const top = topOf(container);
  const at = surfaceAt(container, h);
  return [
    slopeStep('l', 'Length', {
      floor_mm: floorLength_mm,
      top_mm: top.length_mm,
      at_mm: at.length_mm,
      h,
      rim,
    }),
    slopeStep('w', 'Width', { floor_mm: floorWidth_mm, top_mm: top.width_mm, at_mm: at.width_mm, h, rim }),
  ];
}

type Slope = {
  readonly floor_mm: number;
  readonly top_mm: number;
  readonly at_mm: number;
  readonly h: number;
  readonly rim: number;
};

function slopeStep(sign: string, measure: 'Length' | 'Width' | 'Diameter', of: Slope): Step | null {
  if (of.floor_mm === of.top_mm || of.h === of.rim) return null;
  return {
    kind: 'formula',
    gives: mm(sign, `surface${measure}`, of.at_mm),
    formula: 'f + (t − f) × h ÷ H',
    symbols: [
      mm('f', `floor${measure}`, of.floor_mm),
      mm('t', `top${measure}`, of.top_mm),
      mm('h', 'waterDepth', of.h),
      mm('H', 'insideDepth', of.rim),
    ],
    byHand: 'yes',
    source: 'weissteinMathematics',
  };
}

function mm(sign: string, term: string, value: number): Quantity {
  return { sign, term, value, unit: 'mm' };
}
