/**
 * A person's system as the core sees it: inside measures in millimetres, everything already checked by
 * `schemas`. Species and media come in as facts, never as names to look up.
 */
import type { Bulk, PumpFacts } from './equipment.ts';
import type { FishStock } from './fish.ts';
import type { LabelGrid } from './labelGrid.ts';
import type { SourceKey } from './note.ts';

/** Inside measures. `depth_mm` always runs from the inside floor to the rim. */
export type Container =
  | {
      readonly shape: 'box';
      readonly length_mm: number;
      readonly width_mm: number;
      readonly depth_mm: number;
    }
  | {
      readonly shape: 'taperedBox';
      readonly topLength_mm: number;
      readonly topWidth_mm: number;
      readonly floorLength_mm: number;
      readonly floorWidth_mm: number;
      readonly depth_mm: number;
    }
  | { readonly shape: 'cylinder'; readonly diameter_mm: number; readonly depth_mm: number }
  | {
      readonly shape: 'taperedRound';
      readonly topDiameter_mm: number;
      readonly floorDiameter_mm: number;
      readonly depth_mm: number;
    }
  /** A cylinder on its side, cut open: `depth_mm` is where it was cut, half the diameter for a half drum. */
  | {
      readonly shape: 'lyingCylinder';
      readonly diameter_mm: number;
      readonly length_mm: number;
      readonly depth_mm: number;
    }
  /** Straight sides with half-round ends. Length is over the round ends. Floor measures where it tapers. */
  | {
      readonly shape: 'obround' | 'ellipse';
      readonly length_mm: number;
      readonly width_mm: number;
      readonly floorLength_mm: number;
      readonly floorWidth_mm: number;
      readonly depth_mm: number;
    }
  /** Any other form: known litres poured in, depth noted. Outside measures only so that it can be drawn. */
  | {
      readonly shape: 'dipTable';
      readonly dips: readonly { readonly depth_mm: number; readonly volume_L: number }[];
      readonly outsideLength_mm: number;
      readonly outsideWidth_mm: number;
      readonly depth_mm: number;
    };

export type Shape = Container['shape'];

/** A figure that is only known as a range. Where it was measured, the three are the same. */
export type Range = { readonly low: number; readonly likely: number; readonly high: number };

export type Media = {
  readonly id: string;
  readonly name: string;
  /** Share of the heap that water can fill, from the media's file or from the keeper's bucket test. */
  readonly void_frac: Range;
  readonly voidFrom: 'file' | 'bucketTest';
  readonly source: SourceKey;
  readonly bulk?: Bulk | null;
};

export type BedMode = 'siphon' | 'timer' | 'constantFlood' | 'inTank';

export type Bed = {
  readonly name: string;
  readonly container: Container;
  /** Equal containers that work as this bed. */
  readonly count: number;
  readonly mode: BedMode;
  readonly media: Media;
  /** Top of the media over the inside floor. */
  readonly mediaDepth_mm: number;
  /** Highest water over the inside floor: the lip of the standpipe, or for `inTank` set by the tank. */
  readonly waterLine_mm: number;
  /** Water left standing when the bed has drained; 0 where unknown, which is the safe side for the tank. */
  readonly drained_mm: number;
  /** Bore of the standpipe; null where the bed has none or it was not measured. */
  readonly standpipeBore_mm: number | null;
  /** Hole at the foot of a timer bed's standpipe, through which it drains; null where it was not measured. */
  readonly drainHole_mm?: number | null;
  /** Underside of the bed over the floor the tank stands on. For `inTank`: over the tank's inside floor. */
  readonly above_mm: number;
};

export type Vessel = {
  readonly container: Container;
  readonly count: number;
  /** Full line over the inside floor: flood beds empty, pump just off. */
  readonly full_mm: number;
  /** Inside floor over the floor of the place; below zero where it is let into the ground. */
  readonly above_mm: number;
};

export type Pump = PumpFacts & {
  /** What it really delivers into the beds, or the most it can deliver. */
  readonly flow_L_h: number;
  /** Height of the lowest opening that takes in water, over the inside floor of its vessel. */
  readonly intake_mm: number;
};

/** Air over the year at a place: twelve means, January first. */
export type Climate = {
  readonly id: string;
  readonly name: string;
  readonly mean_degC: readonly number[];
  readonly min_degC: readonly number[];
  readonly max_degC: readonly number[];
  readonly source: SourceKey;
};

export type System = {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly tank: Vessel;
  /** The pump's vessel where it is not the fish tank. The tank then overflows at its full line. */
  readonly sump: Vessel | null;
  readonly beds: readonly Bed[];
  readonly pump: Pump | null;
  readonly fish: FishStock | null;
  /** The keeper's own spoon, levelled and weighed; null where it was not weighed yet. */
  readonly spoon_g: number | null;
  readonly water: TankWater;
  /** Height above the sea; unknown counts as the sea's. */
  readonly altitude_m?: number | null;
  /** What bubbles in the fish tank; null where nothing does or it was not measured. */
  readonly air?: AirStones | null;
  /** The water that tops up and changes. */
  readonly tap?: TapWater | null;
  /** Share of protein in the feed, from its bag. */
  readonly feedProtein_frac?: number | null;
  /** What a kilowatt-hour costs, in the keeper's own money. */
  readonly pricePerKWh?: number | null;
  /** First and last day on which somebody else looks after it. */
  readonly absence?: { readonly from: string; readonly to: string } | null;
  /** The keeper's own sheet of blank labels; null where they are cut from plain paper. */
  readonly labels?: LabelGrid | null;
  /** Weather of a place like this one, for systems outdoors. */
  readonly climate?: Climate | null;
};

/** What the keeper read in the tank last. */
export type TankWater = {
  readonly pH: number | null;
  readonly now_degC: number | null;
  readonly alkalinity_mg_L?: number | null;
  /** Total ammonia, counted as nitrogen. */
  readonly tan_mg_L?: number | null;
  readonly chloride_mg_L?: number | null;
  /** Green with algae: then its oxygen swings between day and night, and no sum tells how far. */
  readonly green?: 'green' | 'clear';
};

export type AirStones = {
  /** Air through all stones together. */
  readonly flow_L_min: number;
  readonly stones: number;
  /** Water over the stones. */
  readonly depth_mm: number;
};

export type TapWater = {
  readonly pH: number;
  readonly alkalinity_mg_L: number;
  readonly water_degC: number;
  /** Free and bound chlorine together, as Cl2; null where it was not tested. */
  readonly chlorine_mg_L: number | null;
  readonly disinfectant: 'none' | 'chlorine' | 'chloramine' | 'unknown';
};
