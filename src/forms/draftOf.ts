/** A system as it was written, back into what somebody could have typed; and a draft in other units. */
import type { SystemFile } from '../schemas/systemFile.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import { type Draft, isTyped, type Tree, unitsOf, withText } from './draft.ts';
import { siOf, typedOf } from './typedNumber.ts';

export function draftOf(raw: SystemFile): Draft {
  const { id, shared, sump, pump, fish, ...rest } = raw;
  const given = { ...rest, ...(sump ? { sump } : {}), ...(pump ? { pump } : {}), ...(fish ? { fish } : {}) };
  return {
    version: 1,
    id,
    shared,
    parts: { sump: isThere(sump), pump: isThere(pump), fish: isThere(fish) },
    fields: treeOf(given, '', raw.sheet.units),
  };
}

/** The same system in the other units: every number is shown anew, its exact value is kept. */
export function inUnits(draft: Draft, units: UnitSystem): Draft {
  const from = unitsOf(draft);
  if (from === units) return draft;
  const fields = shownAnew(draft.fields, '', from, units);
  return withText({ ...draft, fields }, ['sheet', 'units'], units);
}

function isThere(part: unknown): 'there' | 'leftOut' {
  return part === undefined ? 'leftOut' : 'there';
}

/** Plain data as somebody could have typed it. */
export function treeOf(value: unknown, key: string, units: UnitSystem): Tree {
  if (typeof value === 'number') return typedOf(value, key, units);
  if (Array.isArray(value)) return value.map((entry) => treeOf(entry, '', units));
  if (typeof value !== 'object' || value === null) return { text: String(value ?? '') };
  return mapped(value, (entry: unknown, name) => treeOf(entry, name, units));
}

function shownAnew(tree: Tree, key: string, from: UnitSystem, to: UnitSystem): Tree {
  if (isTyped(tree)) {
    const si = siOf(tree, key, from);
    return key.includes('_') && typeof si === 'number' ? typedOf(si, key, to) : tree;
  }
  if (Array.isArray(tree)) return tree.map((entry: Tree) => shownAnew(entry, '', from, to));
  return mapped(tree, (entry: Tree, name) => shownAnew(entry, name, from, to));
}

function mapped<T>(group: object, each: (entry: T, key: string) => Tree): Tree {
  return Object.fromEntries(Object.entries(group).map(([key, entry]) => [key, each(entry as T, key)]));
}
