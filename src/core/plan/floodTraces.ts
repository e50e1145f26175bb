/** Beds followed through time, and the lines that are drawn from it. */
import { filled, type History, type Moment } from '../hydraulics/filling.ts';
import type { Trace } from './figure.ts';
import type { Flood } from './floods.ts';
import { type LowerVessel, levelOf_mm } from './lowerVessel.ts';

/** Points that a trace is drawn from. */
const tracePoints = 160;

/** Floods that a trace shows of the slowest bed. */
const shownFloods = 3;

/** A bed from drained and with the pump just switched on; `rest_L` is what never leaves it. */
export type Run = { readonly flood: Flood; readonly history: History; readonly rest_L: number };

/**
 * A bed followed over some floods.
 * @param flood the bed, its flow and its drain
 * @returns one run, or none where its drain was not measured
 * @source schaschkeFluids, chapter 6
 */
export function followed(flood: Flood): readonly Run[] {
  if (flood.drains === null) return [];
  const inflow_L_h = flood.inflow_L_h.likely;
  const cells = flood.cells(flood.of.bed.media.void_frac.likely, inflow_L_h);
  const room_L = (cells.at(-1)?.water_L ?? 0) - (cells[0]?.water_L ?? 0);
  const rest = flood.rhythm === null ? 1 : (flood.rhythm.on_s + flood.rhythm.off_s) / flood.rhythm.on_s;
  const fill_s = (room_L / inflow_L_h) * 3600 * rest;
  const rounds_s = flood.rhythm === null ? 0 : (flood.rhythm.on_s + flood.rhythm.off_s) * shownFloods;
  const until_s = Math.max(3600, 2 * fill_s * shownFloods, rounds_s);
  const history = filled({ cells, drains: flood.drains, inflow_L_h, rhythm: flood.rhythm, until_s });
  return [{ flood, history, rest_L: cells[0]?.water_L ?? 0 }];
}

/**
 * Water in a bed at a time.
 * Straight between two moments.
 * @param history of the bed
 * @param time_s time since the pump was switched on
 * @returns litres
 * @valid from the start to the end of the history; outside, what stood at its end
 * @source geometry
 * @example waterAt_L({ moments: [{ time_s: 0, water_L: 10 }, { time_s: 10, water_L: 20 }] }, 5) // 15
 */
export function waterAt_L(history: History, time_s: number): number {
  return between(history, time_s, (moment) => moment.water_L);
}

function between({ moments }: History, time_s: number, of: (moment: Moment) => number): number {
  let low = 0;
  let high = moments.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((moments[middle]?.time_s ?? 0) <= time_s) low = middle;
    else high = middle;
  }
  const [a, b] = [moments[low], moments[high]];
  if (a === undefined || b === undefined || b.time_s <= a.time_s) return a === undefined ? 0 : of(a);
  const share = Math.min(1, Math.max(0, (time_s - a.time_s) / (b.time_s - a.time_s)));
  return of(a) + share * (of(b) - of(a));
}

/**
 * Levels of the vessel and of every bed, as they go when the pump is switched on over drained beds.
 * @param lower the vessel that gives the water
 * @param full_L its water at the full line
 * @param runs all beds, followed
 * @returns one trace of the vessel and one a bed, in millimetres over the inside floor
 * @source geometry
 */
export function tracesOf(lower: LowerVessel, full_L: number, runs: readonly Run[]): readonly Trace[] {
  const end_s = Math.min(...runs.map((run) => run.history.moments.at(-1)?.time_s ?? 0));
  const times = Array.from({ length: tracePoints + 1 }, (_, i) => (i / tracePoints) * end_s);
  const turns = runs.flatMap((run) => [...run.history.starts_s, ...run.history.breaks_s]);
  // A small bed beside a slow one floods too often for a line to show every turn.
  const shown = turns.length > tracePoints ? [] : turns.filter((time_s) => time_s < end_s);
  const all = [...new Set([...times, ...shown])].sort((a, b) => a - b);
  const taken = all.map((time_s) =>
    runs.reduce((sum, run) => sum + waterAt_L(run.history, time_s) - run.rest_L, 0),
  );
  return [
    {
      key: `${lower.name}Level_mm`,
      unit: 'mm',
      points: levelsOf(lower, full_L, taken).map((level_mm, i) => [all[i] ?? 0, level_mm] as const),
    },
    ...runs.map(
      (run): Trace => ({
        key: `bed${run.flood.of.number}.level_mm`,
        unit: 'mm',
        points: all.map(
          (time_s) => [time_s, between(run.history, time_s, (moment) => moment.depth_mm)] as const,
        ),
      }),
    ),
  ];
}

/** A level is searched for, so a water that stands still is searched for once. */
function levelsOf(lower: LowerVessel, full_L: number, taken: readonly number[]): readonly number[] {
  const known = new Map<number, number>();
  return taken.map((taken_L) => {
    const level_mm = known.get(taken_L) ?? levelOf_mm(lower, Math.max(0, full_L - taken_L));
    known.set(taken_L, level_mm);
    return level_mm;
  });
}
