/** A roster: the people of a workshop, or every problem of the file at once, each with its line and column. */
import type { Problem } from '../core/problem.ts';
import { type ContainersRead, readContainers } from './containersText.ts';
import { isNoText } from './noText.ts';
import { inOrder } from './problemOrder.ts';
import { type RosterColumn, type RosterTable, rosterTable, type TableRow } from './rosterTable.ts';
import { rosterText } from './rosterText.ts';
import { isFormula } from './spreadsheetFormula.ts';

/** One person, as the roster tells of them. */
export type RosterRow = {
  readonly line: number;
  readonly name: string;
  readonly team: string;
  /** Null where they get an exercise. */
  readonly containers: Exclude<ContainersRead, { readonly problems: unknown }> | null;
  readonly notes: string;
};

export type Roster = {
  /** Those whose row has no problem, in the order of the file. */
  readonly rows: readonly RosterRow[];
  /** Every row, also those with a problem. */
  readonly all: readonly Pick<RosterRow, 'line' | 'team'>[];
  /** For each column its place in the file, from 1; 0 where there is none. */
  readonly columns: RosterTable['columns'];
  readonly problems: readonly Problem[];
  /** For each problem of a row nothing is made; but these are of the whole file, and nothing at all can be made. */
  readonly whole: 'sound' | 'broken';
};

/** Larger files are refused without being read: a roster of five thousand has less than a megabyte. */
export const mostRosterBytes = 5_000_000;
/** More people than sheets can be numbered for. */
const mostRows = 9_999;
const mostCharacters = 500;

/**
 * Reads a roster.
 * @param bytes the file
 * @param file what it is called in a problem
 * @param systems names of the systems that may stand in the column of containers
 */
export function readRoster(bytes: Uint8Array, file: string, systems: readonly string[]): Roster {
  const broken = (problem: Omit<Problem, 'place'>, place = { line: 1, column: 1 }): Roster => {
    return {
      ...{ rows: [], all: [], columns: noColumns },
      problems: [{ place: [], at: { file, ...place }, ...problem }],
      whole: 'broken',
    };
  };
  if (bytes.length > mostRosterBytes)
    return broken({ code: 'rosterTooLarge', given: String(bytes.length), max: mostRosterBytes });
  if (isNoText(bytes)) return broken({ code: 'rosterNoText' });
  const text = rosterText(bytes);
  if ('mixedAt' in text) return broken({ code: 'mixedEncodings' }, text.mixedAt);
  if ('wrongAt' in text) return broken({ code: 'notUtf8' }, text.wrongAt);
  const { rows: raws, columns, problems: ofFile } = rosterTable(text.text, file);
  const isBroken = ofFile.some(({ code }) => code !== 'rosterCellBeyond');
  if (columns.name === 0) return { rows: [], all: [], columns, problems: inOrder(ofFile), whole: 'broken' };
  if (raws.length > mostRows)
    return broken({ code: 'rosterLong', given: String(raws.length), max: mostRows });
  const written: Written = { names: new Map(), teams: new Map() };
  const beyond = new Set(
    ofFile.flatMap(({ code, at }) => (code === 'rosterCellBeyond' && at ? [at.line] : [])),
  );
  const read = raws.map((raw) => {
    const at = (column: RosterColumn) => ({ file, line: raw.line, column: Math.max(1, columns[column]) });
    return readRow(raw, { written, at, systems });
  });
  const rows = read.flatMap(({ row }) => (row === null || beyond.has(row.line) ? [] : [row]));
  const problems = inOrder([...ofFile, ...read.flatMap((one) => one.problems)]);
  const all = raws.map(({ line, cells: { team } }) => ({ line, team }));
  return { rows, all, columns, problems, whole: isBroken ? 'broken' : 'sound' };
}

/** Names and teams that stood in earlier rows, by what makes two of them alike. */
type Written = {
  readonly names: Map<string, number>;
  readonly teams: Map<string, { readonly team: string; readonly line: number }>;
};

type Around = {
  readonly written: Written;
  readonly at: At;
  readonly systems: readonly string[];
};

/** A row, or null and what is wrong with it. */
function readRow(
  raw: TableRow,
  { written, at, systems }: Around,
): { readonly row: RosterRow | null; readonly problems: readonly Problem[] } {
  const { containers: cell, ...cells } = raw.cells;
  const found = rowProblems(raw, written, at);
  const isSound = !found.some((one) => one.at?.column === at('containers').column);
  const containers = cell === '' || !isSound ? null : readContainers(cell, systems);
  if (containers !== null && 'problems' in containers) {
    const ofCell = containers.problems.map((one): Problem => ({ ...one, at: at('containers') }));
    return { row: null, problems: [...found, ...ofCell] };
  }
  return { row: found.length > 0 ? null : { line: raw.line, ...cells, containers }, problems: found };
}

const noColumns: RosterTable['columns'] = { name: 0, team: 0, containers: 0, notes: 0 };

type At = (column: RosterColumn) => NonNullable<Problem['at']>;

function rowProblems({ line, cells }: TableRow, { names, teams }: Written, at: At): Problem[] {
  const found = (Object.entries(cells) as [RosterColumn, string][]).flatMap(([column, text]) =>
    textProblems(text).map((problem) => ({ ...problem, place: [], at: at(column) })),
  );
  const team = teams.get(alike(cells.team));
  if (team === undefined) teams.set(alike(cells.team), { team: cells.team, line });
  else if (team.team !== cells.team)
    found.push({
      ...{ code: 'rosterTeamTwice', place: [], given: cells.team, other: team.team, min: team.line },
      at: at('team'),
    });
  if (cells.name === '') return [...found, { code: 'rosterNameMissing', place: [], at: at('name') }];
  const key = alike(`${cells.team}\n${cells.name}`);
  const first = names.get(key);
  if (first === undefined) names.set(key, line);
  else found.push({ code: 'rosterNameTwice', place: [], given: cells.name, min: first, at: at('name') });
  return found;
}

/** The same for texts that only differ in capitals and blanks. */
export function alike(text: string): string {
  return text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\S\n]+/g, ' ');
}

/** What no cell may hold: a sum of the spreadsheet program, a character that cannot be printed, more than a line. */
function textProblems(text: string): readonly Omit<Problem, 'place'>[] {
  const problems: Omit<Problem, 'place'>[] = [];
  if (isFormula(text)) problems.push({ code: 'rosterFormula', given: text });
  const control = /[\p{Cc}\p{Cs}\ufffe\uffff]/u.exec(text.replace(/[\r\n\t]/g, ' '))?.[0];
  if (control !== undefined) {
    const code = (control.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    problems.push({ code: 'controlCharacter', given: `U+${code}` });
  }
  if ([...text].length > mostCharacters)
    problems.push({ code: 'tooLong', max: mostCharacters, unit: 'characters' });
  return problems;
}
