import { type Face, type FontFile, faceFrom } from './face.ts';
import { lately } from './lately.ts';
import { openPacks, type PackShelf } from './openPacks.ts';
import { eastAsianFamilies, isEastAsian, type Pack, packNamed, slicePacks, wholePacks } from './packs.ts';
import { type Type, typeFrom } from './type.ts';

/** What a page keeps of the type it is set in. */
type Packed = { readonly packs: readonly string[] };

/** All type of a press: the fonts of every sheet, and the packs that some sheets need beside them. */
export type TypeCase = {
  /** The fonts of every sheet, and no more. */
  readonly type: Type;
  /** The type for a sheet with these texts; reads the packs that they need. */
  readonly typeFor: (texts: Iterable<string>) => Promise<Type>;
  /** The type that a page was laid out in. Its packs must have been read. */
  readonly typeOf: (page: Packed) => Type;
  /** Reads the packs of pages, which may have been laid out elsewhere. */
  readonly read: (pages: readonly Packed[]) => Promise<void>;
};

/** More than a print needs at a time. */
const keptTypes = 25;
/** Where the letters of so many texts are found is kept: the lists of packs are long. */
const keptPacks = 1_000;

export function typeCase(files: readonly FontFile[], shelf: PackShelf): TypeCase {
  const faces = files.map((file, index) => faceFrom(file, index, shelf.inflate));
  const type = typeFrom(faces, { packs: [], bidi: null, usual: null });
  const lacking = lackingIn(faces);
  const opened = openPacks(shelf);
  const types = lately<string, Type>(keptTypes);
  const packsOf = lately<string, readonly Pack[]>(keptPacks);
  const typeOf = ({ packs: names }: Packed): Type => {
    if (names.length === 0) return type;
    const known = types.get(names.join());
    if (known) return known;
    const packs = names.map(packNamed);
    const all = [...faces, ...opened.facesOf(packs)];
    const made = typeFrom(all, { packs: names, bidi: opened.bidiOf(packs), usual: type });
    types.set(names.join(), made);
    return made;
  };
  return {
    type,
    typeFor: async (texts) => {
      const characters = lacking(texts);
      if (characters.length === 0) return type;
      const key = [...characters].sort().join('');
      const packs = packsOf.get(key) ?? (await packsFor(characters, shelf));
      packsOf.set(key, packs);
      await opened.read(packs);
      return typeOf({ packs: packs.map((pack) => pack.name) });
    },
    typeOf,
    read: (pages) => opened.read([...new Set(pages.flatMap((page) => page.packs))].map(packNamed)),
  };
}

/** What is known of a sign. */
const [unknown, has, lacks] = [0, 1, 2];

/** Finds the characters that the fonts of every sheet lack. Most texts have none, so each sign is looked up once. */
function lackingIn(faces: readonly Face[]): (texts: Iterable<string>) => readonly string[] {
  // Nothing beyond the basic plane is printed, so single units will do.
  const known = new Uint8Array(0x10000);
  const lookedUp = (unit: number): number => (faces.some((face) => face.has(unit)) ? has : lacks);
  return (texts) => {
    const characters = new Set<string>();
    for (const text of texts) {
      for (let at = 0; at < text.length; at++) {
        const unit = text.charCodeAt(at);
        if (known[unit] === unknown) known[unit] = lookedUp(unit);
        if (known[unit] === lacks) characters.add(text[at] ?? '');
      }
    }
    return [...characters];
  };
}

async function packsFor(characters: readonly string[], shelf: PackShelf): Promise<readonly Pack[]> {
  const packs = [...wholePacks(characters)];
  let open: readonly string[] = characters.filter(isEastAsian);
  for (const family of eastAsianFamilies(characters)) {
    if (open.length === 0) break;
    const { packs: own, rest } = slicePacks(family, await shelf.slices(family), open);
    packs.push(...own);
    open = rest;
  }
  return packs;
}
