/** Between which flows a bell siphon starts and stops by itself: bands, not promises. */
import { gravity_m_s2 } from '../constants.ts';
import { breakMargin, starts_L_h } from '../hydraulics/hydraulicConstants.ts';
import { lipCd, mouthCd } from '../hydraulics/standpipe.ts';
import type { Note, SourceKey } from '../note.ts';
import type { Figure, Step } from './figure.ts';
import type { Flood, Siphon } from './floods.ts';
import { byHand, figure, lookup, quantity } from './write.ts';

/** Where weir and orifice agree. */
function startsStep(flood: Flood, limit: number): Step {
  return {
    kind: 'formula',
    gives: quantity('Q', 'siphonStarts', limit, 'L_h'),
    formula: 'C × π ÷ 4 × (b ÷ 1000)^2 × sqrt(2 × g × 3 ÷ 8 × C ÷ c × b ÷ 1000) × 3600000',
    symbols: [
      quantity('C', 'mouthCoefficient', mouthCd, 'ratio'),
      quantity('b', 'standpipeBore', flood.of.bed.standpipeBore_mm ?? 0, 'mm'),
      quantity('g', 'gravity', gravity_m_s2, 'm_s2'),
      quantity('c', 'lipCoefficient', lipCd, 'ratio'),
    ],
    byHand: 'no',
    source: 'epaSwmmHydraulics',
  };
}

function breaksSteps(draws_L_h: number): readonly Step[] {
  const draws = quantity('S', 'siphonDraws', draws_L_h, 'L_h');
  return [
    lookup(draws, 'cengel2006'),
    byHand(
      quantity('Q', 'siphonBreaks', draws_L_h / breakMargin.least, 'L_h'),
      'S ÷ m',
      [draws, quantity('m', 'breakMargin', breakMargin.least, 'ratio')],
      breakMargin.source,
    ),
  ];
}

/** Into one container. */
function each_L_h(flood: Flood): number {
  return flood.inflow_L_h.likely / flood.of.bed.count;
}

/**
 * From which flow into one container a siphon starts.
 * @param key of the figure
 * @param flood the bed and its flow
 * @param limits of its siphon
 * @returns the figure: low what the trade tells, high where the mouth closes over
 * @source epaSwmmHydraulics for the upper end; fromMemory for the lower
 */
export function startsFigure(key: string, flood: Flood, limits: Siphon): Figure {
  const band = limits.starts_L_h;
  const inflow_L_h = each_L_h(flood);
  const words = { bed: flood.of.bed.name };
  const note = (code: 'siphonNeverStarts' | 'siphonMayNotStart', level: Note['level']): Note => {
    return {
      code,
      level,
      numbers: { inflow_L_h, from_L_h: band.low, sure_L_h: band.high },
      words,
      source: starts_L_h.source,
    };
  };
  return figure({
    key,
    value: band.high,
    low: Math.min(band.low, band.high),
    high: band.high,
    unit: 'L_h',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [startsStep(flood, band.high)],
    notes:
      inflow_L_h < band.low
        ? [note('siphonNeverStarts', 'caution')]
        : inflow_L_h < band.high
          ? [note('siphonMayNotStart', 'info')]
          : [],
  });
}

/**
 * Up to which flow into one container a siphon takes air and stops.
 * @param key of the figure
 * @param flood the bed and its flow
 * @param limits of its siphon
 * @returns the figure: what a siphon with a short tail draws at the bottom, less the margin
 * @source ramseyDosingSiphon; cengel2006
 */
export function breaksFigure(key: string, flood: Flood, limits: Siphon): Figure {
  const band = limits.bottom_L_h;
  const inflow_L_h = each_L_h(flood);
  const words = { bed: flood.of.bed.name };
  const numbers = { inflow_L_h, draws_L_h: band.low };
  const note = (code: string, source: SourceKey): Note => ({
    code,
    level: 'caution',
    numbers,
    words,
    source,
  });
  const never = inflow_L_h >= band.high;
  const mayHang = inflow_L_h * breakMargin.sure >= band.low;
  return figure({
    key,
    value: band.low / breakMargin.least,
    low: band.low / breakMargin.sure,
    high: Math.max(band.low, band.high) / breakMargin.least,
    unit: 'L_h',
    safeSide: 'down',
    confidence: 'estimate',
    steps: breaksSteps(band.low),
    notes: never
      ? [note('siphonNeverBreaks', breakMargin.source)]
      : mayHang
        ? [note('siphonMayHang', breakMargin.sureSource)]
        : [],
  });
}
