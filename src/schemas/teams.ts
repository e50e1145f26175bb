/** Rows of a roster put together by their teams, each of which shares one worksheet. */
import type { Member } from '../core/workshop/person.ts';
import { alike, type RosterRow } from './readRoster.ts';

/** Who gets a worksheet, and which rows it is for. */
export type Sharing = RosterRow & {
  readonly members: readonly Member[];
  /** The row that brought the containers. */
  readonly containersLine: number;
};

/** Rows that bring other containers than the first of their team are kept apart: nobody can say which are meant. */
export type Shared = {
  readonly sheets: readonly Sharing[];
  readonly others: readonly { readonly row: RosterRow; readonly first: number }[];
};

/** Everybody by themselves. */
export function eachAlone(rows: readonly RosterRow[]): Shared {
  return { sheets: rows.map(alone), others: [] };
}

function alone(row: RosterRow): Sharing {
  return { ...row, members: [], containersLine: row.line };
}

/** Rows of one team together, where its first one stands; who has no team is one alone. */
export function byTeam(rows: readonly RosterRow[]): Shared {
  const teams = new Map<string, Sharing>();
  const others: Shared['others'][number][] = [];
  for (const row of rows) {
    const { line, name, notes } = row;
    const key = sheetKey(row);
    const known = teams.get(key);
    if (row.team === '') teams.set(key, alone(row));
    else if (known === undefined)
      teams.set(key, { ...alone(row), name: row.team, notes: '', members: [{ line, name, notes }] });
    else if (differs(known, row)) others.push({ row, first: known.containersLine });
    else {
      const brings = known.containers === null && row.containers !== null;
      const brought = brings ? { containers: row.containers, containersLine: line } : {};
      teams.set(key, { ...known, ...brought, members: [...known.members, { line, name, notes }] });
    }
  }
  return { sheets: [...teams.values()], others };
}

/** Rows with the same key share a sheet; a team that is written in another way has a problem, but is no other team. */
export function sheetKey({ team, line }: Pick<RosterRow, 'team' | 'line'>): string {
  return team === '' ? `\n${line}` : alike(team);
}

function differs(known: Sharing, row: RosterRow): boolean {
  const [first, other] = [known.containers, row.containers];
  return first !== null && other !== null && JSON.stringify(first) !== JSON.stringify(other);
}
