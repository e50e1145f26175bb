/** What goes round the pages of a care card: title, language, day, and the system itself to open again. */
import type { Page } from '../paper/page.ts';
import type { Print } from '../paper/print.ts';
import { card } from './cardWords.ts';
import { careCardTitle } from './careCard.tsx';
import type { SheetInput } from './sheet.ts';

/** Name under which the system lies in the PDF. */
export const recordName = 'system.json';

/** The print of a card that was laid out; the build and the browser make the same one. */
export function cardPrint(input: SheetInput, pages: readonly Page[], record: string): Print {
  return {
    pages,
    title: careCardTitle(input),
    lang: 'en',
    subject: card(input, 'pdfSubject'),
    date: input.day,
    attachment: {
      name: recordName,
      mime: 'application/json',
      bytes: new TextEncoder().encode(record),
      description: card(input, 'pdfAttachment'),
    },
  };
}
