/** Beds and vessels whose filling and draining is followed. */
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { bedCells, type Cell } from '../../src/core/hydraulics/bedCells.ts';
import { fullPipeFlow_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { filled } from '../../src/core/hydraulics/filling.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import type { Container } from '../../src/core/system.ts';

/** A box with a square floor. */
export function boxOf(area_m2: number, depth_mm: number): Container {
  const side_mm = Math.sqrt(area_m2) * 1000;
  return { shape: 'box', length_mm: side_mm, width_mm: side_mm, depth_mm };
}

/** A bed over a standpipe, with a siphon of its bore. */
export function siphonBed(container: Container, inflow_L_h: number, bore_mm = 32): readonly Cell[] {
  const line_mm = 0.7 * rim_mm(container);
  return bedCells({
    container,
    count: 1,
    void_frac: 0.4,
    mediaDepth_mm: 0.8 * rim_mm(container),
    drained_mm: 0.05 * rim_mm(container),
    line_mm,
    top_mm: line_mm + standpipeHead_mm(bore_mm, inflow_L_h),
    lip: (overLip_mm) => standpipeFlow_L_h(bore_mm, overLip_mm),
    drain: (depth_mm) =>
      fullPipeFlow_L_h({ bore_mm, length_m: 0.5, roughness_mm: 0.0015 }, 5, depth_mm + 100, 1e-6),
  });
}

/** A vessel full to `from_mm` with a hole in its floor: what stood in it is gone when the siphon that plays the hole breaks. */
export function drained_s(
  container: Container,
  hole: { bore_mm: number; Cd: number },
  from_mm: number,
  to_mm: number,
  inflow_L_h = 0,
): number {
  const cells = bedCells({
    container,
    count: 1,
    void_frac: 1,
    mediaDepth_mm: 0,
    drained_mm: to_mm,
    line_mm: from_mm,
    top_mm: from_mm,
    lip: () => 0,
    drain: (depth_mm) => orificeFlow_L_h(hole.bore_mm, depth_mm, hole.Cd),
  });
  const fill_L = (cells.at(-1)?.water_L ?? 0) - (cells[0]?.water_L ?? 0);
  // Filled in an hour by a pump that then stops, or by the inflow that goes on.
  const rhythm = inflow_L_h > 0 ? null : { on_s: 3600, off_s: 1e9 };
  // A hair more than it takes, so that a rounding error does not leave it a hair short.
  const flow = inflow_L_h > 0 ? inflow_L_h : fill_L * (1 + 1e-9);
  const { starts_s, breaks_s } = filled({
    cells,
    drains: 'siphon',
    inflow_L_h: flow,
    rhythm,
    until_s: 1e8,
    starts: 2,
  });
  return (breaks_s[0] ?? Number.NaN) - (starts_s[0] ?? Number.NaN);
}
