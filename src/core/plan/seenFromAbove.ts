/** Every kind of vessel as it looks from above. */
import { width_mm } from '../geometry/container.ts';
import { isStraight, surfaceAt } from '../geometry/surface.ts';
import type { Container, System } from '../system.ts';
import type { Point, SectionVessel, SeenFromAbove } from './figure.ts';

/**
 * Tank, sump and beds from above, each kind once.
 * The rim of the container's own shape, or of a drum on its side where it is widest; the floor where walls slope.
 * @param system a checked system
 * @returns outlines round the middle of each, and the measures at the rim
 * @valid shape and size; where a vessel stands and how it is turned, nobody measured
 * @source geometry
 */
export function seenFromAbove(system: System): readonly SeenFromAbove[] {
  return [
    one('tank', 0, system.tank),
    ...(system.sump === null ? [] : [one('sump', 0, system.sump)]),
    ...system.beds.map((bed, index) => one('bed', index, bed)),
  ];
}

/**
 * Inside width that a drawing tells of a container.
 * At the rim; of a cylinder on its side, which may close again above its middle, where it is widest.
 * @param container inside measures
 * @returns mm, along the section
 * @valid every shape; of a dip table the outside length
 * @source geometry
 * @example seenWidth_mm({ shape: 'lyingCylinder', diameter_mm: 600, length_mm: 900, depth_mm: 500 }) // 600
 */
export function seenWidth_mm(container: Container): number {
  const { depth_mm } = container;
  const height_mm =
    container.shape === 'lyingCylinder' ? Math.min(depth_mm, container.diameter_mm / 2) : depth_mm;
  return width_mm(container, height_mm);
}

function one(
  role: SectionVessel['role'],
  index: number,
  { container, count }: { readonly container: Container; readonly count: number },
): SeenFromAbove {
  const at = { length_mm: seenWidth_mm(container), breadth_mm: breadthAt(container, container.depth_mm) };
  return {
    ...{ role, index, count, ...at },
    measured: container.shape === 'dipTable' ? 'outside' : 'inside',
    rim: outline(container, at),
    floor: slopes(container) ? outline(container, sizeAt(container, 0)) : null,
  };
}

type Size = { readonly length_mm: number; readonly breadth_mm: number };

/** Along the section and across it, at a height. */
function sizeAt(container: Container, height_mm: number): Size {
  return { length_mm: width_mm(container, height_mm), breadth_mm: breadthAt(container, height_mm) };
}

function breadthAt(container: Container, height_mm: number): number {
  switch (container.shape) {
    case 'box':
      return container.width_mm;
    case 'lyingCylinder':
      return container.length_mm;
    case 'dipTable':
      return container.outsideWidth_mm;
    case 'cylinder':
    case 'taperedRound':
      return width_mm(container, height_mm);
    default:
      return surfaceAt(container, height_mm).width_mm;
  }
}

function slopes(container: Container): boolean {
  return 'floorLength_mm' in container || container.shape === 'taperedRound' ? !isStraight(container) : false;
}

function outline(container: Container, size: Size): readonly Point[] {
  const [a, b] = [size.length_mm / 2, size.breadth_mm / 2];
  switch (container.shape) {
    case 'cylinder':
    case 'taperedRound':
    case 'ellipse':
      return turn((cos, sin) => [a * cos, b * sin]);
    case 'obround':
      return turn((cos, sin) => [Math.max(0, a - b) * Math.sign(cos) + Math.min(a, b) * cos, b * sin]);
    default:
      return [
        [-a, -b],
        [a, -b],
        [a, b],
        [-a, b],
      ];
  }
}

/** Round ends are followed in small steps, between the quarters so that none falls on a corner. */
const roundSteps = 72;

function turn(at: (cos: number, sin: number) => Point): readonly Point[] {
  return Array.from({ length: roundSteps }, (_, i) => {
    const angle = ((i + 0.5) * 2 * Math.PI) / roundSteps;
    return at(Math.cos(angle), Math.sin(angle));
  });
}
