/** The outline of a bed from above as corners that a pen can follow. */
import type { BedOutline } from './places.ts';

/** Round ends are followed so finely that on a bed of 3 m no chord leaves the curve by a tenth of a millimetre. */
const quarterSteps = 90;

/** A corner, from the middle of the bed. */
export type RimPoint = { readonly along_mm: number; readonly across_mm: number };

/**
 * Corners of the outline in turn.
 *
 * Box: its four corners. Ellipse: half length × cos, half width × sin. Obround: half circles at both ends.
 *
 * @param bed the bed from above; length and width above 0
 * @returns corners in turn, the last joined to the first
 * @valid an obround that is longer than it is wide
 * @source geometry
 * @example bedRim_mm({ form: 'box', length_mm: 1000, width_mm: 400 }).length // 4
 */
export function bedRim_mm(bed: BedOutline): readonly RimPoint[] {
  const half = { along_mm: bed.length_mm / 2, across_mm: bed.width_mm / 2 };
  if (bed.form === 'box') {
    return [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ].map(([x = 0, y = 0]) => ({ along_mm: x * half.along_mm, across_mm: y * half.across_mm }));
  }
  const straight_mm = bed.form === 'obround' ? Math.max(0, half.along_mm - half.across_mm) : 0;
  const round_mm = half.along_mm - straight_mm;
  // Half steps, so that no corner falls between the two ends of an obround.
  return Array.from({ length: 4 * quarterSteps }, (_, index) => {
    const angle = ((index + 0.5) * Math.PI) / (2 * quarterSteps);
    return {
      along_mm: Math.sign(Math.cos(angle)) * straight_mm + round_mm * Math.cos(angle),
      across_mm: half.across_mm * Math.sin(angle),
    };
  });
}
