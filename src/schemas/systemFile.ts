/**
 * One system: what somebody measured at their own tank and beds. The comments here are the manual for whoever
 * writes such a file. All lengths in millimetres, inside measures, taken with the containers standing level.
 */
import * as z from 'zod';
import { bedFile } from './bed.ts';
import { containerFile } from './container.ts';
import { labelsFile } from './labels.ts';
import { day, height, length, line, lineOrNothing, number, slug, whole } from './fields.ts';

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

/** One point of a pump's curve. */
const pumpPointFile = z.strictObject({
  /** Litres an hour at that height; 0 where nothing comes out any more. */
  flow_L_h: number(0, 200_000, 'L_h'),
  /** Metres from the water's surface up to the open end. */
  head_m: number(0, 100, 'm'),
});

/** The pipe from the pump to the highest bed. */
const supplyPipeFile = z.strictObject({
  /** Inside diameter, not the size printed on it. */
  bore_mm: number(4, 200, 'mm'),
  /** All of it, up and along. */
  length_m: number(0.1, 200, 'm'),
  /** Bends of 90 degrees; two of 45 count as one. */
  bends: whole(0, 60, ''),
});

/** What the timer is set to. */
const timerFile = z.strictObject({
  /** Minutes that the pump runs. */
  on_min: number(1, 1_440, 'min'),
  /** Minutes that it rests. */
  off_min: number(1, 1_440, 'min'),
});

export const pumpFile = z.strictObject({
  /**
   * Litres an hour that it delivers into the beds. Best measured: time how long it takes to fill a bucket at the
   * height of the beds. Else the most that its plate says.
   */
  flow_L_h: number(10, 100_000, 'L_h'),
  /** From the inside floor of the tank (or sump) to the lowest opening through which it takes in water. */
  intake_mm: height(),
  /**
   * Its curve, from box or leaflet: how much it gives at which height. One point in the middle will do; three are
   * better, from no flow at its greatest height to its greatest flow. Flow rises and height falls from point to point.
   */
  curve: z.array(pumpPointFile).min(1).max(12).optional(),
  /** Watts on its plate. */
  power_W: number(0.5, 5_000, 'W').optional(),
  /** The pipe or hose from the pump up to the highest bed. */
  pipe: supplyPipeFile.optional(),
  /** The timer, where there is one. Leave it out where the pump runs all the time. */
  timer: timerFile.optional(),
});

export const fishStockFile = z.strictObject({
  /** Name of the kind's file in `content/fish/`, without its ending. */
  kind: line(),
  /** How many fish you count today. Feed is worked out from it. */
  present: whole(0, 100_000, 'fish'),
  /** Weight of one fish now: weigh ten in a bucket of water, take off the bucket, divide by ten. */
  massNow_g: number(0.1, 30_000, 'g'),
  /** The day on which you weighed them: 2031-04-30. Growth and feed of the coming months are reckoned from it. */
  weighed: day().optional(),
  /** Weight of one fish when it is grown or taken out. Leave it out to use the one in the kind's file. */
  massAdult_g: number(0.1, 30_000, 'g').optional(),
  /**
   * Daily feed as a share of the weight of the fish, if the maker of the feed or the supplier of the fish gave
   * one: 0.01 is one gram for a hundred grams of fish.
   */
  keeperRation_frac: number(0, 0.1, 'frac').optional(),
});

/** The air pump and its stones in the fish tank. */
const airFile = z.strictObject({
  /** Litres of air a minute through all stones together: hold a bag or an upturned bottle over them and time it. */
  flow_L_min: number(0.1, 1_000, 'L_min'),
  /** How many air stones hang in the fish tank. */
  stones: whole(1, 200, ''),
  /** From the water's surface down to the stones. */
  depth_mm: number(10, 5_000, 'mm'),
});

/** The water that you top up and change with. Let it run a while, then test it as you test the tank. */
const tapFile = z.strictObject({
  /** Test it again after a day in an open bucket: it can change as gas leaves. */
  pH: number(4, 11, 'pH'),
  /** As calcium carbonate. Kits that count degrees: multiply German degrees (dKH) by 17.8. */
  alkalinity_mg_L: number(0, 1_000, 'mg_L'),
  /** As it comes, before it stood in the room. */
  water_degC: number(0, 50, 'degC'),
  /** Total chlorine, free and bound, in milligrams a litre. Leave it out where you did not test. */
  chlorine_mg_L: number(0, 10, 'mg_L').optional(),
  /** What the water works add; ask them. Chloramine does not leave by standing. */
  disinfectant: z.enum(['none', 'chlorine', 'chloramine', 'unknown']).default('unknown'),
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
      /** As calcium carbonate. Kits that count degrees: multiply German degrees (dKH) by 17.8. */
      alkalinity_mg_L: number(0, 1_000, 'mg_L').optional(),
      /** Total ammonia counted as nitrogen (N). A test that counts NH3: divide by 1.216; NH4: divide by 1.288. */
      tan_mg_L: number(0, 100, 'mg_L').optional(),
      /** Chloride that is in the water already. A test that counts salt (NaCl): multiply by 0.607. */
      chloride_mg_L: number(0, 5_000, 'mg_L').optional(),
      /** green where algae colour the water like soup, else clear. */
      green: z.enum(['green', 'clear']).optional(),
    })
    .optional(),
  /**
   * For a system outdoors: the name of a file in `content/climates/`, without its ending, of a place with weather like
   * yours. Growth over the months is reckoned from it. Leave it out indoors.
   */
  climate: line().optional(),
  /** Height above the sea in metres. Thin air holds less oxygen. */
  altitude_m: number(-400, 5_000, 'm').optional(),
  /** The air pump and its stones. Leave it out where there are none. */
  air: airFile.optional(),
  /** The water that you top up and change with. */
  tap: tapFile.optional(),
  /** Protein of the feed as a share of one, from its bag: 32 % is 0.32. */
  feedProtein_frac: number(0.1, 0.7, 'frac').optional(),
  /** First and last day on which somebody else looks after the fish: for the sitter's sheet. */
  absence: z
    .strictObject({
      /** The first day: 2031-07-01. */
      from: day(),
      /** The last day. */
      to: day(),
    })
    .optional(),
  /** Price of a kilowatt-hour in your own money, from the electricity bill. */
  pricePerKWh: number(0, 1_000_000, '').optional(),
  /**
   * Your own sheet of blank labels, measured with a ruler, on the paper named above. Leave it out to cut labels from plain
   * paper.
   */
  labels: labelsFile.optional(),
});

export type SystemFile = z.output<typeof systemFile>;
export type VesselFile = z.output<typeof vesselFile>;
