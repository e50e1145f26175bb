import type { Container } from '../system.ts';
import { measureAt_mm } from './taper.ts';

/** Containers with four measures: length and width at the floor, length and width at the rim. */
export type Sloping = Extract<Container, { readonly floorLength_mm: number }>;

/** A container that is round all the way up, wider or narrower at the top. */
export type TaperedRound = Extract<Container, { readonly shape: 'taperedRound' }>;

/** Whether the walls stand upright, so that floor and rim measure the same. */
export function isStraight(container: Sloping | TaperedRound): boolean {
  if (container.shape === 'taperedRound') return container.floorDiameter_mm === container.topDiameter_mm;
  const top = topOf(container);
  return container.floorLength_mm === top.length_mm && container.floorWidth_mm === top.width_mm;
}

/** Inside length and width at the rim. */
export function topOf(container: Sloping): { readonly length_mm: number; readonly width_mm: number } {
  return container.shape === 'taperedBox'
    ? { length_mm: container.topLength_mm, width_mm: container.topWidth_mm }
    : { length_mm: container.length_mm, width_mm: container.width_mm };
}

/** Inside length and width at a height from 0 to the rim. */
export function surfaceAt(
  container: Sloping,
  depth_mm: number,
): { readonly length_mm: number; readonly width_mm: number } {
  const top = topOf(container);
  return {
    length_mm: measureAt_mm(container.floorLength_mm, top.length_mm, container.depth_mm, depth_mm),
    width_mm: measureAt_mm(container.floorWidth_mm, top.width_mm, container.depth_mm, depth_mm),
  };
}

/**
 * Inside diameter of a tapered round tub at a height.
 *
 * Diameter = floor diameter + (top diameter − floor diameter) × depth ÷ inside depth.
 *
 * @param container inside measures
 * @param depth_mm height over the inside floor, mm, 0 to the rim
 * @returns diameter, mm
 * @valid straight wall
 * @throws RangeError where the height is out of its range
 * @source weissteinMathematics, conical frustum
 * @example surfaceDiameter_mm({ shape: 'taperedRound', floorDiameter_mm: 400, topDiameter_mm: 600, depth_mm: 500 }, 250) // 500
 */
export function surfaceDiameter_mm(container: TaperedRound, depth_mm: number): number {
  return measureAt_mm(container.floorDiameter_mm, container.topDiameter_mm, container.depth_mm, depth_mm);
}
