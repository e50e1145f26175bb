/** The crop turnover plan: what is asked for, and what comes out. Weeks are counted from 0, the first of the season. */
import type { Crop, CropUnit } from '../crops/crop.ts';
import type { GrowingPlace } from '../crops/growingPlace.ts';
import type { Note } from '../note.ts';
import type { BedMode } from '../system.ts';
import type { CropWeeks, Shortfall } from './cropWeeks.ts';
import type { FirstPicking } from './firstPicking.ts';

/** What a person wants, already checked. */
export type TurnoverTask = {
  readonly id: string;
  readonly name: string;
  readonly place: GrowingPlace;
  /** Name of the place, for the paper. */
  readonly placeName: string;
  /** Monday of the first week, as a day number. */
  readonly firstMonday_d: number;
  /** 1 to 106. */
  readonly weeks: number;
  /** The day on which the person likes to sow, plant and pick: 0 is Monday. */
  readonly workday: number;
  readonly beds: readonly TurnoverBed[];
  /** Every bed is cut into places of this size: squares of so many millimetres. */
  readonly place_mm: number;
  /** Most seedling cells at a time; null where nobody counts them. */
  readonly nurseryCells: number | null;
  readonly wishes: readonly Wish[];
  readonly holidays: readonly Holiday[];
  /** Of everything: weeks with more or less that come to nothing. */
  readonly pulsesAway?: readonly PulseAway[];
  /** No family straight after itself in a place. */
  readonly rotation: 'wanted' | 'ignored';
  /** Days a place rests after its crop was lifted. */
  readonly rest_d: number;
  /** Feed that goes in today; null where no system is named. */
  readonly feed_g_d: number | null;
};

export type TurnoverBed = {
  readonly name: string;
  readonly mode: BedMode;
  /** In the order in which strips run, row after row. */
  readonly places: number;
  readonly area_m2: number;
};

export type Wish = {
  readonly crop: Crop;
  readonly unit: CropUnit;
  /** Wanted in each week of the season; 0 where nothing is. */
  readonly perWeek: readonly number[];
  /** Of this crop alone. */
  readonly pulsesAway?: readonly PulseAway[];
};

/**
 * Another amount that was asked for from this day (ISO 8601) on, in a week of holidays: nothing is wanted then. null: in a
 * week that begins or ends the season, with the workday outside of it.
 */
export type PulseAway = { readonly day: string; readonly holiday: string | null };

/** Weeks in which nobody is there: nothing is sown, planted or picked. */
export type Holiday = { readonly name: string; readonly from_week: number; readonly to_week: number };

export type Week = {
  readonly index: number;
  readonly monday_d: number;
  /** The same as a date: `2031-04-28`. */
  readonly monday: string;
  readonly isoYear: number;
  readonly isoWeek: number;
  readonly holiday: string | null;
  readonly mean_degC: number;
  /** Hours from sunrise to sunset in the middle of the week. */
  readonly daylight_h: number;
};

/** Plants of one crop that are sown together and stand together. */
export type Sowing = {
  /** The same as long as crop, bed and week of sowing are: `lettuceHead-2031W14-1`. */
  readonly id: string;
  readonly crop: string;
  readonly bed: number;
  readonly sow_d: number;
  /** null: sown into the bed. */
  readonly plantOut_d: number | null;
  /** First week in the bed, and the week in which the last of it is lifted. */
  readonly from_week: number;
  readonly to_week: number;
  /** That are or were sown; more than `plants` ask for where it has failed in part. */
  readonly seeds: number;
  readonly plants: number;
  readonly strips: readonly Strip[];
  readonly picks: readonly Pick[];
  /** The day on which it is likely to be ready, and between which days that may be. */
  readonly ready_d: number;
  readonly readyFrom_d: number;
  readonly readyTo_d: number;
  readonly first: FirstPicking;
  /** It is warmer than it likes while it stands: it may bolt, or turn bitter. */
  readonly mayBolt: 'yes' | 'no';
  /** The same days as dates: `2031-04-28`. */
  readonly dates: {
    readonly sown: string;
    readonly planted: string | null;
    readonly readyFrom: string;
    readonly readyTo: string;
  };
};

/** What was sown before a season was planned again, and has come to less since, as it was sown. */
export type WasSown = {
  /** The same as that of what is left of it. */
  readonly id: string;
  readonly crop: string;
  readonly bed: number;
  readonly sow_d: number;
  /** As it was planned; null: sown into the bed. */
  readonly plantOut_d: number | null;
  readonly seeds: number;
  readonly plants: number;
  /** Places that it was meant for. */
  readonly strips: readonly { readonly first: number; readonly last: number }[];
};

/** Places with numbers in a row, from 1, all lifted in the same week; rests to the end of `restTo_week`. */
export type Strip = {
  readonly first: number;
  readonly last: number;
  readonly from_week: number;
  readonly to_week: number;
  readonly restTo_week: number;
};

export type Pick = {
  readonly week: number;
  readonly day_d: number;
  /** In the unit of the wish; likely, after losses. */
  readonly amount: number;
  readonly mass_g: number;
  /** Whether roots come out with what is picked: of all of it, of some, or of none. */
  readonly lifts: 'all' | 'some' | 'none';
};

export type StageName = 'demand' | 'level' | 'days' | 'idle';

/**
 * How good a stage is: proven the best there is; within `gap_frac` of a bound that nothing can beat; or unplaced, where
 * sowings of the plan that was found have no places that stay free for them: what is left was not looked at again.
 */
export type Stage = {
  readonly name: StageName;
  readonly state: 'proven' | 'gap' | 'unplaced';
  readonly value: number;
  readonly bound: number;
  readonly gap_frac: number;
};

/** A wish that was given up. everySowing: it is left out, or fewer are planted, as no places stay free for it. */
export type Relaxed = {
  readonly wish: 'oneStrip' | 'family' | 'clearing' | 'cells' | 'everySowing';
  readonly crop: string;
  /** null where it is of no bed in particular. */
  readonly bed: number | null;
  readonly week: number;
};

/** A week of the beds: places with plants from its workday to the next, and what fits them. */
export type PlantedWeek = {
  readonly places: number;
  readonly area_m2: number;
  readonly feedLow_g_d: number;
  readonly feedHigh_g_d: number;
  /** Cells taken in the nursery. */
  readonly cells: number;
};

export type TurnoverPlan = {
  readonly task: TurnoverTask;
  readonly calendar: readonly Week[];
  readonly sowings: readonly Sowing[];
  readonly wasSown: readonly WasSown[];
  readonly crops: readonly CropWeeks[];
  readonly short: readonly Shortfall[];
  readonly planted: readonly PlantedWeek[];
  readonly stages: readonly Stage[];
  readonly relaxed: readonly Relaxed[];
  readonly notes: readonly Note[];
};
