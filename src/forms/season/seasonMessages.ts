/**
 * What the crops page and its two workers say to each other: one draws and makes files, the other solves. Plain data, so
 * that it can be handed over.
 */
import type { Problem } from '../../core/problem.ts';
import type { Crop } from '../../core/crops/crop.ts';
import type { PlanChanges } from '../../core/turnover/planChanges.ts';
import type { Change } from '../../core/turnover/change.ts';
import type { Stage, TurnoverPlan, TurnoverTask } from '../../core/turnover/turnover.ts';
import type { ClimateFile } from '../../schemas/climate.ts';
import type { SourceFile } from '../../schemas/source.ts';
import type { TermFile } from '../../schemas/term.ts';
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import type { WordingFile } from '../../schemas/wording.ts';
import type { TurnoverSheetId } from '../../sheets/turnoverSheet.ts';
import type { MadeFile, Side } from '../messages.ts';

/** All content that the crops page works with. */
export type SeasonContent = {
  readonly crops: Readonly<Record<string, Crop>>;
  readonly climates: Readonly<Record<string, ClimateFile>>;
  readonly catalogue: WordingFile;
  readonly terms: Readonly<Record<string, TermFile>>;
  readonly sources: Readonly<Record<string, SourceFile>>;
  /** Seasons that are shared with everybody, by id. */
  readonly seasons: Readonly<Record<string, TurnoverFile>>;
};

export type SeasonFile = TurnoverSheetId | 'ics' | 'csv';

/** A plan with the file that it was made of, and what planning again changed in it. */
export type Planned = {
  readonly plan: TurnoverPlan;
  readonly file: TurnoverFile;
  readonly changed: PlanChanges | null;
};

/** `raw` is what the form holds now, `day` the day of today. */
export type SeasonAsk =
  | { readonly kind: 'start'; readonly content: SeasonContent }
  | { readonly kind: 'plan'; readonly turn: number; readonly raw: unknown; readonly day: string }
  /** The rest of a plan once more, after what came differently. */
  | (OfPlan & { readonly kind: 'again'; readonly change: unknown })
  /** A plan that is there already, for the paper and the units of the form. */
  | (OfPlan & { readonly kind: 'show'; readonly held: 'yes' | 'no'; readonly raw: unknown })
  /** A better plan of what was asked last; what is still drawn of the one before is dropped. */
  | { readonly kind: 'draw'; readonly turn: number; readonly number: number; readonly plan: TurnoverPlan }
  /** No better plan comes any more: pages that nobody sees need not wait for it. */
  | { readonly kind: 'settled'; readonly turn: number }
  /** Which page is on the screen, from 0. */
  | { readonly kind: 'look'; readonly turn: number; readonly index: number }
  | (OfPlan & { readonly kind: 'make'; readonly file: SeasonFile });

type OfPlan = { readonly turn: number; readonly planned: Planned; readonly day: string };

/** A sowing, to be ticked where it failed: from its day until the day on which its last is lifted. */
export type SowingShown = {
  readonly id: string;
  readonly from: string;
  readonly until: string;
  readonly text: string;
};

/** What is to be solved: a whole season, or its rest after what came differently. */
export type Job =
  | { readonly kind: 'season'; readonly task: TurnoverTask }
  | { readonly kind: 'rest'; readonly plan: TurnoverPlan; readonly change: Change };

/** A plan as the page shows it, in sentences. */
export type SeasonWords = {
  readonly crops: readonly string[];
  readonly short: readonly string[];
  readonly notes: readonly string[];
  /** How long the days are, and how warm it is. */
  readonly light: readonly string[];
  /** None yet of a first draft. */
  readonly stages: readonly Stage[];
  /** What planning again changed; empty where nothing was. */
  readonly changes: readonly string[];
  readonly sowings: readonly SowingShown[];
  readonly files: readonly { readonly id: SeasonFile; readonly name: string }[];
};

/** The same with the pages of its calendar as pictures. */
export type SeasonShown = SeasonWords & { readonly sides: readonly Side[] };

export type SeasonTold = { readonly turn: number } & (
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  /** What was typed is whole: this is to be solved. */
  | { readonly kind: 'job'; readonly job: Job }
  /** A plan in words, and the first page of its calendar; null where nothing grows. */
  | {
      readonly kind: 'shown';
      readonly shown: SeasonWords;
      readonly planned: Planned;
      readonly side: Side | null;
    }
  /** The other pages, one by one. */
  | { readonly kind: 'side'; readonly index: number; readonly side: Side }
  /** That was the last page; what was not solved has number 0. */
  | { readonly kind: 'drawn'; readonly number: number; readonly sides: number }
  | { readonly kind: 'done' }
  | { readonly kind: 'made'; readonly made: MadeFile }
  | { readonly kind: 'failed'; readonly message: string }
);

export type Told<Kind> = Extract<SeasonTold, { readonly kind: Kind }>;

export type SolvingAsk =
  | { readonly kind: 'start'; readonly compiled: WebAssembly.Module }
  /** The solver did not load. */
  | { readonly kind: 'fail'; readonly message: string }
  | {
      readonly kind: 'solve';
      readonly turn: number;
      readonly job: Job;
      /** Seconds that it may take. */
      readonly most_s: number;
    };

export type SolvingTold = { readonly turn: number } & (
  | { readonly kind: 'solved'; readonly plan: TurnoverPlan }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly message: string }
);
