/** Keeps what was typed on this device, as it was typed, and what the form held before it was last replaced. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Draft } from './draft.ts';

/** `before` is what Undo brings back; null where there is nothing. */
export type Kept = { readonly now: Draft; readonly before: Draft | null };

interface Shelf extends DBSchema {
  planner: { key: 'kept'; value: Kept };
}

let opened: Promise<IDBPDatabase<Shelf>> | undefined;

/** What was kept; null where there is nothing, or nothing that this page can read. */
export async function takeOut(): Promise<Kept | null> {
  try {
    const kept = await (await shelf()).get('planner', 'kept');
    return kept?.now?.version === 1 ? kept : null;
  } catch {
    return null;
  }
}

/** Throws where the browser keeps nothing (private windows, full disks). */
export async function putAway(kept: Kept): Promise<void> {
  await (await shelf()).put('planner', kept, 'kept');
}

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('bedfirst', 1, {
    upgrade: (database) => {
      database.createObjectStore('planner');
    },
  });
  return opened;
}
