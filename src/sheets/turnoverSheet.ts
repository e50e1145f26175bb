/** What every sheet of a season gets, and what it gives. */
import type { SeasonFigures } from '../core/turnover/seasonFigures.ts';
import type { TurnoverPlan } from '../core/turnover/turnover.ts';
import type { Job } from '../core/turnover/jobs.ts';
import type { LabelGrid } from '../core/labelGrid.ts';
import { say } from '../wording/catalogue.ts';
import type { SaidIn } from '../wording/harvest.ts';
import type { Printing } from './sheet.ts';
import type { SheetKind, WallSize } from './sheetKind.ts';

export type TurnoverInput = Printing & {
  readonly plan: TurnoverPlan;
  /** Everything that is to be done, day by day. */
  readonly jobs: readonly Job[];
  readonly figures: SeasonFigures;
  /** The grid of the keeper's own labels; null for plain paper. */
  readonly labels: LabelGrid | null;
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

/** In which words and units sentences of `wording` are wanted. */
export function saidIn({ words, units }: TurnoverInput): SaidIn {
  return { catalogue: words.catalogue, units };
}

/** By which a crop is known where its name has no room: its turn among the wishes. */
export function cropNumber({ plan }: TurnoverInput, id: string): string {
  return String(plan.task.wishes.findIndex(({ crop }) => crop.id === id) + 1);
}

/** What a picture of the calendar says, for whoever hears it. */
export function calendarAlt(input: TurnoverInput, crops: ReadonlySet<string>): string {
  const names = [...crops].map((crop) => cropName(input, crop));
  return season(input, 'calendar.alt', { crops: names.join(', ') });
}
