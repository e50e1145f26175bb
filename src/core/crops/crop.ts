/** Crops as the core sees them: every figure from its file in `content/crops/`, with where it is from. */
import type { SourceKey } from '../note.ts';
import type { Range } from '../system.ts';

/** What a person counts when picking. */
export type CropUnit = 'head' | 'bunch' | 'kg';

export type Crop = {
  readonly id: string;
  readonly name: string;
  readonly scientificName: string;
  /** Botanical family: Asteraceae, Brassicaceae. */
  readonly family: string;
  /** As the feed that fits a planted square metre is counted. */
  readonly feeds: 'leafy' | 'fruiting';
  /** quick: lifted whole within weeks. long: roots stay for months and fill a bed; refused at constant flood. */
  readonly stays: 'quick' | 'long';
  readonly base_degC: number;
  /** From here to there it grows its best; warmer brings nothing more. */
  readonly best_degC: { readonly low: number; readonly high: number };
  /** It dies when the air gets colder, or warmer, than this. */
  readonly alive_degC: { readonly low: number; readonly high: number };
  /** Warmer than this it flowers or turns bitter; null where nobody says so. */
  readonly bolts_degC: number | null;
  readonly germination: {
    readonly least_degC: number;
    readonly most_degC: number;
    /** Days to emerge within `at_degC`. */
    readonly days_d: Range;
    readonly at_degC: { readonly low: number; readonly high: number };
    /** Of a hundred seeds, in parts of one. */
    readonly success_frac: number;
  };
  /** Sowing to planting out, within `best_degC`; null where it is sown into the bed. */
  readonly nursery_d: Range | null;
  /** From planting out, or from sowing into the bed, to the first picking, within `best_degC`. */
  readonly bed_d: Range;
  readonly picking: /** The whole plant at once, with its root. It stands ready for so many days before it spoils. */
    | { readonly kind: 'once'; readonly stands_d: number }
    /** Cut, and cut again after it has grown back; lifted with its root at the last cut. */
    | { readonly kind: 'cuts'; readonly most: number; readonly regrow_d: Range };
  /** Warmth in which the days of the nursery and the bed hold. */
  readonly days_degC: { readonly low: number; readonly high: number };
  readonly spacing_mm: number;
  /** What one plant gives at one picking. */
  readonly yield_g: Range;
  /** What is sold or eaten as one: a head, or a bunch of so many grams; null where it is only weighed. */
  readonly portion: { readonly unit: 'head' | 'bunch'; readonly mass_g: number } | null;
  /** Lost between planting out and picking, to pests and mishaps, in parts of one. */
  readonly loss_frac: number;
  /** Codes of cautions that must be printed wherever this crop is named. */
  readonly cautions: readonly string[];
  /** Where each figure is from, by its key. */
  readonly sources: Readonly<Record<string, SourceKey>>;
};
