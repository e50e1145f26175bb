/** What every sheet gets, and what it gives. */
import type { Plan, Table } from '../core/plan/figure.ts';
import type { CareTask } from '../core/care/routine.ts';
import type { System } from '../core/system.ts';
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

export type SheetInput = {
  readonly system: System;
  readonly plan: Plan;
  readonly words: Words;
  /** Marks of a dip strip: by kind, volume and height. */
  readonly dip: Table;
  /** The tasks of the care routine that fit this system. */
  readonly care: readonly CareTask[];
  readonly paper: PaperName;
  readonly units: UnitSystem;
  /** The day of printing, ISO 8601. Given, never read from a clock. */
  readonly day: string;
};
