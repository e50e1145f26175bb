/** What every sheet of a season gets, and what it gives. */
import type { TurnoverPlan } from '../core/turnover/turnover.ts';
import type { Job } from '../core/turnover/jobs.ts';
import { say } from '../wording/catalogue.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import type { PaperName, Words } from './sheet.ts';
import type { SheetKind, WallSize } from './sheetKind.ts';

export type TurnoverInput = {
  readonly plan: TurnoverPlan;
  /** Everything that is to be done, day by day. */
  readonly jobs: readonly Job[];
  readonly words: Words;
  readonly paper: PaperName;
  readonly units: UnitSystem;
  /** The day of printing, ISO 8601. Given, never read from a clock. */
  readonly day: string;
};

/** Part of the names of a sheet's files. */
export type TurnoverSheetId =
  | 'turnover-calendar'
  | `turnover-calendar-${WallSize}`
  | 'turnover-months'
  | 'weekly-jobs'
  | 'sowing-tags'
  | 'expected-harvest';

export type TurnoverKind = SheetKind<TurnoverInput, TurnoverSheetId>;

/** A sentence of these sheets. */
export function season(
  { words }: Pick<TurnoverInput, 'words'>,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  return say(words.catalogue, `turnover.${key}`, values);
}

/** Name of a crop, as short as its file has it. */
export function cropName({ plan }: TurnoverInput, id: string): string {
  return plan.task.wishes.find(({ crop }) => crop.id === id)?.crop.name ?? id;
}
