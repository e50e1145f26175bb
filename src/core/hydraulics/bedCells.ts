/**
 * A bed cut into thin layers, from the drain up to the highest water it can reach: how much water each takes, and
 * how fast water leaves when it stands that high. `filling.ts` walks up and down these layers.
 */
import { volume_L } from '../geometry/container.ts';
import { rim_mm } from '../geometry/rim.ts';
import type { Container } from '../system.ts';

/** The water line between two layers. */
export type Cell = {
  readonly depth_mm: number;
  /** Water in all equal containers up to here. */
  readonly water_L: number;
  /** Over the lip of the standpipe, whatever else happens. */
  readonly lip_L_h: number;
  /** Through the siphon while it runs, or through the hole at the foot of a standpipe. */
  readonly drain_L_h: number;
};

/** What the layers are made from. Flows are those of all equal containers together. */
export type CellsOf = {
  readonly container: Container;
  readonly count: number;
  readonly void_frac: number;
  /** Above the media there is nothing but water. */
  readonly mediaDepth_mm: number;
  readonly drained_mm: number;
  readonly line_mm: number;
  /** Highest water while the pump runs: the lip, and what has to stand over it. */
  readonly top_mm: number;
  readonly lip: (overLip_mm: number) => number;
  readonly drain: (depth_mm: number) => number;
};

/** Layers up to the lip, and above it. With these the draining times of the textbooks come out within 0.1 %. */
const layers = { toLip: 96, overLip: 6 } as const;

/**
 * The layers of a bed, lowest first.
 * @param of the bed, its lip and its drain
 * @returns one cell more than there are layers; the volumes are those of the real shape
 * @source geometry
 */
export function bedCells(of: CellsOf): readonly Cell[] {
  const rim = rim_mm(of.container);
  const line = Math.min(of.line_mm, rim);
  const top = Math.min(Math.max(of.top_mm, line), rim);
  const depths = [
    ...(of.drained_mm < line ? closerBelow(of.drained_mm, line, layers.toLip) : []),
    ...(line < top ? evenly(line, top, layers.overLip) : []),
    top,
  ];
  const cells = depths.map((depth_mm) => ({
    depth_mm,
    water_L: wetBed_L(of, depth_mm),
    lip_L_h: depth_mm > line ? of.lip(depth_mm - line) : 0,
    drain_L_h: of.drain(depth_mm),
  }));
  // A lip that stands a hair under the rim leaves layers too thin to hold a drop; water cannot stand inside those.
  return cells.filter(({ water_L }, i) => water_L < (cells[i + 1]?.water_L ?? Number.POSITIVE_INFINITY));
}

/** The lower ends of steps that are the thinner the nearer the drain, where the last water leaves slowest. */
function closerBelow(from: number, to: number, steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, step) => from + (to - from) * (step / steps) ** 2);
}

/** The lower ends of equal steps. */
function evenly(from: number, to: number, steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, step) => from + ((to - from) * step) / steps);
}

/**
 * Water in a bed below a depth, all equal containers together.
 * Volume up to the media's top times void fraction, plus the volume above it, times the number of containers.
 * @param of the bed: container, count, void_frac 0 to 1, mediaDepth_mm
 * @param depth_mm water over the inside floor, 0 or more; above the rim it counts as the rim
 * @returns litres of water
 * @valid media heaped level
 * @throws RangeError below 0
 * @source geometry
 * @example wetBed_L({ container: { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 400 }, count: 2, void_frac: 0.4, mediaDepth_mm: 300 }, 350) // 340
 */
export function wetBed_L(
  of: Pick<CellsOf, 'container' | 'count' | 'void_frac' | 'mediaDepth_mm'>,
  depth_mm: number,
): number {
  const inMedia_L = volume_L(of.container, Math.min(depth_mm, of.mediaDepth_mm));
  const below_L = volume_L(of.container, depth_mm);
  return (inMedia_L * of.void_frac + below_L - inMedia_L) * of.count;
}
