import type { Container } from '../system.ts';

/**
 * Height of the rim over the inside floor.
 *
 * The inside depth; with a dip table no higher than the last dip, for nobody knows what lies above it.
 *
 * @param container inside measures
 * @returns height, mm
 * @valid every shape
 * @throws never
 * @source commonPractice
 * @example rim_mm({ shape: 'cylinder', diameter_mm: 1000, depth_mm: 900 }) // 900
 */
export function rim_mm(container: Container): number {
  if (container.shape !== 'dipTable') return container.depth_mm;
  return Math.min(container.depth_mm, container.dips.at(-1)?.depth_mm ?? 0);
}

/**
 * A depth of water, cut off at the rim.
 *
 * The smaller of the depth and the height of the rim.
 *
 * @param container inside measures
 * @param depth_mm water over the inside floor, mm, 0 or more
 * @returns depth, mm, 0 to the rim
 * @valid every shape
 * @throws RangeError below 0
 * @source commonPractice
 * @example wetDepth_mm({ shape: 'cylinder', diameter_mm: 1000, depth_mm: 900 }, 1200) // 900
 */
export function wetDepth_mm(container: Container, depth_mm: number): number {
  if (!(0 <= depth_mm)) throw new RangeError(`depth in a container is ${depth_mm} mm, must be 0 or more`);
  return Math.min(depth_mm, rim_mm(container));
}
