/** Sentences of the sheets beside the care card, each sheet's in a group of its own. */
import { say } from '../wording/catalogue.ts';
import type { Printing, SheetInput } from './sheet.ts';

type SheetGroup =
  | 'sitter'
  | 'waterLog'
  | 'startUpLog'
  | 'dipStrip'
  | 'worksheet'
  | 'build'
  | 'stage'
  | 'systemDrawing'
  | 'large'
  | 'pocket'
  | 'labels'
  | 'template'
  | 'poster';

/** A sentence of a sheet. */
export function told(
  input: Pick<Printing, 'words'>,
  group: SheetGroup,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  return say(input.words.catalogue, `${group}.${key}`, values);
}

/** The rows of a table of the plan; none where the plan has no such table. */
export function rowsOf(input: SheetInput, key: string): readonly (readonly (string | number | null)[])[] {
  return input.plan.tables.find((table) => table.key === key)?.rows ?? [];
}
