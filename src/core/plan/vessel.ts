/** The tank and the sump: volumes of equal containers that stand level with each other. */
import { depthAt_mm, volume_L } from '../geometry/container.ts';
import type { Container, Vessel } from '../system.ts';
import type { Quantity, Step } from './figure.ts';
import { byHand, quantity } from './write.ts';

/**
 * Volume of a vessel at its full line, all of its equal containers together.
 * @param vessel tank or sump
 * @returns litres
 * @source geometry
 */
export function full_L(vessel: Vessel): number {
  return volume_L(vessel.container, vessel.full_mm) * vessel.count;
}

/**
 * Depth at which equal, joined containers stand when together they hold a volume.
 * @param vessel one of the equal containers, and how many there are
 * @param together_L volume of all, 0 to the rim
 * @returns mm over the inside floor
 * @throws RangeError above the rim
 * @source geometry
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
