/** What the page and its worker say to each other. Plain data, so that it can be handed over. */
import type { CareTask } from '../core/care/routine.ts';
import type { Problem } from '../core/problem.ts';
import type { Uncovered } from '../paper/cover.ts';
import type { Facts } from '../schemas/facts.ts';
import type { SourceFile } from '../schemas/source.ts';
import type { Starts } from '../schemas/starts.ts';
import type { SystemFile } from '../schemas/systemFile.ts';
import type { SheetId } from '../sheets/sheetKind.ts';
import type { TermFile } from '../schemas/term.ts';
import type { WordingFile } from '../schemas/wording.ts';
import type { Answers } from './answers.ts';

/** All content that the planner works with. */
export type PlannerContent = {
  readonly facts: Facts;
  readonly starts: Starts;
  readonly catalogue: WordingFile;
  readonly care: readonly CareTask[];
  readonly terms: Readonly<Record<string, TermFile>>;
  readonly sources: Readonly<Record<string, SourceFile>>;
  /** Systems that are shared with everybody, by id. */
  readonly systems: Readonly<Record<string, SystemFile>>;
};

/** The card in its forms, or another sheet as PDF. */
export type FileKind = 'pdf' | 'png' | 'svg' | 'json' | Exclude<SheetId, 'care-card'>;

/** A system and the day that is printed on its card. */
export type Job = { readonly raw: unknown; readonly day: string };

export type Ask =
  | { readonly kind: 'start'; readonly content: PlannerContent }
  | ({ readonly kind: 'draw'; readonly turn: number } & Job)
  | ({ readonly kind: 'make'; readonly turn: number; readonly file: FileKind } & Job)
  | { readonly kind: 'open'; readonly turn: number; readonly bytes: Uint8Array };

/** One side of the card as the marks of a picture, with what it shows in words. */
export type Side = {
  readonly width_pt: number;
  readonly height_pt: number;
  readonly definitions: readonly string[];
  readonly marks: readonly string[];
  readonly alt: string;
};

export type MadeFile = {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
};

export type Told = { readonly turn: number } & (
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'answers'; readonly answers: Answers }
  /** Sides come one by one, the front first. */
  | { readonly kind: 'side'; readonly index: number; readonly side: Side }
  | { readonly kind: 'drawn'; readonly sides: number }
  | { readonly kind: 'uncovered'; readonly uncovered: readonly Uncovered[] }
  | { readonly kind: 'made'; readonly made: MadeFile }
  | { readonly kind: 'opened'; readonly raw: SystemFile }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string }
);
