/** The sentences of one language, as `content/wording/` holds them, and how values are put into them. */

/** Nested groups of sentences; a leaf may hold `{name}` where a value belongs. */
export type Catalogue = { readonly [key: string]: string | Catalogue };

/**
 * A sentence of the catalogue with its values filled in.
 * A missing sentence or value is our own mistake, so it throws with the key.
 */
export function say(
  catalogue: Catalogue,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  const sentence = find(catalogue, key);
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`the sentence ${key} wants {${name}}`);
    return value;
  });
}

/** Whether the catalogue holds a sentence of this key. */
export function hasSentence(catalogue: Catalogue, key: string): boolean {
  return typeof lookUp(catalogue, key) === 'string';
}

function find(catalogue: Catalogue, key: string): string {
  const found = lookUp(catalogue, key);
  if (typeof found !== 'string') throw new RangeError(`no sentence ${key} in the catalogue`);
  return found;
}

/** Keys with dots in them (`binds.fishByBed`) are groups inside groups. */
function lookUp(catalogue: Catalogue, key: string): string | Catalogue | undefined {
  let at: string | Catalogue | undefined = catalogue;
  for (const part of key.split('.')) {
    at = typeof at === 'object' ? at[part] : undefined;
  }
  return at;
}
