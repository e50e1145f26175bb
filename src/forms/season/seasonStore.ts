/** Keeps what was typed about a season on this device. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { SeasonDraft } from './seasonDraft.ts';

interface Shelf extends DBSchema {
  season: { key: 'kept'; value: SeasonDraft };
}

let opened: Promise<IDBPDatabase<Shelf>> | undefined;

/** null where nothing was kept, or nothing that this page can read. */
export async function takeSeason(): Promise<SeasonDraft | null> {
  try {
    const kept = await (await shelf()).get('season', 'kept');
    return kept?.version === 1 ? kept : null;
  } catch {
    return null;
  }
}

/** Throws where the browser keeps nothing. */
export async function keepSeason(draft: SeasonDraft): Promise<void> {
  await (await shelf()).put('season', draft, 'kept');
}

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('bedfirst-season', 1, {
    upgrade: (database) => {
      database.createObjectStore('season');
    },
  });
  return opened;
}
