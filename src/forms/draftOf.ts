/** A system as it was written, back into what somebody could have typed; and a draft in other units. */
import type { SystemFile } from '../schemas/systemFile.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import { type Draft, type Fields, isTyped, type Tree, unitsOf, withTree } from './draft.ts';
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

/** The same in the other units: every number is shown anew, its exact value is kept. */
export function inUnits<D extends Fields>(draft: D, units: UnitSystem): D {
  const from = unitsOf(draft);
  if (from === units) return draft;
  const fields = shownAnew(draft.fields, '', from, units);
  return withTree({ ...draft, fields }, ['sheet', 'units'], { text: units });
}

function isThere(part: unknown): 'there' | 'leftOut' {
  return part === undefined ? 'leftOut' : 'there';
}

/** Plain data as somebody could have typed it. */
export function treeOf(value: unknown, key: string, units: UnitSystem): Tree {
  if (typeof value === 'number') return typedOf(value, key, units);
  if (Array.isArray(value)) return value.map((entry) => treeOf(entry, key, units));
  if (typeof value !== 'object' || value === null) return { text: String(value ?? '') };
  return mapped(value, (entry: unknown, name) => treeOf(entry, name, units));
}

function shownAnew(tree: Tree, key: string, from: UnitSystem, to: UnitSystem): Tree {
  if (isTyped(tree)) {
    const si = siOf(tree, key, from);
    return key.includes('_') && typeof si === 'number' ? typedOf(si, key, to) : tree;
  }
  if (Array.isArray(tree)) return tree.map((entry: Tree) => shownAnew(entry, key, from, to));
  return mapped(tree, (entry: Tree, name) => shownAnew(entry, name, from, to));
}

function mapped<T>(group: object, each: (entry: T, key: string) => Tree): Tree {
  return Object.fromEntries(Object.entries(group).map(([key, entry]) => [key, each(entry as T, key)]));
}
