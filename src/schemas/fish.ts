/** A kind of fish, with the water it lives in. */
import * as z from 'zod';
import { line, number, prose } from './fields.ts';

const temperatures = z.strictObject({
  min: number(-2, 50, 'degC'),
  max: number(-2, 50, 'degC'),
});

const limits = z.strictObject({
  /** Most total ammonia nitrogen. */
  tanMax_mg_L: number(0.01, 50, 'mg_L'),
  nitriteMax_mg_L: number(0.01, 50, 'mg_L'),
  nitrateMax_mg_L: number(1, 2000, 'mg_L'),
  /** Least dissolved oxygen. */
  oxygenMin_mg_L: number(1, 14, 'mg_L'),
  pHMin: number(4, 11, 'pH'),
  pHMax: number(4, 11, 'pH'),
  /** Citation key of the limits; the weakest one where they come from several. */
  source: line(),
});

export const fishFile = z.strictObject({
  /** Its common name in English. */
  name: line(),
  /** Its scientific name, so that nobody buys another fish. */
  species: line(),
  /** table: grown to be eaten. ornamental: kept to be looked at. */
  use: z.enum(['table', 'ornamental']),
  /** Water in which it eats and grows well. */
  good_degC: temperatures,
  /** Colder or warmer than this and it may die. */
  alive_degC: temperatures,
  /** In colder water it gets nothing. */
  noFeedBelow_degC: number(-2, 40, 'degC'),
  /** In warmer water it gets nothing, and somebody has to be called: well below what kills it. */
  callAbove_degC: number(-2, 50, 'degC'),
  /** Citation key of the two temperature ranges; the weaker one where they come from two. */
  temperatureSource: line(),
  /** Citation key of the temperature below which it is not fed. */
  noFeedSource: line(),
  /** Citation key of the temperature above which to call. */
  callAboveSource: line(),
  /** The narrower of what the fish and the whole system (plants, bacteria) can stand. */
  limits,
  /**
   * Thermal growth coefficient as somebody printed it, with the number that it was multiplied by, and the warmth of the
   * trial. Leave it out where nobody has: then the fish are weighed.
   */
  growth: z
    .strictObject({
      low: number(0.01, 10, ''),
      high: number(0.01, 10, ''),
      per: z.union([z.literal(100), z.literal(1000)]),
      from_degC: number(0, 50, 'degC'),
      to_degC: number(0, 50, 'degC'),
      source: line(),
    })
    .optional(),
  /** Weight of one fish when it is grown or taken out, used where a keeper gives none. */
  massAdult_g: number(0.1, 30_000, 'g'),
  massAdultSource: line(),
  /** What is doubtful in this file, and what to know before keeping this fish. */
  note: prose().optional(),
});

export type FishFile = z.output<typeof fishFile>;
