import type { Bidi } from './bidi.ts';
import { type Face, faceFrom } from './face.ts';
import { type Pack, packPostScriptName, type SlicedFamily, type Slices } from './packs.ts';
import type { Weight } from './page.ts';
import type { Inflate } from './woff.ts';

/** Where a runtime finds the packs. Nothing is asked of it before a sheet needs it. */
export type PackShelf = {
  /** How the runtime unpacks fonts, where it has a way of its own. */
  readonly inflate?: Inflate;
  readonly woff: (pack: Pack, weight: Weight) => Promise<Uint8Array>;
  readonly slices: (family: SlicedFamily) => Promise<Slices>;
};

export type OpenPacks = {
  /** Reads those that were not read yet. One that did not load is asked for again next time. */
  readonly read: (packs: readonly Pack[]) => Promise<void>;
  readonly facesOf: (packs: readonly Pack[]) => readonly Face[];
  /** How their letters are put in order, if any of them run to the left. */
  readonly bidiOf: (packs: readonly Pack[]) => Bidi | null;
};

/** The packs that were taken off the shelf. */
export function openPacks(shelf: PackShelf): OpenPacks {
  const reading = new Map<string, Promise<void>>();
  const faces = new Map<string, readonly Face[]>();
  let bidi: Bidi | null = null;
  const read = async (pack: Pack): Promise<void> => {
    if (pack.direction === 'rtl') ({ bidi } = await import('./bidi.ts'));
    faces.set(pack.name, await facesFrom(pack, shelf));
  };
  const once = (pack: Pack): Promise<void> => {
    const known = reading.get(pack.name) ?? read(pack);
    reading.set(pack.name, known);
    known.catch(() => reading.delete(pack.name));
    return known;
  };
  return {
    read: async (packs) => {
      await Promise.all(packs.map(once));
    },
    facesOf: (packs) => packs.flatMap((pack) => faces.get(pack.name) ?? unread(pack)),
    bidiOf: (packs) => (packs.some((pack) => pack.direction === 'rtl') ? bidi : null),
  };
}

function unread(pack: Pack): never {
  throw new Error(`The pack of fonts "${pack.name}" was not read.`);
}

function facesFrom(pack: Pack, shelf: PackShelf): Promise<Face[]> {
  const face = async (weight: Weight, index: number) => {
    const { name } = pack;
    const woff = await shelf.woff(pack, weight);
    return faceFrom(
      { name, weight, postScriptName: packPostScriptName(pack, weight), kerning: 'all around', woff },
      index,
      shelf.inflate,
    );
  };
  return Promise.all([face('text', pack.index), face('heavy', pack.index + 1)]);
}
