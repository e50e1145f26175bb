/** The tank and the sump: volumes of equal containers that stand level with each other. */
import { depthAt_mm } from '../geometry/container.ts';
import type { Container } from '../system.ts';
import type { Quantity, Step } from './figure.ts';
import { byHand, quantity } from './write.ts';

/**
 * Depth at which equal, joined containers stand when together they hold a volume.
 * Depth of the volume over their number in one of them.
 * @param vessel one of the equal containers, and how many there are
 * @param together_L volume of all, 0 to the rim
 * @returns mm over the inside floor
 * @valid equal containers that stand level with each other; more than they hold stands at the rim
 * @throws RangeError below nothing
 * @source geometry
 * @example depthTogether_mm({ container: { shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, count: 2, full_mm: 300, above_mm: 0 }, 480) // 300
 */
export function depthTogether_mm(
  vessel: { readonly container: Container; readonly count: number },
  together_L: number,
): number {
  return depthAt_mm(vessel.container, together_L / vessel.count);
}

/**
 * The step from one container to all of them; none where there is only one.
 * @param count equal containers
 * @param one_L volume of one
 * @param all the volume of all, named as the figure that follows
 * @returns no step or one
 * @source geometry
 */
export function timesStep(count: number, one_L: number, all: Quantity): readonly Step[] {
  if (count === 1) return [];
  const symbols = [
    quantity('n', 'equalContainers', count, 'ratio'),
    quantity('V', 'oneContainer', one_L, 'L'),
  ];
  return [byHand(all, 'n × V', symbols, 'geometry')];
}
