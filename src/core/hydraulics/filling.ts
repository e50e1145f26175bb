/**
 * Filling and draining over time, on the real shapes.
 *
 * While the pump gives a steady flow, every bed goes its own way, and its level alone says how fast water leaves. So
 * time is counted layer by layer: a layer's water divided by what comes in less what goes out, with the mean of the
 * outflows at its two ends. For a hole in an upright vessel that mean is exact, for it is how a square root sums up;
 * elsewhere it is off by the square of a layer's share. No water is lost between layers, since volumes and not levels
 * are added, and no step can be too long. A general solver of differential equations would be slower here and would
 * have to be stopped at every lip and at every switch of the timer.
 */
import type { Cell } from './bedCells.ts';

/** How a bed behaves at its highest and its lowest water. */
export type Drains =
  /** Nothing leaves until the siphon starts at the top; it runs until the bed is down. */
  | 'siphon'
  /** A hole at the foot of the standpipe is always open. */
  | 'hole'
  /** Water leaves only over the lip. */
  | 'lip';

/** The pump: always on, or by turns. */
export type Rhythm = { readonly on_s: number; readonly off_s: number };

export type Moment = {
  readonly time_s: number;
  readonly depth_mm: number;
  readonly water_L: number;
  /** What has come in and gone out since the start. */
  readonly pumped_L: number;
  readonly returned_L: number;
};

export type History = {
  readonly moments: readonly Moment[];
  /** When the siphon started. */
  readonly starts_s: readonly number[];
  /** When it drew air and stopped. */
  readonly breaks_s: readonly number[];
};

export type Walk = {
  /** Lowest first; water rises from cell to cell. */
  readonly cells: readonly Cell[];
  readonly drains: Drains;
  readonly inflow_L_h: number;
  /** null: the pump never stops. */
  readonly rhythm: Rhythm | null;
  /** How long to follow it. */
  readonly until_s: number;
  /** Or until its siphon has started so many times. */
  readonly starts?: number;
};

/** More moments than any trace needs: a bed that flips between two states would run for ever. */
const mostMoments = 20_000;

/**
 * Follows one bed through time, from drained and with the pump just switched on.
 * @param walk its layers, how it drains, its share of the pump's flow, the pump's rhythm, and how long
 * @returns moments from layer to layer, between which everything is straight
 * @valid a steady pump; an outflow that depends on this bed's level alone
 * @source schaschkeFluids, chapter 6, draining with inflow
 */
export function filled(walk: Walk): History {
  const starts_s: number[] = [];
  const breaks_s: number[] = [];
  const [first] = walk.cells;
  if (first === undefined) throw new RangeError('filled: a bed without layers');
  let at: Place = { index: 0, water_L: first.water_L };
  let open = walk.drains === 'hole' ? 1 : 0;
  let now: Moment = { time_s: 0, depth_mm: first.depth_mm, water_L: at.water_L, pumped_L: 0, returned_L: 0 };
  const moments = [now];
  while (now.time_s < walk.until_s && moments.length < mostMoments) {
    if (walk.drains === 'siphon') {
      if (open === 0 && at.index === walk.cells.length - 1) {
        open = 1;
        starts_s.push(now.time_s);
        if (starts_s.length === walk.starts) break;
      } else if (open === 1 && isOn(walk.cells, at, 0) && walk.cells.length > 1) {
        open = 0;
        breaks_s.push(now.time_s);
      }
    }
    const pump = pumpAt(walk, now.time_s);
    const most_s = Math.min(pump.until_s, walk.until_s) - now.time_s;
    const step = stepFrom(walk.cells, at, pump.flow_L_h, open, most_s);
    const pumped_L = (pump.flow_L_h * step.took_s) / 3600;
    now = {
      time_s: step.took_s === most_s ? Math.min(pump.until_s, walk.until_s) : now.time_s + step.took_s,
      depth_mm: depthIn_mm(walk.cells, step.to),
      water_L: step.to.water_L,
      pumped_L: now.pumped_L + pumped_L,
      returned_L: now.returned_L + pumped_L - (step.to.water_L - at.water_L),
    };
    at = step.to;
    moments.push(now);
  }
  return { moments, starts_s, breaks_s };
}

/** Where the water stands: on the line of a cell, or between it and the next. */
type Place = { readonly index: number; readonly water_L: number };

function isOn(cells: readonly Cell[], at: Place, index: number): boolean {
  return at.index === index && at.water_L === cells[index]?.water_L;
}

/** Flow of the pump now, and until when it stays so. */
function pumpAt(walk: Walk, time_s: number): { readonly flow_L_h: number; readonly until_s: number } {
  const { rhythm, inflow_L_h } = walk;
  if (rhythm === null) return { flow_L_h: inflow_L_h, until_s: walk.until_s };
  const round_s = rhythm.on_s + rhythm.off_s;
  // A switch falls on its own second: what is a rounding error before it already counts as after it.
  const rounds = Math.floor(time_s / round_s + 1e-12);
  const off_s = rounds * round_s + rhythm.on_s;
  if (time_s < off_s * (1 - 1e-12)) return { flow_L_h: inflow_L_h, until_s: off_s };
  return { flow_L_h: 0, until_s: (rounds + 1) * round_s };
}

/** Rise of the water in the layer above a cell's line, in litres a second; below zero where it falls. */
function riseAbove(cells: readonly Cell[], index: number, in_L_h: number, open: number): number {
  const [low, high] = [cells[index], cells[index + 1]];
  if (low === undefined || high === undefined) return 0;
  const out_L_h = (low.lip_L_h + high.lip_L_h + open * (low.drain_L_h + high.drain_L_h)) / 2;
  return (in_L_h - out_L_h) / 3600;
}

/** To the next line above or below, or as far as the time allows. */
function stepFrom(
  cells: readonly Cell[],
  at: Place,
  in_L_h: number,
  open: number,
  most_s: number,
): { readonly to: Place; readonly took_s: number } {
  const onLine = isOn(cells, at, at.index);
  const above = riseAbove(cells, at.index, in_L_h, open);
  const below = onLine ? riseAbove(cells, at.index - 1, in_L_h, open) : above;
  const rate = above > 0 ? above : Math.min(below, 0);
  if (rate === 0) return { to: at, took_s: most_s };
  const target = rate > 0 ? at.index + 1 : onLine ? at.index - 1 : at.index;
  const line_L = cells[target]?.water_L ?? at.water_L;
  const reach_s = (line_L - at.water_L) / rate;
  if (reach_s <= most_s) return { to: { index: target, water_L: line_L }, took_s: reach_s };
  const water_L = at.water_L + rate * most_s;
  return { to: { index: rate > 0 ? at.index : Math.min(target, at.index), water_L }, took_s: most_s };
}

function depthIn_mm(cells: readonly Cell[], at: Place): number {
  const [low, high] = [cells[at.index], cells[at.index + 1]];
  if (low === undefined) return 0;
  if (high === undefined) return low.depth_mm;
  const share = (at.water_L - low.water_L) / (high.water_L - low.water_L);
  return low.depth_mm + share * (high.depth_mm - low.depth_mm);
}
