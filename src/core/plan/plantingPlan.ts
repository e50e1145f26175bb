/** Planting: places in each bed, and the feed that its plants want. */
import { type BedOutline, placesIn, plantEdge_mm, type Rows } from '../crops/places.ts';
import { wetDepth_mm } from '../geometry/rim.ts';
import { chord_mm } from '../geometry/lyingCylinder.ts';
import { surfaceAt, surfaceDiameter_mm } from '../geometry/surface.ts';
import type { Note } from '../note.ts';
import type { Bed } from '../system.ts';
import { leafyFeed_g_m2_d } from '../water/waterConstants.ts';
import type { BedPlan } from './beds.ts';
import type { Figure, Step, Table } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/** Leafy plants: 20 to 25 on a square metre, which is a square of 200 mm for each at the close end. */
export const leafy = { spacing_mm: 200, source: 'fao589' } as const;
/** Spacings that the table runs through. */
const spacings_mm = [100, 150, 200, 250, 300, 400] as const;

/**
 * Places and feed of the beds.
 * @param beds its beds, worked out
 * @returns places of each bed in square and offset rows, and feedWanted_g_d of all beds
 * @valid leafy plants; other crops by the table
 * @source fao589 chapter 8.1
 */
export function plantingFigures(beds: readonly BedPlan[]): readonly Figure[] {
  return [...beds.flatMap((one) => bedFigures(one)), ...feedFigures(beds)];
}

/**
 * Places at other spacings, all beds together.
 * @param beds the beds, worked out
 * @returns one table; none where the form of no bed is known from above
 * @source geometry
 */
export function plantingTables(beds: readonly BedPlan[]): readonly Table[] {
  const known = beds.flatMap((one) => {
    const outline = outlineOf(one.bed);
    return outline === null ? [] : [{ outline, count: one.bed.count }];
  });
  if (known.length === 0) return [];
  const all = (spacing_mm: number, rows: Rows): number =>
    known.reduce((sum, one) => sum + one.count * placesAt(one.outline, spacing_mm, rows), 0);
  return [
    {
      key: 'placesBySpacing',
      columns: [
        { key: 'spacing', unit: 'mm' },
        { key: 'placesSquare', unit: 'plants' },
        { key: 'placesOffset', unit: 'plants' },
      ],
      rows: spacings_mm.map((one) => [one, all(one, 'square'), all(one, 'offset')]),
    },
  ];
}

/**
 * Half a place to the wall. A bed narrower than a place still takes one row, along its middle; a drum on its side that is
 * full to where it closes has no room on top at all.
 */
function placesAt(outline: BedOutline, spacing_mm: number, rows: Rows): number {
  if (outline.width_mm === 0) return 0;
  return placesIn(outline, spacing_mm, plantEdge_mm(outline, spacing_mm), rows);
}

/**
 * The bed from above at the top of its media.
 * @param bed a checked bed
 * @returns form, length and width; null where only its litres are known
 * @valid inside measures
 * @source geometry
 */
export function outlineOf(bed: Bed): BedOutline | null {
  const { container } = bed;
  const top_mm = wetDepth_mm(container, bed.mediaDepth_mm);
  switch (container.shape) {
    case 'dipTable':
      return null;
    case 'box':
      return { form: 'box', length_mm: container.length_mm, width_mm: container.width_mm };
    case 'lyingCylinder':
      return {
        form: 'box',
        length_mm: container.length_mm,
        width_mm: chord_mm(container.diameter_mm, top_mm),
      };
    case 'cylinder':
      return { form: 'ellipse', length_mm: container.diameter_mm, width_mm: container.diameter_mm };
    case 'taperedRound': {
      const across_mm = surfaceDiameter_mm(container, top_mm);
      return { form: 'ellipse', length_mm: across_mm, width_mm: across_mm };
    }
    case 'taperedBox':
      return { form: 'box', ...surfaceAt(container, top_mm) };
    default:
      return { form: container.shape, ...surfaceAt(container, top_mm) };
  }
}

function bedFigures(of: BedPlan): readonly Figure[] {
  const { bed, number } = of;
  const keys = [`bed${number}.placesSquare`, `bed${number}.placesOffset`] as const;
  const outline = outlineOf(bed);
  if (outline === null) {
    const unknown: Note = { code: 'placesUnknown', level: 'info', numbers: {}, source: 'geometry' };
    return keys.map((key) => noFigure(key, 'plants', unknown));
  }
  const count = (rows: Rows): number => bed.count * placesAt(outline, leafy.spacing_mm, rows);
  const square = count('square');
  const offset = count('offset');
  const shallow: Note = {
    code: 'quickCropsOnly',
    level: 'info',
    numbers: {},
    words: { bed: bed.name },
    source: 'commonPractice',
  };
  const still = bed.mode === 'constantFlood' ? [shallow] : [];
  const fewer: Note = { code: 'offsetHoldsFewer', level: 'info', numbers: {}, source: 'geometry' };
  return [
    placesFigure(keys[0], 'placesSquare', square, outline, bed.count, [atSpacing, ...still]),
    placesFigure(keys[1], 'placesOffset', offset, outline, bed.count, offset < square ? [fewer] : []),
  ];
}

const atSpacing: Note = {
  code: 'placesAtSpacing',
  level: 'info',
  numbers: { spacing_mm: leafy.spacing_mm, edge_mm: leafy.spacing_mm / 2 },
  source: leafy.source,
};

/** With a pencil for rows side by side in a bed with corners; other counts were laid out row by row. */
function placesFigure(
  key: string,
  term: string,
  value: number,
  outline: BedOutline,
  containers: number,
  notes: readonly Note[],
): Figure {
  const gives = quantity('n', term, value, 'plants');
  const symbols = [
    quantity('N', 'equalContainers', containers, 'ratio'),
    quantity('l', 'bedLength', outline.length_mm, 'mm'),
    quantity('w', 'bedWidth', outline.width_mm, 'mm'),
    quantity('s', 'spacing', leafy.spacing_mm, 'mm'),
  ];
  const byRows: Step = { kind: 'simulated', gives, formula: '', symbols, byHand: 'no', source: 'geometry' };
  const narrow = Math.min(outline.length_mm, outline.width_mm) < leafy.spacing_mm;
  const inSquares = outline.form === 'box' && term === 'placesSquare' && !narrow;
  const step = inSquares ? byHand(gives, 'N × floor(l ÷ s) × floor(w ÷ s)', symbols, leafy.source) : byRows;
  return figure({ key, value, unit: 'plants', safeSide: 'down', confidence: 'rule', steps: [step], notes });
}

/** The other way round of fedArea_m2: what all beds, planted with leaves, would take up. */
function feedFigures(beds: readonly BedPlan[]): readonly Figure[] {
  if (beds.length === 0) return [];
  const bed_m2 = beds.reduce((sum, one) => sum + one.surface_m2, 0);
  const { low, high, source } = leafyFeed_g_m2_d;
  const atMost: Note = { code: 'feedWantedIsNoRation', level: 'info', numbers: {}, source };
  return [
    figure({
      key: 'feedWanted_g_d',
      value: bed_m2 * low,
      low: bed_m2 * low,
      high: bed_m2 * high,
      unit: 'g_d',
      safeSide: 'down',
      confidence: 'estimate',
      steps: [
        byHand(
          quantity('f', 'feedWanted', bed_m2 * low, 'g_d'),
          'b × y',
          [quantity('b', 'bedArea', bed_m2, 'm2'), quantity('y', 'feedPerArea', low, 'g_m2_d')],
          source,
        ),
      ],
      notes: [atMost],
    }),
  ];
}
