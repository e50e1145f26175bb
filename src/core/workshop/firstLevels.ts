/** Where the water will stand in containers that nobody has filled yet. */

export type FirstLevels = {
  /** The full line of the tank, over its floor. */
  readonly full_mm: number;
  readonly mediaDepth_mm: number;
  /** The lip of the standpipe, over the floor of the bed. */
  readonly waterLine_mm: number;
};

/** What stays free, in containers deep enough for it; else the share of their depth. */
const free = {
  tank: { most_mm: 100, frac: 0.15 },
  bed: { most_mm: 50, frac: 0.15 },
  dryLayer: { most_mm: 50, frac: 0.2 },
} as const;

/** A line is marked on the next lower whole centimetre; in very shallow containers on the millimetre. */
const mark_mm = (depth_mm: number): number => (depth_mm < 100 ? 1 : 10);

/**
 * Full line, media and water line of a first plan.
 * In the tank 100 mm stay free, in the bed 50 mm, and the top 50 mm of the media stay dry; of shallow containers a share
 * of their depth instead. Every line on the next lower whole centimetre.
 * @param tank_mm depth of the tank to its rim, 10 or more
 * @param bed_mm depth of the bed to its rim, 10 or more
 * @returns heights over the inside floors
 * @valid until somebody measures: a plan, not a system
 * @source commonPractice
 */
export function firstLevels(tank_mm: number, bed_mm: number): FirstLevels {
  const under = (depth_mm: number, { most_mm, frac }: { most_mm: number; frac: number }): number =>
    downTo(mark_mm(depth_mm), depth_mm - Math.min(most_mm, frac * depth_mm));
  const mediaDepth_mm = under(bed_mm, free.bed);
  return {
    full_mm: under(tank_mm, free.tank),
    mediaDepth_mm,
    waterLine_mm: under(mediaDepth_mm, free.dryLayer),
  };
}

function downTo(mark_mm: number, depth_mm: number): number {
  return Math.floor(depth_mm / mark_mm) * mark_mm;
}
