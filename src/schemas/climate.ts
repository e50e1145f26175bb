/** Air over the year at a place: for growth outdoors and for sowing. */
import * as z from 'zod';
import { line, number } from './fields.ts';

/** Twelve figures, January first, whatever the hemisphere. */
const year = z
  .array(number(-60, 60, 'degC'))
  .min(12)
  .max(12);

export const climateFile = z.strictObject({
  /** The weather station and its country. */
  name: line(),
  /** Degrees, north above zero. */
  latitude: number(-90, 90, ''),
  /** Degrees, east above zero. */
  longitude: number(-180, 180, ''),
  elevation_m: number(-430, 8_850, 'm'),
  /** Mean of the daily lowest temperature of the air. */
  min_degC: year,
  /** Mean of the daily highest temperature of the air. */
  max_degC: year,
  /** Citation key. */
  source: line(),
});

export type ClimateFile = z.output<typeof climateFile>;
