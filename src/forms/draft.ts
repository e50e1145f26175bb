/**
 * What a person has typed so far: the same tree as a system file, but every leaf is text as it was typed. It also
 * holds what makes no sense yet, so that nothing typed is ever lost.
 */
import type { UnitSystem } from '../wording/quantity.ts';

/** One field. `si` is there where a change of units made the text: the exact value in the unit of the key. */
export type Typed = { readonly text: string; readonly si?: number };
export type Tree = Typed | readonly Tree[] | { readonly [key: string]: Tree };

/** Where a field stands, as a Problem names it: `['beds', 0, 'mediaDepth_mm']`. */
export type Place = readonly (string | number)[];

/** Parts that a system may have or not. What was typed in them stays while they are left out. */
export type PartName = 'sump' | 'pump' | 'fish';

/** Whatever a form holds besides, its fields are such a tree. */
export type Fields = { readonly fields: Tree };

export type Draft = {
  /** Raised when an older page could no longer read what a newer one keeps. */
  readonly version: 1;
  readonly id: string;
  readonly shared: boolean;
  readonly parts: { readonly [name in PartName]: 'there' | 'leftOut' };
  readonly fields: Tree;
};

export function isTyped(tree: Tree | undefined): tree is Typed {
  return typeof tree === 'object' && 'text' in tree && typeof tree.text === 'string';
}

function treeAt(tree: Tree, place: Place): Tree | undefined {
  let at: Tree | undefined = tree;
  for (const step of place) {
    if (at === undefined || isTyped(at)) return undefined;
    at = (at as { readonly [key: string | number]: Tree })[step];
  }
  return at;
}

/** The text of a field; empty where nothing was ever typed. */
export function textAt(draft: Fields, place: Place): string {
  const found = treeAt(draft.fields, place);
  return isTyped(found) ? found.text : '';
}

export function listAt(draft: Fields, place: Place): readonly Tree[] {
  const found = treeAt(draft.fields, place);
  return Array.isArray(found) ? found : [];
}

/** Whether anything is typed at a place or below it. */
export function anyTyped(draft: Fields, place: Place): boolean {
  const found = treeAt(draft.fields, place);
  return found !== undefined && holdsText(found);
}

function holdsText(tree: Tree): boolean {
  return isTyped(tree) ? tree.text.trim() !== '' : Object.values(tree).some(holdsText);
}

/** The draft with another tree at a place. */
export function withTree<D extends Fields>(draft: D, place: Place, tree: Tree): D {
  return { ...draft, fields: put(draft.fields, place, tree) };
}

/** The draft with another text in a field. Another name makes it another system, that nobody has shared yet. */
export function withText(draft: Draft, place: Place, text: string): Draft {
  const next = withTree(draft, place, { text });
  return place.length === 1 && place[0] === 'name' ? { ...next, id: '', shared: false } : next;
}

export function withPart(draft: Draft, name: PartName, is: 'there' | 'leftOut'): Draft {
  return { ...draft, parts: { ...draft.parts, [name]: is } };
}

export function unitsOf(draft: Fields): UnitSystem {
  return textAt(draft, ['sheet', 'units']) === 'us' ? 'us' : 'metric';
}

function put(tree: Tree | undefined, place: Place, leaf: Tree): Tree {
  const [step, ...rest] = place;
  if (step === undefined) return leaf;
  if (typeof step === 'number') {
    const list = Array.isArray(tree) ? [...tree] : [];
    while (list.length < step) list.push({ text: '' });
    list[step] = put(list[step], rest, leaf);
    return list;
  }
  const group = tree === undefined || isTyped(tree) || Array.isArray(tree) ? {} : tree;
  return { ...group, [step]: put((group as { readonly [key: string]: Tree })[step], rest, leaf) };
}
