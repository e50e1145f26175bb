/** What the crops page and its worker say to each other. Plain data, so that it can be handed over. */
import type { Problem } from '../../core/problem.ts';
import type { Crop } from '../../core/crops/crop.ts';
import type { Stage } from '../../core/turnover/turnover.ts';
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

export type SeasonAsk =
  | { readonly kind: 'start'; readonly content: SeasonContent }
  | { readonly kind: 'plan'; readonly turn: number; readonly raw: unknown; readonly day: string }
  | { readonly kind: 'make'; readonly turn: number; readonly file: SeasonFile };

/** A plan as the page shows it: sentences, and the pages of its calendar as pictures. */
export type SeasonShown = {
  readonly crops: readonly string[];
  readonly short: readonly string[];
  readonly notes: readonly string[];
  readonly stages: readonly Stage[];
  readonly sides: readonly Side[];
  readonly files: readonly { readonly id: SeasonFile; readonly name: string }[];
};

export type SeasonTold = { readonly turn: number } & (
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'shown'; readonly shown: SeasonShown }
  | { readonly kind: 'done' }
  | { readonly kind: 'made'; readonly made: MadeFile }
  | { readonly kind: 'failed'; readonly message: string }
);
