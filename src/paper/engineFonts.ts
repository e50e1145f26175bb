/**
 * The fonts that the layout engine needs for some texts. It reads every font that it is given from end to end; which
 * font it takes for a character is the first that has it, so those that are the first for none can stay away.
 */
import type { Face } from './face.ts';
import type { Weight } from './page.ts';
import type { Type } from './type.ts';

export type EngineFont = { name: string; weight: 400 | 800; data: ArrayBuffer };

type Known = {
  /** Names of the fonts, one for each weight, that are the first to have a character. */
  readonly firsts: Map<number, readonly string[]>;
  /** The engine keeps what it measured for as long as it is given the same list. */
  readonly lists: Map<string, EngineFont[]>;
};

const knownOf = new WeakMap<Type, Known>();

export function engineFonts(type: Type, texts: Iterable<string>): EngineFont[] {
  const known: Known = knownOf.get(type) ?? { firsts: new Map(), lists: new Map() };
  knownOf.set(type, known);
  const names = new Set(type.faces.slice(0, 1).map(({ name }) => name));
  for (const text of texts)
    for (let at = 0; at < text.length; at += 1)
      for (const name of firstsFor(text.charCodeAt(at), type.faces, known)) names.add(name);
  const faces = type.faces.filter(({ name }) => names.has(name));
  const key = faces.map(({ index }) => index).join();
  const list = known.lists.get(key) ?? faces.map(engineFont);
  known.lists.set(key, list);
  return list;
}

function engineFont({ name, weight, sfnt }: Face): EngineFont {
  return { name, weight: weight === 'heavy' ? 800 : 400, data: sfnt.buffer as ArrayBuffer };
}

/** What no font has, such as an unusual blank, the engine takes from the last one. */
function firstsFor(character: number, faces: readonly Face[], { firsts }: Known): readonly string[] {
  const known = firsts.get(character);
  if (known) return known;
  const first = (weight: Weight): string => {
    const own = faces.filter((face) => face.weight === weight);
    return (own.find((face) => face.has(character)) ?? own.at(-1))?.name ?? '';
  };
  const found = [first('text'), first('heavy')];
  firsts.set(character, found);
  return found;
}
