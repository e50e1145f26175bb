/** Whether a bell siphon starts and stops by itself, how long a bed takes to fill, and how often it does. */
import { filled } from '../hydraulics/filling.ts';
import { breakMargin, starts_L_h } from '../hydraulics/hydraulicConstants.ts';
import type { Note, SourceKey } from '../note.ts';
import type { Figure, Step } from './figure.ts';
import type { Flood, Siphon } from './floods.ts';
import { timerFigure } from './timerPlan.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * Figures of a bed that fills and drains in turns.
 * @param flood the bed, its flow and its drain
 * @param shared how many containers share the pump's flow
 * @returns siphonStarts_L_h, siphonBreaks_L_h (siphons whose bore is known), siphonFill_min, siphonCycle_min; none at
 *   constant flood
 * @valid bands, not promises: a siphon is tuned with a bucket and patience
 * @source epaSwmmHydraulics for the upper end of starting; ramseyDosingSiphon for breaking
 */
export function siphonFigures(flood: Flood, shared: number): readonly Figure[] {
  const { bed, number } = flood.of;
  if (bed.mode === 'constantFlood') return [];
  const key = (name: string): string => `bed${number}.${name}`;
  const limits = flood.siphon;
  return [
    ...(limits === null ? [] : [startsFigure(key('siphonStarts_L_h'), flood, limits)]),
    ...(limits === null ? [] : [breaksFigure(key('siphonBreaks_L_h'), flood, limits)]),
    fillFigure(key('siphonFill_min'), flood, shared),
    bed.mode === 'timer'
      ? timerFigure(key('siphonCycle_min'), flood)
      : cycleFigure(key('siphonCycle_min'), flood),
  ];
}

function worked(flood: Flood, limit: number, term: string, source: SourceKey): Step {
  return {
    kind: 'formula',
    gives: quantity('Q', term, limit, 'L_h'),
    formula: '',
    symbols: [quantity('b', 'standpipeBore', flood.of.bed.standpipeBore_mm ?? 0, 'mm')],
    byHand: 'no',
    source,
  };
}

/** Into one container. */
function each_L_h(flood: Flood): number {
  return flood.inflow_L_h.likely / flood.of.bed.count;
}

function startsFigure(key: string, flood: Flood, { starts_L_h: band }: Siphon): Figure {
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
    steps: [worked(flood, band.high, 'siphonStarts', 'epaSwmmHydraulics')],
    notes:
      inflow_L_h < band.low
        ? [note('siphonNeverStarts', 'caution')]
        : inflow_L_h < band.high
          ? [note('siphonMayNotStart', 'info')]
          : [],
  });
}

function breaksFigure(key: string, flood: Flood, { bottom_L_h: band }: Siphon): Figure {
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
    steps: [worked(flood, band.low / breakMargin.least, 'siphonBreaks', breakMargin.source)],
    notes: never
      ? [note('siphonNeverBreaks', breakMargin.source)]
      : mayHang
        ? [note('siphonMayHang', breakMargin.sureSource)]
        : [],
  });
}

/** From drained to the lip, while nothing leaves. */
function fillFigure(key: string, flood: Flood, shared: number): Figure {
  const { of, inflow_L_h } = flood;
  const minutes = (moved_L: number, flow_L_h: number): number => (moved_L / flow_L_h) * 60;
  const value = minutes(of.moved_L.likely, inflow_L_h.likely);
  const alike: Note = {
    code: 'flowSharedAlike',
    level: 'info',
    numbers: { inflow_L_h: inflow_L_h.likely },
    words: { bed: of.bed.name },
    source: 'commonPractice',
  };
  return figure({
    key,
    value,
    low: minutes(of.moved_L.low, inflow_L_h.high),
    high: minutes(of.moved_L.high, inflow_L_h.low > 0 ? inflow_L_h.low : inflow_L_h.likely),
    unit: 'min',
    safeSide: 'nearest',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('t', 'fillTime', value, 'min'),
        'M ÷ q × 60',
        [
          quantity('M', 'waterMoved', of.moved_L.likely, 'L'),
          quantity('q', 'bedFlow', inflow_L_h.likely, 'L_h'),
        ],
        'geometry',
      ),
    ],
    notes: shared > 1 ? [alike] : [],
  });
}

/** From one start of the siphon to the next. */
function cycleFigure(key: string, flood: Flood): Figure {
  const { of } = flood;
  const words = { bed: of.bed.name };
  const why = (code: string): Note => ({ code, level: 'info', numbers: {}, words, source: 'commonPractice' });
  if (flood.drains !== 'siphon') return noFigure(key, 'min', why('noCycle'));
  const { void_frac } = of.bed.media;
  const { inflow_L_h } = flood;
  const likely = cycle_s(flood, void_frac.likely, inflow_L_h.likely);
  if (likely === null) return noFigure(key, 'min', why('noCycle'));
  const ends = [
    cycle_s(flood, void_frac.low, inflow_L_h.high) ?? likely,
    cycle_s(flood, void_frac.high, inflow_L_h.low) ?? likely,
    likely,
  ];
  return figure({
    key,
    value: likely / 60,
    low: Math.min(...ends) / 60,
    high: Math.max(...ends) / 60,
    unit: 'min',
    safeSide: 'nearest',
    confidence: 'estimate',
    steps: [
      {
        kind: 'simulated',
        gives: quantity('c', 'cycleTime', likely / 60, 'min'),
        formula: '',
        symbols: [quantity('q', 'bedFlow', inflow_L_h.likely, 'L_h')],
        byHand: 'no',
        source: 'schaschkeFluids',
      },
    ],
  });
}

/** Followed over two floods; null where the second never comes. */
function cycle_s(flood: Flood, void_frac: number, inflow_L_h: number): number | null {
  if (!(inflow_L_h > 0)) return null;
  const cells = flood.cells(void_frac, inflow_L_h);
  const fill_s = ((cells.at(-1)?.water_L ?? 0) / inflow_L_h) * 3600;
  const rest = flood.rhythm === null ? 1 : (flood.rhythm.on_s + flood.rhythm.off_s) / flood.rhythm.on_s;
  // A siphon that hardly beats the pump takes many times as long to drain as to fill.
  const until_s = 40 * rest * fill_s + 3600;
  const { starts_s } = filled({
    cells,
    drains: 'siphon',
    inflow_L_h,
    rhythm: flood.rhythm,
    until_s,
    starts: 2,
  });
  const [first, second] = starts_s;
  return first === undefined || second === undefined ? null : second - first;
}
