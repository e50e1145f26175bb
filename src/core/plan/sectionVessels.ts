/** One vessel of the section: its inside wall and its levels, at the place it was given. */
import { width_mm } from '../geometry/container.ts';
import type { Container, System } from '../system.ts';
import { type BedPlan, floodsAndDrains } from './beds.ts';
import type { Point, SectionLevel, SectionVessel } from './figure.ts';
import type { Levels } from './levels.ts';
import { seenWidth_mm } from './seenFromAbove.ts';

/** A vessel before it is drawn: where its middle stands and how high its inside floor is. */
export type Placed = { readonly middle_mm: number; readonly floor_mm: number };

/** Inside wall, left rim to right rim. Round forms are followed in small steps. */
function outline(container: Container, at: Placed): readonly Point[] {
  const steps = container.shape === 'lyingCylinder' ? 24 : 1;
  const heights = Array.from({ length: steps + 1 }, (_, i) => {
    const share = i / steps;
    // Closer together near the floor, where a lying cylinder bends fastest.
    return container.depth_mm * share * share;
  });
  const half = heights.map((height) => [width_mm(container, height) / 2, at.floor_mm + height] as const);
  const left = half.map(([w, y]): Point => [at.middle_mm - w, y]).reverse();
  const right = half.map(([w, y]): Point => [at.middle_mm + w, y]);
  return [...left, ...right];
}

function level(key: SectionLevel['key'], container: Container, at: Placed, height_mm: number): SectionLevel {
  const half = width_mm(container, Math.min(height_mm, container.depth_mm)) / 2;
  return {
    key,
    y_mm: at.floor_mm + height_mm,
    height_mm,
    left_mm: at.middle_mm - half,
    right_mm: at.middle_mm + half,
  };
}

/** After a power cut, where that is higher than the full line and still inside. */
function powerCut(
  { afterPowerCut_mm }: Levels,
  container: Container,
  at: Placed,
  full_mm: number,
): readonly SectionLevel[] {
  if (afterPowerCut_mm === null || afterPowerCut_mm < full_mm + 0.5) return [];
  return [level('powerCut', container, at, afterPowerCut_mm)];
}

/**
 * The fish tank where it is drawn.
 * @param system a checked system
 * @param levels its levels
 * @param at where it stands
 * @param copy which of the equal containers
 * @returns outline, full line, low line where it moves, intake where the pump stands in it
 * @source geometry
 */
export function tankVessel(system: System, levels: Levels, at: Placed, copy: number): SectionVessel {
  const { container, full_mm } = system.tank;
  const moves = system.sump === null && levels.sourceLow_mm < full_mm - 0.5;
  return {
    role: 'tank',
    index: 0,
    copy,
    mode: null,
    outline: outline(container, at),
    width_mm: seenWidth_mm(container),
    levels: [
      level('full', container, at, full_mm),
      ...(moves ? [level('low', container, at, levels.sourceLow_mm)] : []),
      ...(system.sump === null ? powerCut(levels, container, at, full_mm) : []),
      ...(system.sump === null && system.pump
        ? [level('blocked', container, at, system.pump.intake_mm)]
        : []),
    ],
    mediaTopY_mm: null,
  };
}

/**
 * The sump where it is drawn.
 * @param system a checked system with a sump
 * @param levels its levels
 * @param at where it stands
 * @param copy which of the equal containers
 * @returns outline, full line, low line where it moves, intake
 * @source geometry
 */
export function sumpVessel(system: System, levels: Levels, at: Placed, copy: number): SectionVessel {
  const sump = system.sump ?? system.tank;
  return {
    role: 'sump',
    index: 0,
    copy,
    mode: null,
    outline: outline(sump.container, at),
    width_mm: seenWidth_mm(sump.container),
    levels: [
      level('full', sump.container, at, sump.full_mm),
      ...(levels.sourceLow_mm < sump.full_mm - 0.5
        ? [level('low', sump.container, at, levels.sourceLow_mm)]
        : []),
      ...powerCut(levels, sump.container, at, sump.full_mm),
      ...(system.pump ? [level('blocked', sump.container, at, system.pump.intake_mm)] : []),
    ],
    mediaTopY_mm: null,
  };
}

/**
 * A bed where it is drawn.
 * @param of the bed, worked out
 * @param at where it stands
 * @param copy which of the equal containers
 * @returns outline, water line, top of the media
 * @source geometry
 */
export function bedVessel(of: BedPlan, at: Placed, copy: number): SectionVessel {
  const { container, drained_mm } = of.bed;
  const drains = floodsAndDrains(of.bed);
  return {
    role: 'bed',
    index: of.number - 1,
    copy,
    mode: of.bed.mode,
    outline: outline(container, at),
    width_mm: seenWidth_mm(container),
    levels: [
      level('waterLine', container, at, of.line_mm),
      ...(drains && drained_mm > 0.5 ? [level('drained', container, at, drained_mm)] : []),
    ],
    mediaTopY_mm: at.floor_mm + of.bed.mediaDepth_mm,
  };
}
