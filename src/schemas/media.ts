/** A kind of media that fills a bed. */
import * as z from 'zod';
import { line, number, prose } from './fields.ts';

/** Share of the heap that water can fill, from the tightest heap to the loosest. */
const voidRange = z.strictObject({
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
  /** Weight of a cubic metre of the heap as it lies drained in a bed, from the lightest to the heaviest make. */
  bulk: z
    .strictObject({
      low_kg_m3: number(50, 3_000, 'kg_m3'),
      likely_kg_m3: number(50, 3_000, 'kg_m3'),
      high_kg_m3: number(50, 3_000, 'kg_m3'),
      /** Citation key. */
      source: line(),
    })
    .optional(),
  /** What to know before using it: weight, lime, edges, what may cling to it. */
  note: prose().optional(),
});

export type MediaFile = z.output<typeof mediaFile>;
