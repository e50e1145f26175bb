/**
 * A container, by what a tape measures inside it. Measure at the inside of the wall, in millimetres; `depth_mm`
 * always runs from the inside floor straight up to the rim (the lowest edge over which water would run out).
 */
import * as z from 'zod';
import type { Container } from '../core/system.ts';
import { length, number } from './fields.ts';

/** Upright walls, square corners: an aquarium, a timber frame with a liner, a cut IBC. */
const box = z.strictObject({
  shape: z.literal('box'),
  /** Longer inside edge. */
  length_mm: length(),
  /** Shorter inside edge. */
  width_mm: length(),
  /** From the inside floor to the rim. With a liner: measure with the liner in. */
  depth_mm: length(),
});

/** Walls that lean, square corners: most totes and crates that stack into each other. */
const taperedBox = z.strictObject({
  shape: z.literal('taperedBox'),
  /** Inside length at the rim. */
  topLength_mm: length(),
  /** Inside width at the rim. */
  topWidth_mm: length(),
  /** Inside length at the floor. */
  floorLength_mm: length(),
  /** Inside width at the floor. */
  floorWidth_mm: length(),
  /** From the inside floor straight up to the rim, not along the wall. */
  depth_mm: length(),
});

/** A round tank or drum that stands upright. */
const cylinder = z.strictObject({
  shape: z.literal('cylinder'),
  /** Inside, straight across the middle. */
  diameter_mm: length(),
  /** From the inside floor to the rim. */
  depth_mm: length(),
});

/** A round tub or bucket that is wider (or narrower) at the top. */
const taperedRound = z.strictObject({
  shape: z.literal('taperedRound'),
  /** Inside diameter at the rim. */
  topDiameter_mm: length(),
  /** Inside diameter at the floor. */
  floorDiameter_mm: length(),
  /** From the inside floor straight up to the rim, not along the wall. */
  depth_mm: length(),
});

/** A drum on its side, cut open along its length. */
const lyingCylinder = z.strictObject({
  shape: z.literal('lyingCylinder'),
  /** Inside diameter of the whole drum. */
  diameter_mm: length(),
  /** Inside length of the drum, from end to end. */
  length_mm: length(),
  /** From the lowest point of the curve up to the cut edge: half the diameter for a half drum. */
  depth_mm: length(),
});

/** Long sides straight, ends half-round (obround: most stock tanks), or an ellipse all round. */
const roundEnded = z.strictObject({
  shape: z.enum(['obround', 'ellipse']),
  /** Inside length at the rim, over the round ends. */
  length_mm: length(),
  /** Inside width at the rim, across the middle. */
  width_mm: length(),
  /** Inside length at the floor. Leave it out where the walls are upright: it is then the same as at the rim. */
  floorLength_mm: length().optional(),
  /** Inside width at the floor. Leave it out where the walls are upright. */
  floorWidth_mm: length().optional(),
  /** From the inside floor straight up to the rim. */
  depth_mm: length(),
});

/**
 * Any other form. Stand it level, pour in a bucket of known litres, note the depth at the deepest place, and go
 * on until it is full to the rim.
 */
const dipTable = z.strictObject({
  shape: z.literal('dipTable'),
  /** One line for each pouring, from the first bucket to the rim. More lines where the wall bends. */
  dips: z
    .array(
      z.strictObject({
        /** Depth of the water at the deepest place. */
        depth_mm: number(1, 20_000, 'mm'),
        /** All the water poured in so far. */
        volume_L: number(0.1, 100_000, 'L'),
      }),
    )
    .min(2)
    .max(200),
  /** Outside length, so that it can be drawn. */
  outsideLength_mm: length(),
  /** Outside width, so that it can be drawn. */
  outsideWidth_mm: length(),
  /** From the inside floor at the deepest place to the rim. */
  depth_mm: length(),
});

export const containerFile = z.discriminatedUnion('shape', [
  box,
  taperedBox,
  cylinder,
  taperedRound,
  lyingCylinder,
  roundEnded,
  dipTable,
]);

export type ContainerFile = z.output<typeof containerFile>;

/** How far up a container is known: to the rim, but with a dip table no further than its last dip. */
export function knownTo_mm(file: ContainerFile): number {
  return file.shape === 'dipTable' ? (file.dips.at(-1)?.depth_mm ?? 0) : file.depth_mm;
}

type RoundEnded = z.output<typeof roundEnded>;

/** The container with what was left out filled in: floor measures as at the rim. */
export function toContainer(file: ContainerFile): Container {
  if (!isRoundEnded(file)) return file;
  return {
    ...file,
    floorLength_mm: file.floorLength_mm ?? file.length_mm,
    floorWidth_mm: file.floorWidth_mm ?? file.width_mm,
  };
}

function isRoundEnded(file: ContainerFile): file is RoundEnded {
  return file.shape === 'obround' || file.shape === 'ellipse';
}
