/** What was typed, as the plain data of a system file: numbers in the units of their keys, parts left out left out. */
import type { UnitSystem } from '../wording/quantity.ts';
import { type Draft, isTyped, type PartName, type Tree, textAt, unitsOf } from './draft.ts';
import { measures, shapeNamed } from './measures.ts';
import { siOf } from './typedNumber.ts';

type Plain = { readonly [key: string]: unknown };

/** Fields of words, which may be wrong but not missing; all others hold numbers, or may stay empty. */
const words = new Set(['name', 'place', 'shape', 'mode', 'media', 'kind', 'paper', 'units']);

/** Words that may stay empty. */
const optionalWords = new Set(['weighed', 'climate', 'from', 'to']);

/** Groups that are not there as long as nothing is typed in them. */
const optional = new Set(['bucketTest', 'water', 'pipe', 'timer', 'air', 'tap', 'absence', 'labels']);

/** Of a basket in the tank the tank sets these, or there is no such thing. */
const notOfBaskets = new Set(['waterLine_mm', 'drained_mm', 'standpipeBore_mm', 'drainHole_mm']);

const parts: readonly PartName[] = ['sump', 'pump', 'fish'];

export function rawOf(draft: Draft): Plain {
  const { fields, id, shared } = draft;
  const whole = isTyped(fields) ? {} : groupOf(fields as { readonly [key: string]: Tree }, unitsOf(draft));
  const left = parts.filter((name) => draft.parts[name] === 'leftOut');
  return {
    ...without(whole, (key) => left.some((name) => name === key)),
    id: id === '' ? idFrom(textAt(draft, ['name'])) : id,
    shared,
  };
}

/** A file name from what the system is called; letters beyond a to z cannot stand in one. */
function idFrom(name: string): string {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const slug = plain
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  return slug === '' ? 'my-system' : slug;
}

function plain(tree: Tree, key: string, units: UnitSystem): unknown {
  if (isTyped(tree) && optionalWords.has(key)) return tree.text === '' ? undefined : tree.text;
  if (isTyped(tree)) return words.has(key) ? tree.text : siOf(tree, key, units);
  if (Array.isArray(tree)) return listOf(tree, key, units);
  const group = groupOf(tree as { readonly [key: string]: Tree }, units);
  return optional.has(key) && Object.keys(group).length === 0 ? undefined : group;
}

/** Rows at the end in which nothing stands yet do not count; a curve without any is none. */
function listOf(list: readonly Tree[], key: string, units: UnitSystem): readonly unknown[] | undefined {
  const entries = list.map((tree) => plain(tree, '', units));
  if (key === 'beds') return entries;
  const last = entries.findLastIndex((entry) => Object.keys(entry ?? {}).length > 0);
  return key === 'curve' && last < 0 ? undefined : entries.slice(0, last + 1);
}

function groupOf(group: { readonly [key: string]: Tree }, units: UnitSystem): Plain {
  const entries = Object.entries(group).map(([key, tree]) => [key, plain(tree, key, units)] as const);
  const all = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
  if (all['mode'] === 'inTank') return without(all, (key) => notOfBaskets.has(key));
  return typeof all['shape'] === 'string' ? ofShape(all, all['shape']) : all;
}

/** What was typed for another shape stays in the draft, but does not belong to this one. */
function ofShape(group: Plain, name: string): Plain {
  const shape = shapeNamed(name);
  const keys = new Set<string>(['shape', ...measures[shape], ...(shape === 'dipTable' ? ['dips'] : [])]);
  return without(group, (key) => !keys.has(key));
}

function without(group: Plain, unwanted: (key: string) => boolean): Plain {
  return Object.fromEntries(Object.entries(group).filter(([key]) => !unwanted(key)));
}
