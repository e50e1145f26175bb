/** What goes round the pages of any sheet: title, language, day, and the system itself to open again. */
import type { Page } from '../paper/page.ts';
import type { Attachment, Print } from '../paper/print.ts';
import { card } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';
import type { SheetKind } from './sheetKind.ts';

/** Name under which the system lies in a print. */
export const recordName = 'system.json';

/** The print of a sheet that was laid out; the build and the browser make the same one. */
export function sheetPrint(
  kind: SheetKind,
  input: SheetInput,
  pages: readonly Page[],
  record: string,
): Print {
  return { ...plainPrint(kind, input, pages), attachment: carriedRecord(input, record) };
}

/** The print of any sheet, without anything attached. */
export function plainPrint<Input extends { readonly day: string }>(
  kind: SheetKind<Input, string>,
  input: Input,
  pages: readonly Page[],
): Print {
  return {
    pages,
    title: kind.title(input),
    lang: 'en',
    subject: kind.subject(input),
    date: input.day,
    scale: kind.scale,
  };
}

/** The system itself, as it travels in every print and picture. */
export function carriedRecord(input: SheetInput, record: string): Attachment {
  return {
    name: recordName,
    mime: 'application/json',
    bytes: new TextEncoder().encode(record),
    description: card(input, 'pdfAttachment'),
  };
}
