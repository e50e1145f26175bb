/** The vessel that the pump draws from and everything comes back to, with the baskets of media that stand in it. */
import { depthWhere_mm } from '../geometry/depthWhere.ts';
import { rim_mm } from '../geometry/rim.ts';
import { volume_L } from '../geometry/container.ts';
import { surfaceSteps } from '../geometry/surfaceSteps.ts';
import { volumeStep } from '../geometry/volumeStep.ts';
import type { Bed, System, Vessel } from '../system.ts';
import type { Quantity, Step } from './figure.ts';
import { depthTogether_mm, timesStep } from './vessel.ts';
import { byHand, quantity } from './write.ts';

/** What of a bed counts while it stands in a vessel. */
export type Basket = Pick<Bed, 'container' | 'count' | 'mediaDepth_mm' | 'above_mm'> & {
  readonly media: { readonly void_frac: { readonly low: number } };
};

export type LowerVessel = {
  readonly name: 'tank' | 'sump';
  readonly vessel: Vessel;
  /** Beds that stand in this vessel; their media takes the place of water. */
  readonly baskets: readonly Basket[];
};

/**
 * The sump where there is one, else the fish tank.
 * @param system a checked system
 * @returns the vessel, and the baskets that stand in it
 * @source commonPractice
 */
export function lowerVessel(system: System): LowerVessel {
  if (system.sump) return { name: 'sump', vessel: system.sump, baskets: [] };
  return fishTank(system);
}

/**
 * The vessel that the fish live in.
 * @param system a checked system
 * @returns the tank, and the baskets that stand in it
 * @source commonPractice
 */
export function fishTank(system: System): LowerVessel {
  const baskets = system.beds.filter((bed) => bed.mode === 'inTank');
  return { name: 'tank', vessel: system.tank, baskets };
}

/** Room that the media of baskets takes below a height: wet media times the share that is stone, in the tightest heap. */
function stone_L(baskets: readonly Basket[], depth_mm: number): number {
  return baskets.reduce((sum, bed) => {
    const wet_mm = Math.max(0, Math.min(bed.mediaDepth_mm, depth_mm - bed.above_mm));
    return sum + volume_L(bed.container, wet_mm) * bed.count * (1 - bed.media.void_frac.low);
  }, 0);
}

/**
 * Water below a height in all equal containers together.
 * Volume of the containers less the media that stands in them.
 * @param of the vessel and its baskets
 * @param depth_mm height over its inside floor, 0 or more
 * @returns litres
 * @valid as volume_L and stone_L
 * @source geometry
 * @example waterBelow_L({ vessel: { container: { shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, count: 2 }, baskets: [] }, 300) // 480
 */
export function waterBelow_L(of: LowerVessel, depth_mm: number): number {
  return volume_L(of.vessel.container, depth_mm) * of.vessel.count - stone_L(of.baskets, depth_mm);
}

/**
 * Height at which water stands among the baskets.
 * Where the water below it is the given volume; the rim where there is more.
 * @param of the vessel and its baskets
 * @param water_L water of all equal containers together, 0 or more
 * @returns mm over the inside floor
 * @valid baskets that leave room for water at every height
 * @source geometry
 * @example levelOf_mm({ vessel: { container: { shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, count: 2 }, baskets: [] }, 480) // 300
 */
export function levelOf_mm(of: LowerVessel, water_L: number): number {
  if (of.baskets.length === 0) return depthTogether_mm(of.vessel, water_L);
  const rim = rim_mm(of.vessel.container);
  if (waterBelow_L(of, rim) <= water_L) return rim;
  return depthWhere_mm((depth_mm) => waterBelow_L(of, depth_mm), water_L, rim);
}

/**
 * The steps to the water below a height: where walls slope the surface, one container, all of them, less the media.
 * @param of the vessel and its baskets
 * @param depth_mm height over its inside floor
 * @param gives the water, as the figure names it
 * @returns one to five steps, the last of which gives the water
 * @source geometry
 */
export function waterSteps(of: LowerVessel, depth_mm: number, gives: Quantity): readonly Step[] {
  const { container, count } = of.vessel;
  const one = volumeStep(container, depth_mm);
  const stone = stone_L(of.baskets, depth_mm);
  const shape = [...surfaceSteps(container, depth_mm), one];
  if (stone === 0) return [...shape, ...timesStep(count, one.gives.value, gives)];
  const gross = count === 1 ? one.gives : quantity('G', 'grossVolume', one.gives.value * count, 'L');
  const less = byHand(
    gives,
    `${gross.sign} − S`,
    [gross, quantity('S', 'stoneInTank', stone, 'L')],
    'geometry',
  );
  return [...shape, ...timesStep(count, one.gives.value, gross), less];
}
