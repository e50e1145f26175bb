/**
 * One door to all shapes: how much a container holds below a depth, how deep a volume stands, how large the
 * water surface is. Above the rim the water runs over, so every answer there is the one at the rim.
 */
import type { Container } from '../system.ts';
import { boxArea_m2, boxVolume_L } from './box.ts';
import { circleArea_m2, cylinderVolume_L } from './cylinder.ts';
import { depthWhere_mm } from './depthWhere.ts';
import { dipTableArea_m2, dipTableDepth_mm, dipTableVolume_L } from './dipTable.ts';
import { ellipseArea_m2, ellipseVolume_L } from './ellipse.ts';
import { chord_mm, lyingCylinderArea_m2, lyingCylinderVolume_L } from './lyingCylinder.ts';
import { obroundArea_m2, obroundVolume_L } from './obround.ts';
import { rim_mm, wetDepth_mm } from './rim.ts';
import { surfaceAt, surfaceDiameter_mm } from './surface.ts';
import { taperedBoxVolume_L } from './taperedBox.ts';
import { taperedRoundDepth_mm, taperedRoundVolume_L } from './taperedRound.ts';

/**
 * Water in a container below a depth.
 *
 * The volume formula of its shape, at the depth or at the rim, whichever is lower.
 *
 * @param container inside measures
 * @param depth_mm water over the inside floor, mm, 0 or more; above the rim it counts as the rim
 * @returns volume of one container, L, without any media
 * @valid as the formula of the shape
 * @throws RangeError below 0
 * @source msdTankVolumes, and as the formula of the shape
 * @example volume_L({ shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, 300) // 240
 */
export function volume_L(container: Container, depth_mm: number): number {
  const h = wetDepth_mm(container, depth_mm);
  switch (container.shape) {
    case 'box':
      return boxVolume_L(container.length_mm, container.width_mm, h);
    case 'cylinder':
      return cylinderVolume_L(container.diameter_mm, h);
    case 'lyingCylinder':
      return lyingCylinderVolume_L(container.diameter_mm, container.length_mm, h);
    case 'dipTable':
      return dipTableVolume_L(container.dips, h);
    case 'taperedRound':
      return taperedRoundVolume_L(container.floorDiameter_mm, surfaceDiameter_mm(container, h), h);
    default: {
      const { length_mm, width_mm } = surfaceAt(container, h);
      return slopingVolume_L[container.shape](
        container.floorLength_mm,
        container.floorWidth_mm,
        length_mm,
        width_mm,
        h,
      );
    }
  }
}

/**
 * How deep a volume of water stands in a container: the inverse of `volume_L`.
 *
 * Solved for the depth where the formula allows; elsewhere by halving until no number lies between.
 *
 * @param container inside measures
 * @param held_L volume in one container, L, 0 or more; more than it holds stands at the rim
 * @returns water over the inside floor, mm, 0 to the rim
 * @valid as the formula of the shape
 * @throws RangeError below 0
 * @source msdTankVolumes, and as the formula of the shape
 * @example depthAt_mm({ shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, 240) // 300
 */
export function depthAt_mm(container: Container, held_L: number): number {
  if (!(0 <= held_L)) throw new RangeError(`depthAt_mm: volume is ${held_L} L, must be 0 or more`);
  if (held_L === 0) return 0;
  if (rim_L(container) <= held_L) return rim_mm(container);
  switch (container.shape) {
    case 'box':
    case 'cylinder':
      return held_L / area_m2(container, 0);
    case 'taperedRound':
      return taperedRoundDepth_mm(
        container.floorDiameter_mm,
        container.topDiameter_mm,
        container.depth_mm,
        held_L,
      );
    case 'dipTable':
      return dipTableDepth_mm(container.dips, held_L);
    default:
      return depthWhere_mm((depth_mm) => volume_L(container, depth_mm), held_L, container.depth_mm);
  }
}

/**
 * Area of the water surface in a container at a depth.
 *
 * The area formula of its shape, at the depth or at the rim, whichever is lower.
 *
 * @param container inside measures
 * @param depth_mm water over the inside floor, mm, 0 or more; above the rim it counts as the rim
 * @returns area of one container, m2
 * @valid as the formula of the shape; a dip table gives the mean between two dips
 * @throws RangeError below 0
 * @source msdTankVolumes, and as the formula of the shape
 * @example area_m2({ shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 500 }, 300) // 0.8
 */
export function area_m2(container: Container, depth_mm: number): number {
  const h = wetDepth_mm(container, depth_mm);
  switch (container.shape) {
    case 'box':
      return boxArea_m2(container.length_mm, container.width_mm);
    case 'cylinder':
      return circleArea_m2(container.diameter_mm);
    case 'lyingCylinder':
      return lyingCylinderArea_m2(container.diameter_mm, container.length_mm, h);
    case 'dipTable':
      return dipTableArea_m2(container.dips, h);
    case 'taperedRound':
      return circleArea_m2(surfaceDiameter_mm(container, h));
    default: {
      const { length_mm, width_mm } = surfaceAt(container, h);
      return slopingArea_m2[container.shape](length_mm, width_mm);
    }
  }
}

/**
 * What a container holds when it is full to the rim.
 *
 * Volume at the inside depth.
 *
 * @param container inside measures
 * @returns volume of one container, L
 * @valid as the formula of the shape
 * @throws RangeError where a measure is out of its range
 * @source msdTankVolumes, and as the formula of the shape
 * @example rim_L({ shape: 'cylinder', diameter_mm: 1000, depth_mm: 1000 }) // 785.3981634
 */
export function rim_L(container: Container): number {
  return volume_L(container, rim_mm(container));
}

/**
 * Inside width of a container at a height, as its drawing shows it cut open.
 *
 * Along the length; for upright round shapes the diameter; for a lying cylinder the chord of its circle. Of a
 * dip table only the outside length is known, the same at every height.
 *
 * @param container inside measures
 * @param height_mm height over the inside floor, mm, 0 or more; above the rim it counts as the rim
 * @returns width, mm
 * @valid every shape
 * @throws RangeError below 0
 * @source weissteinMathematics, circular segment and conical frustum
 * @example width_mm({ shape: 'lyingCylinder', diameter_mm: 1000, length_mm: 900, depth_mm: 500 }, 200) // 800
 */
export function width_mm(container: Container, height_mm: number): number {
  const h = wetDepth_mm(container, height_mm);
  switch (container.shape) {
    case 'box':
      return container.length_mm;
    case 'cylinder':
      return container.diameter_mm;
    case 'lyingCylinder':
      return chord_mm(container.diameter_mm, h);
    case 'dipTable':
      return container.outsideLength_mm;
    case 'taperedRound':
      return surfaceDiameter_mm(container, h);
    default:
      return surfaceAt(container, h).length_mm;
  }
}

const slopingVolume_L = {
  taperedBox: taperedBoxVolume_L,
  obround: obroundVolume_L,
  ellipse: ellipseVolume_L,
};

const slopingArea_m2 = { taperedBox: boxArea_m2, obround: obroundArea_m2, ellipse: ellipseArea_m2 };
