/** Which measures a shape has, in the order in which they are asked for. */
import type { Container, Shape } from '../core/system.ts';

type MeasuresOf<S extends Shape> = Exclude<
  keyof Extract<Container, { readonly shape: S }>,
  'shape' | 'dips'
> &
  string;

export const measures: { readonly [S in Shape]: readonly MeasuresOf<S>[] } = {
  box: ['length_mm', 'width_mm', 'depth_mm'],
  taperedBox: ['topLength_mm', 'topWidth_mm', 'floorLength_mm', 'floorWidth_mm', 'depth_mm'],
  cylinder: ['diameter_mm', 'depth_mm'],
  taperedRound: ['topDiameter_mm', 'floorDiameter_mm', 'depth_mm'],
  lyingCylinder: ['diameter_mm', 'length_mm', 'depth_mm'],
  obround: ['length_mm', 'width_mm', 'floorLength_mm', 'floorWidth_mm', 'depth_mm'],
  ellipse: ['length_mm', 'width_mm', 'floorLength_mm', 'floorWidth_mm', 'depth_mm'],
  dipTable: ['depth_mm', 'outsideLength_mm', 'outsideWidth_mm'],
};

export const shapes = Object.keys(measures) as readonly Shape[];

/** Floor measures that may stay empty where the walls are upright. */
export function isOptional(shape: Shape, key: string): boolean {
  return (shape === 'obround' || shape === 'ellipse') && key.startsWith('floor');
}

export function shapeNamed(text: string): Shape {
  return shapes.find((shape) => shape === text) ?? 'box';
}
