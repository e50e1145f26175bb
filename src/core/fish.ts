/** Fish as the core sees them: what is known of their kind, and those that are there. */
import type { SourceKey } from './note.ts';

/** Facts about a kind of fish, each as its file in `content/fish/` gives it. */
export type Species = {
  readonly id: string;
  readonly name: string;
  readonly use: 'table' | 'ornamental';
  readonly good_degC: { readonly min: number; readonly max: number };
  readonly alive_degC: { readonly min: number; readonly max: number };
  /** Below this the fish get nothing. */
  readonly noFeedBelow_degC: number;
  /** Above this they get nothing and somebody is called: well below what kills them. */
  readonly callAbove_degC: number;
  readonly temperatureSource: SourceKey;
  readonly noFeedSource: SourceKey;
  readonly callAboveSource: SourceKey;
  readonly limits: WaterLimits;
  /** Published growth by warmth; null or left out where nobody has printed one for this kind. */
  readonly growth?: Growth | null;
};

/** A thermal growth coefficient as it was printed: times 100 or times 1,000, and the warmth of its trial. */
export type Growth = {
  readonly low: number;
  readonly high: number;
  readonly per: 100 | 1000;
  readonly from_degC: number;
  readonly to_degC: number;
  readonly source: SourceKey;
};

export type WaterLimits = {
  readonly tanMax_mg_L: number;
  readonly nitriteMax_mg_L: number;
  readonly nitrateMax_mg_L: number;
  readonly oxygenMin_mg_L: number;
  readonly pHMin: number;
  readonly pHMax: number;
  readonly source: SourceKey;
};

export type FishStock = {
  readonly species: Species;
  /** What the keeper counts today; feed is computed from it. */
  readonly present: number;
  readonly massNow_g: number;
  readonly massAdult_g: number;
  /** The day on which `massNow_g` was weighed, such as 2031-04-30. */
  readonly weighed?: string | null;
  /** The keeper's own ration, from the feed maker or the supplier; null where none was given. */
  readonly keeperRation_frac: number | null;
};
