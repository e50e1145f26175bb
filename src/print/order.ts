/** What threads that print are asked for, and what they answer. */
import type { ReadSystem, ReadTurnover } from '../schemas/content.ts';
import type { ReadWorkshop } from '../schemas/workshops.ts';
import type { SheetId } from '../sheets/sheetKind.ts';
import type { WorkshopPart } from '../core/workshop/parts.ts';

/** A sheet of a system; a season, which is planned once for all of its sheets; or a part of a workshop. */
export type Order =
  | { readonly of: ReadSystem; readonly sheet: SheetId }
  | { readonly of: ReadTurnover; readonly sheet: typeof seasonSheets }
  | { readonly of: ReadWorkshop; readonly sheet: `workshop-${WorkshopPart}` };

export const seasonSheets = 'turnover';

/** What comes back for each sheet: its pages, none where the system has nothing for it, or why it cannot be printed. */
export type PrintAnswer = {
  readonly file: string;
  readonly sheet: Order['sheet'];
  readonly pages: number;
  readonly refused: string | null;
  /** Rows of a roster that are left out because the workshop says so, each with the reason. */
  readonly leftOut: readonly string[];
};
