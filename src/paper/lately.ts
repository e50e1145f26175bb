/** Remembers things by their names, and forgets those that were not asked for lately. */
export type Lately<Name, Thing> = {
  readonly get: (name: Name) => Thing | undefined;
  readonly set: (name: Name, thing: Thing) => void;
};

/**
 * Whenever there are as many as this again, all that was not asked for since the last time is forgotten: what every page
 * needs stays, however many names come by that are needed once.
 */
export function lately<Name, Thing>(most: number): Lately<Name, Thing> {
  let young = new Map<Name, Thing>();
  let old = new Map<Name, Thing>();
  const set = (name: Name, thing: Thing): void => {
    if (young.size >= most) {
      old = young;
      young = new Map();
    }
    young.set(name, thing);
  };
  return {
    get: (name) => {
      const known = young.get(name);
      if (known !== undefined) return known;
      const before = old.get(name);
      if (before !== undefined) set(name, before);
      return before;
    },
    set,
  };
}
