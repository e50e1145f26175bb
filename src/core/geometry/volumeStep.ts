/**
 * The worked step of "how many litres below this depth", for every shape: the formula as a person would put
 * it to paper, in millimetres, with the numbers of this container.
 */
import type { Quantity, Step } from '../plan/figure.ts';
import type { Container } from '../system.ts';
import { volume_L } from './container.ts';
import { dipsAround } from './dipTable.ts';
import { wetDepth_mm } from './rim.ts';
import {
  isStraight,
  type Sloping,
  surfaceAt,
  surfaceDiameter_mm,
  type TaperedRound,
  topOf,
} from './surface.ts';

/**
 * The step that gives the water in one container below a depth. Of a sloping container it speaks of the
 * measures at the water surface: take them with a tape, or see `surfaceSteps` for how they are worked out.
 * A depth above the rim is shown as the rim. Throws RangeError for a depth below 0.
 */
export function volumeStep(container: Container, depth_mm: number): Step {
  const h = wetDepth_mm(container, depth_mm);
  const parts = partsOf(container, h);
  return {
    kind: 'formula',
    byHand: 'yes',
    ...parts,
    gives: { sign: 'V', term: 'waterVolume', value: volume_L(container, h), unit: 'L' },
  };
}

type Parts = Pick<Step, 'formula' | 'symbols' | 'source'> & Partial<Pick<Step, 'kind' | 'byHand'>>;

function partsOf(container: Container, h: number): Parts {
  switch (container.shape) {
    case 'box':
      return straightParts('l × w × h ÷ 1000000', container, h);
    case 'cylinder':
      return roundParts(container.diameter_mm, h);
    case 'taperedRound':
      return isStraight(container) ? roundParts(container.topDiameter_mm, h) : bucketParts(container, h);
    case 'lyingCylinder':
      return h === container.diameter_mm / 2 ? halfDrumParts(container) : lyingParts(container, h);
    case 'dipTable':
      return dipParts(container, h);
    default:
      return isStraight(container)
        ? straightParts(straightFormula[container.shape], topOf(container), h)
        : slopingParts(container, h);
  }
}

const straightFormula = {
  taperedBox: 'l × w × h ÷ 1000000',
  ellipse: 'π ÷ 4 × l × w × h ÷ 1000000',
  obround: '((l − w) × w + π ÷ 4 × w^2) × h ÷ 1000000',
};

/** Four times the area halfway is the product of the sums, which spares a person the halving. */
const slopingFormula = {
  taperedBox: 'h ÷ 6 × (a × b + (a + l) × (b + w) + l × w) ÷ 1000000',
  ellipse: 'π ÷ 4 × h ÷ 6 × (a × b + (a + l) × (b + w) + l × w) ÷ 1000000',
  obround: 'h ÷ 6 × (a × b + (a + l) × (b + w) + l × w − (1 − π ÷ 4) × (b^2 + (b + w)^2 + w^2)) ÷ 1000000',
};

function straightParts(
  formula: string,
  of: { readonly length_mm: number; readonly width_mm: number },
  h: number,
): Parts {
  const symbols = [mm('l', 'insideLength', of.length_mm), mm('w', 'insideWidth', of.width_mm), waterDepth(h)];
  return { formula, symbols, source: formula.includes('π') ? mathematics : tankVolumes };
}

function slopingParts(container: Sloping, h: number): Parts {
  const surface = surfaceAt(container, h);
  return {
    formula: slopingFormula[container.shape],
    symbols: [
      waterDepth(h),
      mm('a', 'floorLength', container.floorLength_mm),
      mm('b', 'floorWidth', container.floorWidth_mm),
      mm('l', 'surfaceLength', surface.length_mm),
      mm('w', 'surfaceWidth', surface.width_mm),
    ],
    source: mathematics,
  };
}

function roundParts(diameter_mm: number, h: number): Parts {
  return {
    formula: 'π × D^2 ÷ 4 × h ÷ 1000000',
    symbols: [mm('D', 'insideDiameter', diameter_mm), waterDepth(h)],
    source: tankVolumes,
  };
}

function bucketParts(container: TaperedRound, h: number): Parts {
  return {
    formula: 'π × h ÷ 12 × (d^2 + d × D + D^2) ÷ 1000000',
    symbols: [
      waterDepth(h),
      mm('d', 'floorDiameter', container.floorDiameter_mm),
      mm('D', 'surfaceDiameter', surfaceDiameter_mm(container, h)),
    ],
    source: mathematics,
  };
}

type LyingCylinder = Extract<Container, { readonly shape: 'lyingCylinder' }>;

function halfDrumParts(container: LyingCylinder): Parts {
  return {
    formula: 'π × D^2 ÷ 8 × l ÷ 1000000',
    symbols: [mm('D', 'insideDiameter', container.diameter_mm), mm('l', 'insideLength', container.length_mm)],
    source: mathematics,
  };
}

function lyingParts(container: LyingCylinder, h: number): Parts {
  return {
    byHand: 'no',
    formula: 'l × (R^2 × acos((R − h) ÷ R) − (R − h) × sqrt(2 × R × h − h^2)) ÷ 1000000',
    symbols: [
      mm('l', 'insideLength', container.length_mm),
      mm('R', 'insideRadius', container.diameter_mm / 2),
      waterDepth(h),
    ],
    source: mathematics,
  };
}

function dipParts(container: Extract<Container, { readonly shape: 'dipTable' }>, h: number): Parts {
  const { lower, upper } = dipsAround(container.dips, 'depth_mm', h);
  return {
    kind: 'lookup',
    formula: 'v + (u − v) × (h − a) ÷ (b − a)',
    symbols: [
      { sign: 'v', term: 'lowerDipVolume', value: lower.volume_L, unit: 'L' },
      { sign: 'u', term: 'upperDipVolume', value: upper.volume_L, unit: 'L' },
      waterDepth(h),
      mm('a', 'lowerDipDepth', lower.depth_mm),
      mm('b', 'upperDipDepth', upper.depth_mm),
    ],
    source: 'epanetManual',
  };
}

function waterDepth(h: number): Quantity {
  return mm('h', 'waterDepth', h);
}

function mm(sign: string, term: string, value: number): Quantity {
  return { sign, term, value, unit: 'mm' };
}

const tankVolumes = 'msdTankVolumes';
const mathematics = 'weissteinMathematics';
