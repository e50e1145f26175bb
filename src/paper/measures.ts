/**
 * The unit of a sheet is a tenth of a millimetre: small enough that a rounded baseline is never off by more than
 * 0.05 mm, and a number that one can measure with a ruler.
 */

/** Sheet units in one millimetre. */
const unitsPer_mm = 10;
/** Points in one inch, and millimetres in one inch: both exact by definition. */
const pointsPerInch = 72;
const mmPerInch = 25.4;

/** Millimetres in sheet units: `mm(5)` is 50. */
export function mm(length_mm: number): number {
  return length_mm * unitsPer_mm;
}

/** Points in sheet units: `pt(11)` is 38.8. Type sizes are given in points. */
export function pt(length_pt: number): number {
  return (length_pt * mmPerInch * unitsPer_mm) / pointsPerInch;
}

/** Points in one sheet unit. */
export const pointsPerUnit = pointsPerInch / (mmPerInch * unitsPer_mm);

/** Millimetres in one point. */
export const mmPerPoint = mmPerInch / pointsPerInch;

/** Pixels in one point at this resolution. */
export function pixelsPerPoint(dpi: number): number {
  return dpi / pointsPerInch;
}

/** Pixels in one metre at this resolution, as PNG wants it. */
export function pixelsPerMetre(dpi: number): number {
  return (dpi * 1000) / mmPerInch;
}

export type PaperSize = { readonly width_mm: number; readonly height_mm: number };

/** ISO 216 A4, and North American Letter (8.5 x 11 in). */
export const paperSizes = {
  A4: { width_mm: 210, height_mm: 297 },
  Letter: { width_mm: 215.9, height_mm: 279.4 },
} as const satisfies Record<string, PaperSize>;

/** Paper for walls: ISO 216, and the doubles of Letter that North American print shops run. */
export const wallSizes = {
  A3: { width_mm: 297, height_mm: 420 },
  A2: { width_mm: 420, height_mm: 594 },
  A1: { width_mm: 594, height_mm: 841 },
  '11x17': { width_mm: 279.4, height_mm: 431.8 },
  '17x22': { width_mm: 431.8, height_mm: 558.8 },
  '22x34': { width_mm: 558.8, height_mm: 863.6 },
} as const satisfies Record<string, PaperSize>;

/**
 * Rounds to three decimals. Every number is rounded before it is written, so that engines whose last bits differ
 * still write the same bytes.
 */
export function thousandth(value: number): number {
  // + 0 turns -0 into 0, which would otherwise be written as "-0" by some and "0" by others.
  return Math.round(value * 1000) / 1000 + 0;
}
