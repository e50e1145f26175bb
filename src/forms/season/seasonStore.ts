/** Keeps on this device what was typed about a season, and the plan that came of it. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { KeptHand } from './hand.ts';
import { broughtUp } from './olderHand.ts';
import type { SeasonDraft } from './seasonDraft.ts';

interface Shelf extends DBSchema {
  season: { key: 'kept'; value: SeasonDraft };
  plan: { key: 'kept'; value: KeptHand };
}

let opened: Promise<IDBPDatabase<Shelf>> | undefined;

/** null where nothing was kept, or nothing that this page can read. */
export async function takeSeason(): Promise<SeasonDraft | null> {
  try {
    const kept = await (await shelf()).get('season', 'kept');
    return kept?.version === 2 ? kept : null;
  } catch {
    return null;
  }
}

/** null where no plan was kept, or none that this page can read. */
export async function takeHand(): Promise<KeptHand | null> {
  try {
    const kept = await (await shelf()).get('plan', 'kept');
    return kept?.version === 1 ? broughtUp(kept) : null;
  } catch {
    return null;
  }
}

/** Throws where the browser keeps nothing. */
export async function keepSeason(draft: SeasonDraft): Promise<void> {
  await (await shelf()).put('season', draft, 'kept');
}

/** Throws where the browser keeps nothing. */
export async function keepHand(kept: KeptHand): Promise<void> {
  await (await shelf()).put('plan', kept, 'kept');
}

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('bedfirst-season', 2, {
    upgrade: (database, from) => {
      if (from < 1) database.createObjectStore('season');
      if (from < 2) database.createObjectStore('plan');
    },
  });
  return opened;
}
