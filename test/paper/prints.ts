import type { Page } from '../../src/paper/page.ts';
import type { Print } from '../../src/paper/print.ts';

export const attached = '{"system":"east tank","place":"Łódź"}';

/** A print of these pages with everything that a print can have. */
export function printOf(...pages: readonly Page[]): Print {
  return {
    pages,
    title: 'Mill Pond School, east tank: Łódź & “Ελλ”',
    lang: 'en',
    subject: 'Care of a tank',
    date: '2026-05-04',
    attachment: {
      name: 'east tank.json',
      mime: 'application/json',
      bytes: new TextEncoder().encode(attached),
      description: 'The system this card was made from',
    },
  };
}
