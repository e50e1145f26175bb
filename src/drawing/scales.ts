/** Scales that a ruler can follow, and shapes moved or enlarged as a whole. */
import { type Extent, type Fit, edge } from './fit.ts';
import { type Shape, tenth } from './shape.ts';

/** Paper units in a millimetre of paper. */
const perMm = 10;

/** 1 : 2, 1 : 5, 1 : 10 and so on (ISO 5455), and steps between them, so that little paper is left empty. */
const steps = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8] as const;

type Real = { readonly wide: number; readonly high: number };
type Box = { readonly width: number; readonly height: number };

/** How many times smaller than the real thing, and paper units in a real millimetre. */
export type Scale = { readonly oneTo: number; readonly perReal: number };

/** The largest scale at which something fits the room. */
export function largestScale(real: Real, room: Box): Scale {
  const perReal = Math.min(room.width / real.wide, room.height / real.high);
  return { oneTo: perMm / perReal, perReal };
}

/** The largest usual scale at which something fits the room. */
export function usualScale(real: Real, room: Box): Scale {
  const least = largestScale(real, room).oneTo;
  const power = 10 ** Math.floor(Math.log10(least));
  const oneTo = steps.map((step) => step * power).find((one) => one >= least * (1 - 1e-9)) ?? 10 * power;
  return { oneTo: tenth(oneTo), perReal: perMm / oneTo };
}

/** At a given scale, in the middle of the width, standing on the ground of the box. */
export function fitAt(extent: Extent, box: Box, perReal: number): Fit {
  const left = (box.width - (extent.right - extent.left) * perReal) / 2;
  const x = (x_mm: number): number => left + (x_mm - extent.left) * perReal;
  const y = (y_mm: number): number => box.height - edge - (y_mm - extent.bottom) * perReal;
  return { scale: perReal, x, y, place: ([px, py]) => [x(px), y(py)] };
}

type Change = { readonly times: number; readonly right: number; readonly down: number };

/** The same shapes larger by a factor, then moved; lines and dashes grow too. */
export function changed(shapes: readonly Shape[], { times, right, down }: Change): readonly Shape[] {
  return shapes.map(({ d, paint }) => ({
    d: d.replace(
      /([ML])(-?[\d.]+) (-?[\d.]+)/g,
      (_, letter: string, x: string, y: string) =>
        `${letter}${tenth(Number(x) * times + right)} ${tenth(Number(y) * times + down)}`,
    ),
    paint: {
      ...paint,
      ...(paint.width === undefined ? {} : { width: tenth(paint.width * times) }),
      ...(paint.dash === undefined ? {} : { dash: paint.dash.map((one) => tenth(one * times)) }),
    },
  }));
}
