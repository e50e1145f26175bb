/** Whether a bell siphon starts and stops by itself, how long a bed takes to fill, and how often it does. */
import { filled } from '../hydraulics/filling.ts';
import type { Note } from '../note.ts';
import type { Figure } from './figure.ts';
import type { Flood } from './floods.ts';
import { breaksFigure, startsFigure } from './siphonLimits.ts';
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
