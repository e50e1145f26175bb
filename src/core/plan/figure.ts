/** What a Plan is made of: figures with the steps that gave them, tables, traces, and a section to draw. */
import type { RimPoint } from '../crops/bedRim.ts';
import type { BedOutline, PlantPlace, Rows } from '../crops/places.ts';
import type { Note, SourceKey } from '../note.ts';
import type { BedMode } from '../system.ts';
import type { Unit } from '../units.ts';

/** One letter or word of a printed formula, with the number that stands for it. */
export type Quantity = {
  readonly sign: string;
  /** Key of the term (`content/terms/`) that says what it is. */
  readonly term: string;
  readonly value: number;
  readonly unit: Unit;
};

/**
 * How a figure came about, written down by the function that computed it.
 * `formula` is read by people and by a test: names, numbers, + − × ÷ ^ ( ), π, sqrt, floor, min.
 */
export type Step = {
  readonly kind: 'formula' | 'lookup' | 'leastOf' | 'simulated';
  readonly gives: Quantity;
  readonly formula: string;
  readonly symbols: readonly Quantity[];
  readonly byHand: 'yes' | 'no';
  readonly source: SourceKey;
};

export type Figure = {
  readonly key: string;
  /** null is a thing that does not happen or is not known; a note then says why. */
  readonly value: number | null;
  readonly unit: Unit;
  readonly low?: number;
  readonly high?: number;
  /** Which way to round on paper so that an error does not harm. */
  readonly safeSide: 'down' | 'up' | 'nearest';
  /** measured: from the person's own measures; rule: trade's rule; estimate: from ranges. */
  readonly confidence: 'measured' | 'rule' | 'estimate' | 'none';
  readonly steps: readonly Step[];
  readonly sources: readonly SourceKey[];
  readonly notes: readonly Note[];
};

export type Table = {
  readonly key: string;
  readonly columns: readonly { readonly key: string; readonly unit: Unit }[];
  readonly rows: readonly (readonly (number | string | null)[])[];
};

export type Trace = {
  readonly key: string;
  readonly unit: Unit;
  readonly points: readonly (readonly [time_s: number, value: number])[];
};

/** The system cut open, in millimetres; x to the right, y up, y = 0 the floor that the tank stands on. */
export type Section = {
  readonly vessels: readonly SectionVessel[];
  readonly pipes: readonly SectionPipe[];
  readonly holes: readonly SectionHole[];
  readonly pump: { readonly x_mm: number; readonly y_mm: number; readonly intakeY_mm: number } | null;
  /** Every rim and inside floor by its height over the floor of the place, from the top down. */
  readonly heights: readonly SectionHeight[];
  /** Where the water goes, from the pump on. */
  readonly way: readonly Station[];
  /** Every kind of vessel once, seen from above. */
  readonly above: readonly SeenFromAbove[];
};

export type SectionVessel = {
  readonly role: 'tank' | 'sump' | 'bed';
  /** Number of the bed in `System.beds`; 0 for tank and sump. */
  readonly index: number;
  /** Which of the equal containers this one is, from 0. */
  readonly copy: number;
  /** How a bed runs; null for tank and sump. */
  readonly mode: BedMode | null;
  /** Inside wall from the left rim down, along the floor, up to the right rim. Open at the top. */
  readonly outline: readonly Point[];
  /** Inside width at the rim; of a drum on its side at its widest, of a dip table the outside one. */
  readonly width_mm: number;
  readonly levels: readonly SectionLevel[];
  /** Media from floor to this height; null where there is none. */
  readonly mediaTopY_mm: number | null;
};

export type SectionLevel = {
  readonly key: 'full' | 'low' | 'waterLine' | 'drained' | 'blocked' | 'powerCut';
  readonly y_mm: number;
  /** Over the inside floor. */
  readonly height_mm: number;
  /** Inside wall at that height. */
  readonly left_mm: number;
  readonly right_mm: number;
};

export type SectionPipe = {
  readonly role: 'supply' | 'standpipe' | 'return' | 'overflow';
  readonly points: readonly Point[];
  readonly bore_mm: number | null;
};

/** A place to cut: where a pipe goes through a floor or a wall, or where water leaves at the foot of a standpipe. */
export type SectionHole = {
  readonly for: 'standpipe' | 'drain' | 'overflow';
  readonly role: SectionVessel['role'];
  readonly index: number;
  readonly copy: number;
  readonly at: Point;
  /** Bore of the pipe, not of the hole, which depends on the fitting; of a drain the hole itself. null: not measured. */
  readonly bore_mm: number | null;
};

/** One height over the floor of the place, and all that ends there. */
export type SectionHeight = {
  readonly y_mm: number;
  readonly of: readonly (Pick<SectionVessel, 'role' | 'index'> & { readonly edge: 'rim' | 'floor' })[];
};

/** A place on the way of the water. */
export type Station = {
  readonly key: 'pump' | 'supply' | 'bed' | Exclude<BedMode, 'inTank'> | 'return' | 'overflow' | 'baskets';
  readonly at: Point;
};

/** A vessel from above, its middle at 0, 0. Where it stands is not known, so nothing tells it. */
export type SeenFromAbove = Pick<SectionVessel, 'role' | 'index'> & {
  readonly count: number;
  /** A dip table knows only what its vessel measures outside. */
  readonly measured: 'inside' | 'outside';
  /** Along the section, and from front to back; at the rim, or of a drum on its side at its widest. */
  readonly length_mm: number;
  readonly breadth_mm: number;
  readonly rim: readonly Point[];
  /** The floor, where it differs from the rim; null where it does not or is not known. */
  readonly floor: readonly Point[] | null;
};

export type Point = readonly [x_mm: number, y_mm: number];

/** A bed as a template: its outline at the height at which is planted, and a place for every plant. */
export type BedTemplate = {
  /** Number of the bed, from 1, as its figures count. */
  readonly number: number;
  readonly outline: BedOutline;
  /** The same as corners in turn. */
  readonly rim: readonly RimPoint[];
  readonly rows: Rows;
  readonly spacing_mm: number;
  readonly edge_mm: number;
  /** Plants in one container. */
  readonly count: number;
  readonly places: readonly PlantPlace[];
};

export type Plan = {
  readonly systemId: string;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly tables: readonly Table[];
  readonly traces: readonly Trace[];
  readonly section: Section;
};
