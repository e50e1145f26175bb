import fc from 'fast-check';
import type { Container, Shape } from '../../src/core/system.ts';

const measure_mm = fc.double({ min: 50, max: 3000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

const obroundFace = fc
  .tuple(measure_mm, fc.double({ min: 0, max: 2000, noNaN: true }))
  .map(([width_mm, straight_mm]) => ({ width_mm, length_mm: width_mm + straight_mm }));

const ofShape: { readonly [S in Shape]: fc.Arbitrary<Container> } = {
  box: fc.record({
    shape: fc.constant('box' as const),
    length_mm: measure_mm,
    width_mm: measure_mm,
    depth_mm: measure_mm,
  }),
  taperedBox: fc.record({
    shape: fc.constant('taperedBox' as const),
    topLength_mm: measure_mm,
    topWidth_mm: measure_mm,
    floorLength_mm: measure_mm,
    floorWidth_mm: measure_mm,
    depth_mm: measure_mm,
  }),
  cylinder: fc.record({
    shape: fc.constant('cylinder' as const),
    diameter_mm: measure_mm,
    depth_mm: measure_mm,
  }),
  taperedRound: fc.record({
    shape: fc.constant('taperedRound' as const),
    topDiameter_mm: measure_mm,
    floorDiameter_mm: measure_mm,
    depth_mm: measure_mm,
  }),
  lyingCylinder: fc
    .tuple(measure_mm, measure_mm, fc.double({ min: 0.05, max: 1, noNaN: true }))
    .map(([diameter_mm, length_mm, cut]) => ({
      shape: 'lyingCylinder' as const,
      diameter_mm,
      length_mm,
      depth_mm: diameter_mm * cut,
    })),
  obround: fc.tuple(obroundFace, obroundFace, measure_mm).map(([top, floor, depth_mm]) => ({
    shape: 'obround' as const,
    ...top,
    floorLength_mm: floor.length_mm,
    floorWidth_mm: floor.width_mm,
    depth_mm,
  })),
  ellipse: fc.record({
    shape: fc.constant('ellipse' as const),
    length_mm: measure_mm,
    width_mm: measure_mm,
    floorLength_mm: measure_mm,
    floorWidth_mm: measure_mm,
    depth_mm: measure_mm,
  }),
  dipTable: fc
    .array(
      fc.tuple(fc.double({ min: 10, max: 300, noNaN: true }), fc.double({ min: 1, max: 200, noNaN: true })),
      { minLength: 1, maxLength: 8 },
    )
    .map((rises) => {
      let depth_mm = 0;
      let volume_L = 0;
      const dips = rises.map(([deeper_mm, poured_L]) => {
        depth_mm += deeper_mm;
        volume_L += poured_L;
        return { depth_mm, volume_L };
      });
      return {
        shape: 'dipTable' as const,
        dips,
        outsideLength_mm: 900,
        outsideWidth_mm: 600,
        depth_mm,
      };
    }),
};

export const shapes = Object.keys(ofShape) as readonly Shape[];

/** A container of one shape and a share, from 0 to 1, that a test may take of its depth or volume. */
export function containerAndShare(shape: Shape): fc.Arbitrary<readonly [Container, number]> {
  return fc.tuple(ofShape[shape], share);
}

/** The same container with every measure twice as long. */
export function twiceTheSize(container: Container): Container {
  const doubled = Object.entries(container).map(([key, value]) => {
    if (key === 'dips') {
      const dips = value as readonly { readonly depth_mm: number; readonly volume_L: number }[];
      return [key, dips.map((dip) => ({ depth_mm: 2 * dip.depth_mm, volume_L: 8 * dip.volume_L }))];
    }
    return [key, key.endsWith('_mm') ? 2 * Number(value) : value];
  });
  return Object.fromEntries(doubled) as Container;
}
