/** Rows as comma-separated values (RFC 4180) that spreadsheets open as they are meant. */

/** A cell: words, a number, or nothing. */
export type CsvCell = string | number | null;

/** By which spreadsheets know that the letters are UTF-8. */
const byteOrderMark = '\ufeff';

/** A file of rows; every line ends, the last one too. */
export function csv(rows: readonly (readonly CsvCell[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = harmless(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Words that a spreadsheet would work out as a formula get an apostrophe before them, which makes them words again.
 * A name that somebody else typed must not run on the reader's machine.
 */
function harmless(text: string): string {
  return /^\s*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}
