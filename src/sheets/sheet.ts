/** What every sheet gets, and what it gives. */
import type { SheetFacts } from '../core/plan/sheetFacts.ts';
import type { paperSizes } from '../paper/measures.ts';
import type { Catalogue } from '../wording/catalogue.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import type { Terms } from '../wording/step.ts';

export type PaperName = keyof typeof paperSizes;

/** The words that do not belong to one system. */
export type Words = {
  readonly catalogue: Catalogue;
  readonly terms: Terms;
  /** Short citation by key. */
  readonly sources: Readonly<Record<string, { readonly short: string }>>;
};

/** In which words, on what paper, in which units and when a sheet is printed. */
export type Printing = {
  readonly words: Words;
  readonly paper: PaperName;
  readonly units: UnitSystem;
  /** The day of printing, ISO 8601. Given, never read from a clock. */
  readonly day: string;
};

export type SheetInput = SheetFacts & Printing;
