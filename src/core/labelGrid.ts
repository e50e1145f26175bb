/** A sheet of labels, measured by whoever owns it. */

export type LabelGrid = {
  /** Labels side by side, and one above the other. */
  readonly columns: number;
  readonly rows: number;
  readonly labelWidth_mm: number;
  readonly labelHeight_mm: number;
  /** From the left and the top edge of the paper to the first label. */
  readonly left_mm: number;
  readonly top_mm: number;
  /** From the left edge of a label to the left edge of the next one, and from top edge to top edge. */
  readonly across_mm: number;
  readonly down_mm: number;
  /** Labels that are gone already, row by row from the top. */
  readonly used: number;
};
