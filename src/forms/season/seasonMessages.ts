/** What the crops page and its worker say to each other. Plain data, so that it can be handed over. */
import type { Problem } from '../../core/problem.ts';
import type { Crop } from '../../core/crops/crop.ts';
import type { PlanChanges } from '../../core/turnover/planChanges.ts';
import type { Stage, TurnoverPlan } from '../../core/turnover/turnover.ts';
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
  | (OfPlan & { readonly kind: 'make'; readonly file: SeasonFile });

type OfPlan = { readonly turn: number; readonly planned: Planned; readonly day: string };

/** A sowing, to be ticked where it failed: from its day until the day on which its last is lifted. */
export type SowingShown = {
  readonly id: string;
  readonly from: string;
  readonly until: string;
  readonly text: string;
};

/** A plan as the page shows it: sentences, and the pages of its calendar as pictures. */
export type SeasonShown = {
  readonly crops: readonly string[];
  readonly short: readonly string[];
  readonly notes: readonly string[];
  readonly stages: readonly Stage[];
  /** What planning again changed; empty where nothing was. */
  readonly changes: readonly string[];
  readonly sowings: readonly SowingShown[];
  readonly sides: readonly Side[];
  readonly files: readonly { readonly id: SeasonFile; readonly name: string }[];
};

export type SeasonTold = { readonly turn: number } & (
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'shown'; readonly shown: SeasonShown; readonly planned: Planned }
  | { readonly kind: 'done' }
  | { readonly kind: 'made'; readonly made: MadeFile }
  | { readonly kind: 'failed'; readonly message: string }
);
