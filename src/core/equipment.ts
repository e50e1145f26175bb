/** What is known of a pump and of a heap of media beyond what every system must tell. All of it may be missing. */
import type { SourceKey } from './note.ts';

/** Missing and null mean the same: nobody measured it. */
export type PumpFacts = {
  /** Points of its curve, from the maker or from a measurement: flow rises, height falls. */
  readonly curve?: readonly { readonly flow_L_h: number; readonly head_m: number }[] | null;
  /** What it takes from the plug, as its plate says. */
  readonly power_W?: number | null;
  /** The pipe up to the highest bed. */
  readonly pipe?: SupplyPipe | null;
  /** Without one it runs all the time, unless a bed is flooded by timer. */
  readonly timer?: { readonly on_min: number; readonly off_min: number } | null;
};

/** Inside diameter, whole length, and bends of 90 degrees. */
export type SupplyPipe = { readonly bore_mm: number; readonly length_m: number; readonly bends: number };

/** Weight of a cubic metre of media as it lies drained in a bed, wet grains and all. */
export type Bulk = {
  readonly low_kg_m3: number;
  readonly likely_kg_m3: number;
  readonly high_kg_m3: number;
  readonly source: SourceKey;
};
