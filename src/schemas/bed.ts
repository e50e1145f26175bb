/** A grow bed, or several equal ones that work as one. */
import * as z from 'zod';
import { bedModes } from './closedLists.ts';
import { containerFile } from './container.ts';
import { height, length, line, number, whole } from './fields.ts';

export const bedFile = z.strictObject({
  /** What you call it, so that you find it again on the sheet: "Left half-drum". */
  name: line(),
  /** The bed's own container, inside measures. */
  container: containerFile,
  /** How many equal containers work together as this bed. */
  count: whole(1, 50, 'containers').default(1),
  /** siphon, timer, constantFlood or inTank. */
  mode: z.enum(bedModes),
  /** Name of the media's file in `content/media/`, without its ending. */
  media: line(),
  /**
   * Your own measure of how much water the media takes; better than any table. Fill a bucket level with wet,
   * drained media, then pour in water until it stands level with the top.
   */
  bucketTest: z
    .strictObject({
      /** What the bucket holds: litres of media. */
      media_L: number(0.5, 500, 'L'),
      /** Litres of water poured in. */
      water_L: number(0.05, 500, 'L'),
    })
    .optional(),
  /** From the inside floor of the bed to the top of the media. */
  mediaDepth_mm: length(),
  /**
   * From the inside floor of the bed to the highest water: the lip of the standpipe. Leave it out for a basket in
   * the tank, where the tank's full line sets it.
   */
  waterLine_mm: length().optional(),
  /** Depth of the water that stays when the bed has drained. Leave it out where you do not know. */
  drained_mm: height().default(0),
  /** Inside diameter of the standpipe. Leave it out where there is none or it was not measured. */
  standpipeBore_mm: number(5, 400, 'mm').optional(),
  /** Diameter of the hole at the foot of the standpipe, through which a bed on a timer drains. */
  drainHole_mm: number(1, 100, 'mm').optional(),
  /**
   * From the floor that the tank stands on up to the underside of the bed. For a basket in the tank: from the
   * tank's inside floor up to the underside of the basket.
   */
  above_mm: height(),
});

export type BedFile = z.output<typeof bedFile>;
