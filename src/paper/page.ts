import type { Direction } from './direction.ts';

/**
 * What a laid-out sheet is: a size, and items with a fixed place. Everything is measured in points from the top left
 * corner, y down. A Page is plain data: it survives `structuredClone`, so a worker can hand it over.
 */

/** Path segments are absolute and only of these kinds, so that every writer is short. */
export type Segment =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];
export type Path = readonly Segment[];

/** x' = a x + c y + e, y' = b x + d y + f */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export type FillRule = 'nonzero' | 'evenodd';

/** A printing ink. Channels are 0 to 255, alpha is 0 to 1. */
export type Ink = {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  readonly alpha_frac: number;
};

export type Stroke = {
  readonly ink: Ink;
  readonly width_pt: number;
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  readonly miterLimit: number;
  /** Lengths of dashes and gaps; empty for a solid line. */
  readonly dashes_pt: readonly number[];
  readonly dashStart_pt: number;
};

/** What an item is cut to: its own path, within the clip around it. */
export type Clip = { readonly path: Path; readonly rule: FillRule; readonly within: Clip | null };

/** The two weights of every sheet: running text and heavy. */
export type Weight = 'text' | 'heavy';

/**
 * A word, or words that were shaped together, on one line. The text carries the space that follows it, if one does,
 * so that whoever copies or reads the text aloud gets words and not one long string.
 */
export type Words = {
  readonly kind: 'words';
  readonly node: number;
  readonly text: string;
  readonly x_pt: number;
  readonly baseline_pt: number;
  /** Their width as drawn, without the space at their end. */
  readonly width_pt: number;
  readonly size_pt: number;
  readonly weight: Weight;
  /**
   * The direction they run in, where the line they stand in mixes directions; else that of the paragraph they would
   * be by themselves.
   */
  readonly direction?: Direction;
  readonly ink: Ink;
  /** A turn or a scale of the box the words stand in; null for upright words. */
  readonly matrix: Matrix | null;
  readonly clip: Clip | null;
};

/** A rule, a box, a border or a part of a drawing. */
export type Shape = {
  readonly kind: 'shape';
  readonly node: number;
  readonly path: Path;
  readonly fill: { readonly ink: Ink; readonly rule: FillRule } | null;
  readonly stroke: Stroke | null;
  readonly clip: Clip | null;
};

export type Item = Words | Shape;

export type Box = {
  readonly x_pt: number;
  readonly y_pt: number;
  readonly width_pt: number;
  readonly height_pt: number;
};

/** The parts of a document that a sheet can name (ISO 32000-1, 14.8.4), and Artifact for what no reader need hear. */
export const roles = [
  ...(['Part', 'Sect', 'Div', 'H1', 'H2', 'H3', 'H4', 'H5', 'H6', 'P', 'Note', 'Caption', 'Figure'] as const),
  ...(['L', 'LI', 'Lbl', 'LBody', 'Table', 'TR', 'TH', 'TD', 'Span', 'Artifact'] as const),
] as const;
export type Role = (typeof roles)[number];

export function isRole(value: unknown): value is Role {
  return roles.some((role) => role === value);
}

/** A place to write in: a form field of the PDF, where fields are wanted. */
export type Field = {
  /** One of its own in the whole print. */
  readonly name: string;
  /** What is to be written there, and in which unit, for whoever does not see what stands around it. */
  readonly tip: string;
};

/** A box of the sheet's tree. Tags, slots and form fields come from here, never from where an item happens to lie. */
export type PageNode = {
  /** Place in the tree: '0-2-1' is the second child of the third child of the root's first child; '' is the root. */
  readonly path: string;
  /** Index of the node around it, or null for the root. */
  readonly parent: number | null;
  readonly tag: string;
  /** Its part in the document, as the sheet gave it (`data-role`). */
  readonly role: Role | null;
  /** What a reader hears instead of a drawing (`data-alt`). */
  readonly alt: string | null;
  /** Name of the value that may be exchanged here after layout (`data-slot`). */
  readonly slot: string | null;
  /** The form field that stands here (its name in `data-field`, its tip in `data-tip`). */
  readonly field: Field | null;
  /** Whether it is one thing of a list that may run on on a further page (`data-entry`). */
  readonly entry: boolean;
  /** Its own words, as the sheet gave them, without those of the nodes inside it. */
  readonly text: string;
  /** The node whose running text its words are part of: itself, or the block around a node inside running text. */
  readonly paragraph: number;
  /** Taken out of the flow, so that the boxes around it do not hold it. */
  readonly floats: 'in flow' | 'placed';
  readonly box: Box;
};

export type Page = {
  readonly width_pt: number;
  readonly height_pt: number;
  readonly title: string;
  /** BCP 47 language tag. */
  readonly lang: string;
  /** Names of the packs of fonts that it is set with beyond those of every sheet, in the order of fallback. */
  readonly packs: readonly string[];
  /** In the order they are painted. */
  readonly items: readonly Item[];
  readonly nodes: readonly PageNode[];
};
