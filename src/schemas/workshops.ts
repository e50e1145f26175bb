/** Workshops that were read, each with its roster and the people in it; every problem at its file and line. */
import type { Problem } from '../core/problem.ts';
import type { System } from '../core/system.ts';
import { partsOf } from '../core/workshop/parts.ts';
import type { Person } from '../core/workshop/person.ts';
import { entry } from './facts.ts';
import { readBySchema } from './issues.ts';
import { liesBelow } from './liesBelow.ts';
import { nearest } from './nearest.ts';
import { type PeopleFacts, peopleOf } from './people.ts';
import { mostRosterBytes, readRoster, type Roster } from './readRoster.ts';
import { checkRota } from './checkRota.ts';
import { valueAt } from './schemaAt.ts';
import { withoutNulls } from './withoutNulls.ts';
import { type WorkshopFile, workshopFile } from './workshopFile.ts';

export type ReadWorkshop = {
  readonly id: string;
  readonly file: string;
  readonly raw: WorkshopFile;
  readonly people: readonly Person[];
  /** Where its people are written. */
  readonly roster: { readonly file: string } & Pick<Roster, 'columns'>;
  /** The system that the facilitator works through. */
  readonly example: { readonly name: string; readonly system: System };
  /** Rows that are left out because the workshop says so (`badRows: skip`), with the reason. */
  readonly skipped: readonly Problem[];
};

/** A roster's bytes; only their number where there are too many; null where there is no such file. */
export type RosterBytes = Uint8Array | number | null;

export type WorkshopRead = {
  readonly workshop: ReadWorkshop | null;
  /** Everybody whose row is sound, also where nothing is printed because another is not. */
  readonly people: readonly Person[];
  /** Where they are written; null where nobody could be read. */
  readonly roster: ReadWorkshop['roster'] | null;
  readonly problems: readonly Problem[];
};

/**
 * Checks a workshop and its roster together.
 * @param given the file's plain data
 * @param file where it lies: its folder and name
 * @param bytesOf reads the roster that lies beside it
 */
export async function toWorkshop(
  given: unknown,
  file: string,
  facts: PeopleFacts,
  bytesOf: (roster: string) => Promise<RosterBytes>,
): Promise<WorkshopRead> {
  const plain = withoutNulls(given);
  const written = readBySchema(workshopFile, plain, []);
  const named = valueAt(plain, ['roster']);
  const roster = `${file.slice(0, file.lastIndexOf('/') + 1)}${named}`;
  const isNamed = typeof named === 'string' && liesBelow(named);
  const found = isNamed ? rosterIn(await bytesOf(named), roster, facts) : { problems: [] };
  const ofFile = [
    ...('problems' in written ? written.problems : references(written.value, facts)),
    ...checkRota(plain),
  ];
  if ('problems' in written || ofFile.length > 0 || 'problems' in found) {
    const ofRoster = 'problems' in found ? found.problems : found.read.problems;
    return { workshop: null, people: [], roster: null, problems: [...ofFile, ...ofRoster] };
  }
  return withPeople(written.value, found.read, { file, roster, facts });
}

/** The roster, or why it cannot be read at all. */
function rosterIn(
  bytes: RosterBytes,
  roster: string,
  { systems }: PeopleFacts,
): { readonly read: Roster } | { readonly problems: readonly Problem[] } {
  const place = ['roster'];
  if (bytes === null) return { problems: [{ code: 'fileMissing', place, given: roster }] };
  if (typeof bytes === 'number')
    return { problems: [{ code: 'rosterTooLarge', place, given: String(bytes), max: mostRosterBytes }] };
  const ids = systems.map(({ id }) => id);
  return { read: readRoster(bytes, roster, ids) };
}

type Around = { readonly file: string; readonly roster: string; readonly facts: PeopleFacts };

function withPeople(raw: WorkshopFile, read: Roster, { file, roster, facts }: Around): WorkshopRead {
  const { columns } = read;
  const place = { file: roster, columns };
  const at = (line: number) => ({ file: roster, line, column: Math.max(1, columns.containers) });
  const { people, problems } = peopleOf(raw, read.rows, facts, at, read.all);
  const ofRows = [...read.problems, ...problems];
  if (people.length === 0 && ofRows.length === 0)
    ofRows.push({ code: 'rosterNobody', place: [], at: { file: roster, line: 1, column: 1 } });
  const skips = raw.badRows === 'skip' && read.whole === 'sound' && people.length > 0;
  if (ofRows.length > 0 && !skips) return { workshop: null, people, roster: place, problems: ofRows };
  const example = facts.systems.find(({ id }) => id === raw.example)?.system;
  if (example === undefined) throw new RangeError(`no system ${raw.example}`);
  const named = { name: example.name, system: example };
  return {
    workshop: {
      ...{ id: raw.id, file, raw, people, example: named, skipped: ofRows },
      roster: place,
    },
    ...{ people, roster: place },
    problems: [],
  };
}

/** Names of other files that are not there. */
function references(raw: WorkshopFile, { systems, media, starts }: PeopleFacts): readonly Problem[] {
  const ids = systems.map(({ id }) => id);
  return [
    ...(partsOf(raw.sheets, raw.rota ? 'rota' : 'none').length > 0 ? [] : [sheetsEmpty]),
    ...(ids.includes(raw.example) ? [] : [unknown('example', raw.example, ids)]),
    ...(entry(media, raw.media) ? [] : [unknown('media', raw.media, Object.keys(media))]),
    ...(entry(starts.pumps, raw.pump) ? [] : [unknown('pump', raw.pump, Object.keys(starts.pumps))]),
  ];
}

/** Contents of nothing, or a rota of which no day is told. */
const sheetsEmpty: Problem = { code: 'sheetsEmpty', place: ['sheets'] };

function unknown(key: string, given: string, allowed: readonly string[]): Problem {
  const meant = nearest(given, allowed);
  return { code: 'reference', place: [key], given, allowed, ...(meant === null ? {} : { meant }) };
}
