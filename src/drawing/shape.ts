/** What a drawing is made of. All lengths in tenths of a millimetre on paper, y down. */

export type Paint = {
  readonly stroke?: 'black' | 'white';
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly fill?: 'black' | 'white';
  readonly cap?: 'round' | 'butt';
};

/** A path in the notation of SVG, absolute commands M, L and Z only. */
export type Shape = { readonly d: string; readonly paint: Paint };

/** A place that wants a label, before the labels are pushed apart. */
export type Anchor = {
  readonly key: string;
  /** Where the leader begins; null for a label that is told by its number instead. */
  readonly at: readonly [x: number, y: number] | null;
  readonly y: number;
};

export type PlacedLabel = { readonly key: string; readonly top: number };

/** A number in a small disc that ties a bed to its label. */
export type Tag = { readonly text: string; readonly x: number; readonly y: number };

export type Drawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly labels: readonly PlacedLabel[];
  readonly tags: readonly Tag[];
  /** Left edge of the label column. */
  readonly labelLeft: number;
  readonly bar: {
    readonly left: number;
    readonly top: number;
    readonly length: number;
    readonly real_mm: number;
  };
};

/** A path through points. */
export function path(points: readonly (readonly [number, number])[], end: 'open' | 'closed'): string {
  const steps = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`);
  return steps.join('') + (end === 'closed' ? 'Z' : '');
}

/** Rounded before it is written, so that every engine writes the same. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
