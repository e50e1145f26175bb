/** What threads that print are asked for, and what they answer. */
import type { ReadSystem, ReadTurnover } from '../schemas/content.ts';
import type { SheetId } from '../sheets/sheetKind.ts';

/** A sheet of a system; or a season, which is planned once for all of its sheets. */
export type Order =
  | { readonly of: ReadSystem; readonly sheet: SheetId }
  | { readonly of: ReadTurnover; readonly sheet: typeof seasonSheets };

export const seasonSheets = 'turnover';

/** What comes back for each sheet: its pages, none where the system has nothing for it, or why it cannot be printed. */
export type PrintAnswer = {
  readonly file: string;
  readonly sheet: Order['sheet'];
  readonly pages: number;
  readonly refused: string | null;
};
