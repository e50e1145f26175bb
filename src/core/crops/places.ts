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
  const { inner, arrangements } = tried(bed, spacing_mm, edge_mm, rows);
  return Math.max(0, ...arrangements.map((one) => countIn(inner, spacing_mm, one)));
}

/**
 * From the wall to the first plant: half a place, or the middle of a bed that is narrower.
 * @param outline the bed from above
 * @param spacing_mm from plant to plant
 * @returns mm
 * @valid every outline
 * @source commonPractice
 * @example plantEdge_mm({ form: 'box', length_mm: 1000, width_mm: 150 }, 200) // 75
 */
export function plantEdge_mm(outline: BedOutline, spacing_mm: number): number {
  return Math.min(spacing_mm, outline.length_mm, outline.width_mm) / 2;
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
  const { inner, arrangements } = tried(bed, spacing_mm, edge_mm, rows);
  const counts = arrangements.map((one) => countIn(inner, spacing_mm, one));
  const best = arrangements[counts.indexOf(Math.max(...counts))];
  if (best === undefined) return [];
  return Array.from({ length: best.rows }, (_, row) => row).flatMap((row) => {
    const { across_mm, from_mm } = rowOf(best, row, spacing_mm);
    const { first, count } = inRow(halfRow_mm(inner, across_mm), from_mm, spacing_mm);
    return Array.from({ length: count }, (_, index) => ({
      along_mm: from_mm + (first + index) * spacing_mm,
      across_mm,
    }));
  });
}

/** So many rows side by side, on a grid that begins at `start_mm`; every other row may be moved by half a place. */
type Arrangement = {
  readonly rows: number;
  readonly pitch_mm: number;
  readonly start_mm: number;
  /** Which rows are moved, those with an even or an odd number. */
  readonly moved: 'none' | 'even' | 'odd';
};

type Tried = { readonly inner: BedOutline; readonly arrangements: readonly Arrangement[] };

/**
 * Every arrangement that is tried, in the bed without its margins; none where the bed is narrower than those. The rows
 * may be moved along: to the middle, by half a place, or flush with the end of the longest row.
 */
function tried(bed: BedOutline, spacing_mm: number, edge_mm: number, rows: Rows): Tried {
  if (!(0 < spacing_mm && 0 <= edge_mm && 0 < bed.length_mm && 0 < bed.width_mm)) {
    throw new RangeError(`places in ${bed.length_mm} by ${bed.width_mm} mm, ${spacing_mm}, ${edge_mm}`);
  }
  const across_mm = bed.width_mm - 2 * edge_mm;
  const along_mm = bed.length_mm - 2 * edge_mm;
  const inner = { form: bed.form, length_mm: along_mm, width_mm: across_mm };
  if (across_mm < 0 || along_mm < 0) return { inner, arrangements: [] };
  const pitch_mm = rows === 'square' ? spacing_mm : (spacing_mm * Math.sqrt(3)) / 2;
  const most = Math.floor((across_mm + slack_mm) / pitch_mm) + 1;
  const arrangements = (most > 1 ? [most, most - 1] : [most]).flatMap((count) => {
    // The row nearest to the middle is the longest.
    const longest_mm = halfRow_mm(inner, count % 2 === 1 ? 0 : pitch_mm / 2);
    return [0, spacing_mm / 2, -longest_mm].flatMap((start_mm) =>
      movesOf[rows].map((moved): Arrangement => ({ rows: count, pitch_mm, start_mm, moved })),
    );
  });
  return { inner, arrangements };
}

const movesOf = { square: ['none'], offset: ['even', 'odd'] } as const;

/** A count for every arrangement of every bed in every plan: so no row is kept. */
function countIn(inner: BedOutline, spacing_mm: number, arrangement: Arrangement): number {
  let count = 0;
  for (let row = 0; row < arrangement.rows; row += 1) {
    const { across_mm, from_mm } = rowOf(arrangement, row, spacing_mm);
    count += inRow(halfRow_mm(inner, across_mm), from_mm, spacing_mm).count;
  }
  return count;
}

/** How far from the middle a row lies, and where its grid begins. */
function rowOf(
  { rows, pitch_mm, start_mm, moved }: Arrangement,
  row: number,
  spacing_mm: number,
): { readonly across_mm: number; readonly from_mm: number } {
  const isMoved = moved === (row % 2 === 0 ? 'even' : 'odd');
  return {
    across_mm: (row - (rows - 1) / 2) * pitch_mm,
    from_mm: start_mm + (isMoved ? spacing_mm / 2 : 0),
  };
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
