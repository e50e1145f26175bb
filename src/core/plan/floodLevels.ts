/** Levels over time: what the beds take is missing below. Worst together, staggered, and as they begin by themselves. */
import { wetBed_L } from '../hydraulics/bedCells.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import type { Figure, Trace } from './figure.ts';
import type { Flood } from './floods.ts';
import type { Levels } from './levels.ts';
import { followed, type Run, tracesOf, waterAt_L } from './floodTraces.ts';
import { levelOf_mm, lowerVessel, waterBelow_L } from './lowerVessel.ts';
import { figure, quantity } from './write.ts';

/** Moments of the longest round at which the beds are added up. */
const looks = 160;

/**
 * The lowest level while the pump runs, the largest return, and traces of vessel and beds.
 * @param system a checked system with a pump
 * @param floods its pumped beds
 * @param levels its still levels
 * @param flow_L_h the pump's flow
 * @returns levelLowest_mm, returnFlow_L_h and traces
 * @valid a steady pump; pipes are not counted
 * @source geometry; schaschkeFluids, chapter 6
 */
export function floodLevels(
  system: System,
  floods: readonly Flood[],
  levels: Levels,
  flow_L_h: number,
): { readonly figures: readonly Figure[]; readonly traces: readonly Trace[] } {
  const lower = lowerVessel(system);
  const full_L = waterBelow_L(lower, lower.vessel.full_mm);
  const runs = floods.flatMap((flood) => followed(flood));
  const worst_L = floods.reduce((sum, flood) => sum + most_L(flood, flood.of.bed.media.void_frac.high), 0);
  const apart_L = staggered_L(floods, runs);
  const level = (taken_L: number): number => levelOf_mm(lower, Math.max(0, full_L - taken_L));
  return {
    figures: [
      lowestFigure(system, levels, { worst_mm: level(worst_L), apart_mm: level(Math.min(apart_L, worst_L)) }),
      returnFigure(floods, flow_L_h),
    ],
    traces: runs.length < floods.length ? [] : tracesOf(lower, full_L, runs),
  };
}

/** Most that a bed takes out of the vessel: filled to its highest water, less what stays in it. */
function most_L(flood: Flood, void_frac: number): number {
  const { bed } = flood.of;
  const of = { ...bed, void_frac };
  const rest_mm = bed.mode === 'constantFlood' ? flood.of.line_mm : bed.drained_mm;
  return wetBed_L(of, flood.top_mm) - wetBed_L(of, rest_mm);
}

/** Most that all beds take together while their floods are spread evenly: beds by the size of their flood. */
function staggered_L(floods: readonly Flood[], runs: readonly Run[]): number {
  const still_L = floods
    .filter((flood) => !runs.some((run) => run.flood === flood && period_s(run) !== null))
    .reduce((sum, flood) => sum + most_L(flood, flood.of.bed.media.void_frac.likely), 0);
  const cycling = runs
    .filter((run) => period_s(run) !== null)
    .sort((a, b) => most_L(b.flood, 1) - most_L(a.flood, 1) || (period_s(a) ?? 0) - (period_s(b) ?? 0));
  const longest_s = Math.max(0, ...cycling.map((run) => period_s(run) ?? 0));
  let most = 0;
  for (let i = 0; i < 2 * looks; i++) {
    const time_s = (i / looks) * longest_s;
    const taken = cycling.reduce((sum, run, turn) => sum + inTurn_L(run, time_s, turn / cycling.length), 0);
    most = Math.max(most, taken);
  }
  return still_L + most;
}

/** Between the last two starts of its siphon. Beds on one timer flood together and cannot be spread. */
function period_s(run: Run): number | null {
  const [before, last] = run.history.starts_s.slice(-2);
  return run.flood.rhythm !== null || before === undefined || last === undefined ? null : last - before;
}

/** Water out of the vessel in a bed that is so far into its own round. */
function inTurn_L(run: Run, time_s: number, turn: number): number {
  const period = period_s(run) ?? 1;
  const [start = 0] = run.history.starts_s.slice(-2);
  return waterAt_L(run.history, start + ((time_s / period + turn) % 1) * period) - run.rest_L;
}

function lowestFigure(
  system: System,
  levels: Levels,
  at: { readonly worst_mm: number; readonly apart_mm: number },
): Figure {
  const intake_mm = system.pump?.intake_mm ?? 0;
  const { worst_mm, apart_mm } = at;
  const dry: Note = {
    code: 'pumpRunsDry',
    level: 'stop',
    numbers: { lowest_mm: worst_mm, intake_mm },
    source: 'geometry',
  };
  const lower: Note = {
    code: 'lowerThanStill',
    level: 'info',
    numbers: { lowest_mm: worst_mm, still_mm: levels.sourceLow_mm },
    source: 'geometry',
  };
  return figure({
    key: 'levelLowest_mm',
    value: worst_mm,
    low: worst_mm,
    high: Math.max(worst_mm, apart_mm),
    unit: 'mm',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      {
        kind: 'simulated',
        gives: quantity('l', 'levelLowest', worst_mm, 'mm'),
        formula: '',
        symbols: [quantity('s', 'lowLine', levels.sourceLow_mm, 'mm')],
        byHand: 'no',
        source: 'geometry',
      },
    ],
    notes: [...(worst_mm <= intake_mm ? [dry] : []), ...(worst_mm < levels.sourceLow_mm - 1 ? [lower] : [])],
  });
}

/** All siphons at their strongest at once, and what stands at its lip passing on what comes in. */
function returnFigure(floods: readonly Flood[], flow_L_h: number): Figure {
  const strongest = floods.reduce((sum, { siphon, inflow_L_h, of, drains }) => {
    const draws = siphon !== null && drains === 'siphon' ? siphon.full_L_h.high * of.bed.count : 0;
    return sum + Math.max(draws, inflow_L_h.likely);
  }, 0);
  const value = Math.max(flow_L_h, strongest);
  return figure({
    key: 'returnFlow_L_h',
    value,
    low: flow_L_h,
    high: value,
    unit: 'L_h',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      {
        kind: 'simulated',
        gives: quantity('R', 'returnFlow', value, 'L_h'),
        formula: '',
        symbols: [quantity('Q', 'pumpFlow', flow_L_h, 'L_h')],
        byHand: 'no',
        source: 'cengel2006',
      },
    ],
  });
}
