/** A kind of media that fills a bed. */
import * as z from 'zod';
import { line, number, prose } from './fields.ts';

/** Share of the heap that water can fill, from the tightest heap to the loosest. */
export const voidRange = z.strictObject({
  low: number(0.05, 0.95, 'frac'),
  likely: number(0.05, 0.95, 'frac'),
  high: number(0.05, 0.95, 'frac'),
});

export const mediaFile = z.strictObject({
  /** Its name in the trade, with the size of the grains. */
  name: line(),
  /** Share of the heap that water can fill: low, likely, high. */
  void_frac: voidRange,
  /** Where each of the three figures comes from: citation keys. */
  voidSources: z.strictObject({ low: line(), likely: line(), high: line() }),
  /** What to know before using it: weight, lime, edges, what may cling to it. */
  note: prose().optional(),
});

export type MediaFile = z.output<typeof mediaFile>;
