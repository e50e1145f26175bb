/** How many plants stand in a bed: in square or in offset rows, a margin kept to the wall. */

/** A bed seen from above, at the top of its media. */
export type BedOutline = {
  readonly form: 'box' | 'ellipse' | 'obround';
  readonly length_mm: number;
  readonly width_mm: number;
};

export type Rows = 'square' | 'offset';

/** 100 mm fit into 100 mm once more, whatever the last digit of a measure says. */
const slack_mm = 1e-6;

/**
 * Plants that find a place in a bed.
 * Rows run along the length; in offset rows every other row is moved by half a place and rows stand closer, so that
 * all neighbours are equally far. The rows are moved along to where most fit.
 * @param bed the bed from above; length and width above 0
 * @param spacing_mm from plant to plant, above 0
 * @param edge_mm from the wall to the first plant, 0 or more
 * @param rows square or offset
 * @returns a whole count, 0 where no plant fits
 * @valid beds without pipes in the way; of an ellipse the margin is kept along both axes
 * @throws RangeError when a measure is out of range
 * @source geometry
 * @example placesIn({ form: 'box', length_mm: 1000, width_mm: 1000 }, 200, 100, 'square') // 25
 * @example placesIn({ form: 'box', length_mm: 1000, width_mm: 1000 }, 200, 100, 'offset') // 23
 */
export function placesIn(bed: BedOutline, spacing_mm: number, edge_mm: number, rows: Rows): number {
  if (!(0 < spacing_mm && 0 <= edge_mm && 0 < bed.length_mm && 0 < bed.width_mm)) {
    throw new RangeError(`placesIn(${bed.length_mm}, ${bed.width_mm}, ${spacing_mm}, ${edge_mm})`);
  }
  const across_mm = bed.width_mm - 2 * edge_mm;
  const along_mm = bed.length_mm - 2 * edge_mm;
  if (across_mm < 0 || along_mm < 0) return 0;
  const inner = { ...bed, length_mm: along_mm, width_mm: across_mm };
  const pitch_mm = rows === 'square' ? spacing_mm : (spacing_mm * Math.sqrt(3)) / 2;
  const most = Math.floor((across_mm + slack_mm) / pitch_mm) + 1;
  const counts = most > 1 ? [most, most - 1] : [most];
  return Math.max(...counts.map((count) => bestOf(inner, spacing_mm, rowsAt(count, pitch_mm), rows)));
}

/** Distance of each row from the middle. */
function rowsAt(count: number, pitch_mm: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * pitch_mm);
}

/** The rows may be moved along: to the middle, by half a place, or flush with the end of the longest row. */
function bestOf(bed: BedOutline, spacing_mm: number, at_mm: readonly number[], rows: Rows): number {
  const longest_mm = Math.max(...at_mm.map((one) => halfRow_mm(bed, one)));
  const starts_mm = [0, spacing_mm / 2, -longest_mm];
  const total = (start_mm: number, moved: 0 | 1): number =>
    at_mm.reduce((sum, across_mm, index) => {
      const isMoved = rows === 'offset' && index % 2 === moved;
      return sum + inRow(halfRow_mm(bed, across_mm), start_mm + (isMoved ? spacing_mm / 2 : 0), spacing_mm);
    }, 0);
  return Math.max(...starts_mm.flatMap((start) => [total(start, 0), total(start, 1)]));
}

/** Places from one end of a row to the other, on a grid that begins somewhere. */
function inRow(half_mm: number, start_mm: number, spacing_mm: number): number {
  const last = Math.floor((half_mm - start_mm + slack_mm) / spacing_mm);
  const first = Math.ceil((-half_mm - start_mm - slack_mm) / spacing_mm);
  return Math.max(0, last - first + 1);
}

/** Half the length of a row so far from the middle. */
function halfRow_mm(bed: BedOutline, across_mm: number): number {
  const half_mm = bed.length_mm / 2;
  const off_mm = Math.abs(across_mm);
  const radius_mm = bed.width_mm / 2;
  if (bed.form === 'box') return half_mm;
  if (bed.form === 'ellipse') {
    return radius_mm === 0 ? half_mm : half_mm * Math.sqrt(Math.max(0, 1 - (off_mm / radius_mm) ** 2));
  }
  return half_mm - radius_mm + Math.sqrt(Math.max(0, radius_mm ** 2 - off_mm ** 2));
}
