/** A bed on a timer: its round, and whether it fills and drains within it. */
import { filled } from '../hydraulics/filling.ts';
import type { Note } from '../note.ts';
import type { Figure } from './figure.ts';
import type { Flood } from './floods.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/**
 * From one start of the timer to the next.
 * @param key of the figure
 * @param flood a bed on a timer
 * @returns the figure, with notes where the bed does not fill or does not drain, or where nobody can tell
 * @valid the hole at the foot of the standpipe is clean
 * @source commonPractice; lalHydraulics for the hole
 */
export function timerFigure(key: string, flood: Flood): Figure {
  const { of, rhythm } = flood;
  const words = { bed: of.bed.name };
  if (rhythm === null) {
    return noFigure(key, 'min', {
      code: 'noCycle',
      level: 'info',
      numbers: {},
      words,
      source: 'commonPractice',
    });
  }
  const value = (rhythm.on_s + rhythm.off_s) / 60;
  return figure({
    key,
    value,
    unit: 'min',
    safeSide: 'nearest',
    confidence: 'rule',
    steps: [
      byHand(
        quantity('c', 'cycleTime', value, 'min'),
        'a + o',
        [
          quantity('a', 'timerOn', rhythm.on_s / 60, 'min'),
          quantity('o', 'timerOff', rhythm.off_s / 60, 'min'),
        ],
        'commonPractice',
      ),
    ],
    notes: timerNotes(flood, value),
  });
}

function timerNotes(flood: Flood, round_min: number): readonly Note[] {
  const { of, rhythm } = flood;
  const words = { bed: of.bed.name };
  const unmeasured: Note = {
    code: 'drainHoleUnknown',
    level: 'info',
    numbers: {},
    words,
    source: 'commonPractice',
  };
  if (flood.drains !== 'hole' || rhythm === null) return [unmeasured];
  const { low_mm, high_mm } = swing(flood, round_min);
  const line_mm = of.line_mm;
  const short: Note = {
    code: 'timerNeverFills',
    level: 'caution',
    numbers: { high_mm, line_mm },
    words,
    source: 'lalHydraulics',
  };
  const slow: Note = {
    code: 'timerNeverDrains',
    level: 'caution',
    numbers: { low_mm },
    words,
    source: 'lalHydraulics',
  };
  return [
    ...(high_mm < line_mm - 5 ? [short] : []),
    ...(low_mm > of.bed.drained_mm + (line_mm - of.bed.drained_mm) / 4 ? [slow] : []),
  ];
}

/** Highest and lowest water in the last of some rounds. */
function swing(flood: Flood, round_min: number): { readonly low_mm: number; readonly high_mm: number } {
  const rounds = 6;
  const until_s = rounds * round_min * 60;
  const inflow_L_h = flood.inflow_L_h.likely;
  const cells = flood.cells(flood.of.bed.media.void_frac.likely, inflow_L_h);
  const { moments } = filled({ cells, drains: 'hole', inflow_L_h, rhythm: flood.rhythm, until_s });
  const last = moments
    .filter((moment) => moment.time_s >= until_s - round_min * 60)
    .map((moment) => moment.depth_mm);
  return { low_mm: Math.min(...last), high_mm: Math.max(...last) };
}
