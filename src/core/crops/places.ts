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
  return Math.max(0, ...layoutsOf(bed, spacing_mm, edge_mm, rows).map(countIn));
}

/** Where a plant stands, from the middle of the bed: along its length and across it. */
export type PlantPlace = { readonly along_mm: number; readonly across_mm: number };

/**
 * The places themselves, in the arrangement that holds most plants: as many as `placesIn` counts.
 * @param bed the bed from above; length and width above 0
 * @param spacing_mm from plant to plant, above 0
 * @param edge_mm from the wall to the first plant, 0 or more
 * @param rows square or offset
 * @returns places row by row; none where no plant fits
 * @valid as placesIn
 * @throws RangeError when a measure is out of range
 * @source geometry
 * @example plantPlaces_mm({ form: 'box', length_mm: 400, width_mm: 200 }, 200, 100, 'square').length // 2
 */
export function plantPlaces_mm(
  bed: BedOutline,
  spacing_mm: number,
  edge_mm: number,
  rows: Rows,
): readonly PlantPlace[] {
  const all = layoutsOf(bed, spacing_mm, edge_mm, rows);
  const most = Math.max(0, ...all.map(countIn));
  const best = all.find((one) => countIn(one) === most) ?? [];
  return best.flatMap(({ across_mm, from_mm, first, count }) =>
    Array.from({ length: count }, (_, index) => ({
      along_mm: from_mm + (first + index) * spacing_mm,
      across_mm,
    })),
  );
}

/** A row: so many places on a grid that begins at `from_mm`, the first of them the `first` of that grid. */
type Row = {
  readonly across_mm: number;
  readonly from_mm: number;
  readonly first: number;
  readonly count: number;
};

function countIn(layout: readonly Row[]): number {
  return layout.reduce((sum, row) => sum + row.count, 0);
}

/** Every arrangement that is tried; none where the bed is narrower than its margins. */
function layoutsOf(
  bed: BedOutline,
  spacing_mm: number,
  edge_mm: number,
  rows: Rows,
): readonly (readonly Row[])[] {
  if (!(0 < spacing_mm && 0 <= edge_mm && 0 < bed.length_mm && 0 < bed.width_mm)) {
    throw new RangeError(`places in ${bed.length_mm} by ${bed.width_mm} mm, ${spacing_mm}, ${edge_mm}`);
  }
  const across_mm = bed.width_mm - 2 * edge_mm;
  const along_mm = bed.length_mm - 2 * edge_mm;
  if (across_mm < 0 || along_mm < 0) return [];
  const inner = { ...bed, length_mm: along_mm, width_mm: across_mm };
  const pitch_mm = rows === 'square' ? spacing_mm : (spacing_mm * Math.sqrt(3)) / 2;
  const most = Math.floor((across_mm + slack_mm) / pitch_mm) + 1;
  const counts = most > 1 ? [most, most - 1] : [most];
  return counts.flatMap((count) => movedAlong(inner, spacing_mm, rowsAt(count, pitch_mm), rows));
}

/** Distance of each row from the middle. */
function rowsAt(count: number, pitch_mm: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * pitch_mm);
}

/** The rows may be moved along: to the middle, by half a place, or flush with the end of the longest row. */
function movedAlong(
  bed: BedOutline,
  spacing_mm: number,
  at_mm: readonly number[],
  rows: Rows,
): readonly (readonly Row[])[] {
  const longest_mm = Math.max(...at_mm.map((one) => halfRow_mm(bed, one)));
  const starts_mm = [0, spacing_mm / 2, -longest_mm];
  return starts_mm.flatMap((start_mm) =>
    [0, 1].map((moved) =>
      at_mm.map((across_mm, index) => {
        const isMoved = rows === 'offset' && index % 2 === moved;
        const from_mm = start_mm + (isMoved ? spacing_mm / 2 : 0);
        return { across_mm, from_mm, ...inRow(halfRow_mm(bed, across_mm), from_mm, spacing_mm) };
      }),
    ),
  );
}

/** Places from one end of a row to the other, on a grid that begins somewhere. */
function inRow(
  half_mm: number,
  start_mm: number,
  spacing_mm: number,
): { readonly first: number; readonly count: number } {
  const last = Math.floor((half_mm - start_mm + slack_mm) / spacing_mm);
  const first = Math.ceil((-half_mm - start_mm - slack_mm) / spacing_mm);
  return { first, count: Math.max(0, last - first + 1) };
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
