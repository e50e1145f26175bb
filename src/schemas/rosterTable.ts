/** The rows of a roster, each with its line, whatever delimiter the spreadsheet program wrote. */
import Papa from 'papaparse';
import type { Problem } from '../core/problem.ts';

/** What a roster may tell of a person; only the name must be there. */
const rosterColumns = ['name', 'team', 'containers', 'notes'] as const;
export type RosterColumn = (typeof rosterColumns)[number];

/** A row as it was written: its cells by column, and where it stands. */
export type TableRow = {
  readonly line: number;
  readonly cells: Readonly<Record<RosterColumn, string>>;
};

export type RosterTable = {
  readonly rows: readonly TableRow[];
  /** For each column its place in the file, counted from 1; 0 where the file does not have it. */
  readonly columns: Readonly<Record<RosterColumn, number>>;
  readonly problems: readonly Problem[];
};

const delimiters = [',', ';', '\t'] as const;

type Raw = { readonly line: number; readonly cells: readonly string[] };

/**
 * Reads a roster's text.
 * @param text decoded, with or without a byte order mark
 * @param file what it is called in a problem
 */
export function rosterTable(text: string, file: string): RosterTable {
  const none = Object.fromEntries(rosterColumns.map((name) => [name, 0])) as RosterTable['columns'];
  const at = (line: number, column: number) => ({ file, line, column });
  const plain = text.replace(/^\ufeff/, '');
  if (plain.trim() === '')
    return { rows: [], columns: none, problems: [{ code: 'emptyFile', place: [], at: at(1, 1) }] };
  const { raws, problems } = readRaws(plain, file);
  const [head, ...rest] = raws;
  const names = (head?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  const columns = { ...none };
  const found: Problem[] = [...problems];
  for (const [index, name] of names.entries()) {
    const known = rosterColumns.find((column) => column === name);
    const place = { place: [], given: head?.cells[index]?.trim() ?? '', at: at(head?.line ?? 1, index + 1) };
    if (known === undefined) {
      if (name !== '') found.push({ code: 'rosterColumnUnknown', ...place, allowed: rosterColumns });
    } else if (columns[known] > 0) found.push({ code: 'rosterColumnTwice', ...place });
    else columns[known] = index + 1;
  }
  if (columns.name === 0)
    found.push({
      code: 'rosterColumnMissing',
      place: [],
      given: 'name',
      at: at(head?.line ?? 1, 1),
      allowed: rosterColumns,
    });
  const rows = rest.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  for (const { line, cells } of rows) {
    const more = cells.findIndex((cell, index) => index >= names.length && cell.trim() !== '');
    if (more >= 0)
      found.push({
        code: 'rosterCellBeyond',
        place: [],
        given: cells[more] ?? '',
        max: names.length,
        at: at(line, more + 1),
      });
  }
  return { rows: rows.map((raw) => rowOf(raw, columns)), columns, problems: found };
}

function rowOf({ line, cells }: Raw, columns: RosterTable['columns']): TableRow {
  // Machines end lines in three ways; on paper they are one.
  const cell = (column: RosterColumn): string =>
    (cells[columns[column] - 1] ?? '').replace(/\r\n?/g, '\n').trim();
  const entries = rosterColumns.map((column) => [column, cell(column)]);
  return { line, cells: Object.fromEntries(entries) as TableRow['cells'] };
}

/** The one by which the first line has most of the columns that are known. */
function delimiterOf(text: string): string {
  const [first = ''] = text.split(/\r\n|\r|\n/, 1);
  const known = (delimiter: string): number => {
    const names = first.split(delimiter).map((name) => name.replace(/^\s*"?|"?\s*$/g, '').toLowerCase());
    return rosterColumns.filter((column) => names.includes(column)).length;
  };
  return delimiters.reduce<string>((best, one) => (known(one) > known(best) ? one : best), delimiters[0]);
}

/** A first line that spreadsheet programs write for each other: by what cells are parted. */
const partedBy = /^"?sep=.?"?(?:\r\n|\r|\n)/i;

/** Rows with the lines they begin on; a line break inside quotation marks belongs to its cell. */
function readRaws(whole: string, file: string) {
  const raws: Raw[] = [];
  const problems: Problem[] = [];
  const text = whole.replace(partedBy, '');
  let [line, from] = [text === whole ? 1 : 2, 0];
  Papa.parse<string[]>(text, {
    delimiter: delimiterOf(text),
    step: ({ data, errors, meta }) => {
      raws.push({ line, cells: data });
      const [wrong] = errors.filter(({ type }) => type === 'Quotes');
      if (wrong) problems.push({ code: 'rosterQuote', place: [], at: { file, line, column: data.length } });
      line += breaksIn(text.slice(from, meta.cursor));
      from = meta.cursor;
    },
  });
  return { raws, problems };
}

function breaksIn(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0;
}
