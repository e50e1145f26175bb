/**
 * One system: what somebody measured at their own tank and beds. The comments here are the manual for whoever
 * writes such a file. All lengths in millimetres, inside measures, taken with the containers standing level.
 */
import * as z from 'zod';
import { bedFile } from './bed.ts';
import { containerFile } from './container.ts';
import { height, length, line, lineOrNothing, number, slug, whole } from './fields.ts';

/** The fish tank, or the sump that the pump stands in. */
export const vesselFile = z.strictObject({
  /** Inside measures. */
  container: containerFile,
  /** How many equal, joined containers work as this one. */
  count: whole(1, 20, 'containers').default(1),
  /**
   * The full line: from the inside floor to the water with all flood-and-drain beds empty and the pump just
   * switched off. Mark it on the wall of the tank.
   */
  full_mm: length(),
  /** From the floor of the place up to the tank's inside floor; below zero where it is let into the ground. */
  above_mm: number(-5_000, 5_000, 'mm').default(0),
});

export const pumpFile = z.strictObject({
  /**
   * Litres an hour that it delivers into the beds. Best measured: time how long it takes to fill a bucket at the
   * height of the beds. Else the most that its plate says.
   */
  flow_L_h: number(10, 100_000, 'L_h'),
  /** From the inside floor of the tank (or sump) to the lowest opening through which it takes in water. */
  intake_mm: height(),
});

export const fishStockFile = z.strictObject({
  /** Name of the kind's file in `content/fish/`, without its ending. */
  kind: line(),
  /** How many fish you count today. Feed is worked out from it. */
  present: whole(0, 100_000, 'fish'),
  /** Weight of one fish now: weigh ten in a bucket of water, take off the bucket, divide by ten. */
  massNow_g: number(0.1, 30_000, 'g'),
  /** Weight of one fish when it is grown or taken out. Leave it out to use the one in the kind's file. */
  massAdult_g: number(0.1, 30_000, 'g').optional(),
  /**
   * Daily feed as a share of the weight of the fish, if the maker of the feed or the supplier of the fish gave
   * one: 0.01 is one gram for a hundred grams of fish.
   */
  keeperRation_frac: number(0, 0.1, 'frac').optional(),
});

export const sheetOptions = z.strictObject({
  /** The paper in your printer: A4 or Letter. */
  paper: z.enum(['A4', 'Letter']).default('A4'),
  /** metric: litres, grams, millimetres. us: US gallons, pounds and ounces, inches. */
  units: z.enum(['metric', 'us']).default('metric'),
});

export const systemFile = z.strictObject({
  /** The name of this file without its ending: lower-case letters, figures and hyphens. */
  id: slug(),
  /** What you call the system: "The drum behind the shed". */
  name: line(),
  /** Where it stands, as the people there would say it. May be left empty. */
  place: lineOrNothing().default(''),
  /** true puts its sheet on the public pages, for anybody to see. Leave it out to keep it to yourself. */
  shared: z.boolean().default(false),
  /** How its sheets are printed. */
  sheet: sheetOptions.default({ paper: 'A4', units: 'metric' }),
  /** The tank that the fish live in. */
  tank: vesselFile,
  /** The vessel that the pump stands in, where that is not the fish tank. */
  sump: vesselFile.optional(),
  /** The beds, from the first that the water reaches to the last. */
  beds: z.array(bedFile).min(1).max(50),
  /** The one pump. Leave it out where baskets of media stand in the tank and nothing is pumped. */
  pump: pumpFile.optional(),
  /** The fish. Leave it out before they are there. */
  fish: fishStockFile.optional(),
  /** Feed in one level spoonful of your own spoon: weigh ten level spoonfuls and divide by ten. */
  spoon_g: number(0.05, 200, 'g').optional(),
  /** What you measured in the water last. */
  water: z
    .strictObject({
      /** As your own test reads. Outside 4 to 11 no fish lives: then test again. */
      pH: number(4, 11, 'pH').optional(),
      /** Temperature of the water, not of the air. */
      now_degC: number(-2, 50, 'degC').optional(),
    })
    .optional(),
});

export type SystemFile = z.output<typeof systemFile>;
export type VesselFile = z.output<typeof vesselFile>;
