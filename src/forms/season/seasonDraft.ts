/** A season as somebody types it, and as a file would say it. Every field is text, so that nothing typed is ever lost. */
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import type { UnitSystem } from '../../wording/quantity.ts';
import { type Fields, isTyped, listAt, type Place, type Tree, textAt, unitsOf, withTree } from '../draft.ts';
import { treeOf } from '../draftOf.ts';
import { siOf } from '../typedNumber.ts';

export type SeasonDraft = Fields & {
  /** Raised when an older page could no longer read what a newer one keeps. */
  readonly version: 2;
  /** Whether the months are the person's own. What was typed in them stays while they are left out. */
  readonly own: 'there' | 'leftOut';
};

type Plain = { readonly [key: string]: unknown };
type Group = { readonly [key: string]: Tree };

/** Numbers whose keys bear no unit. */
const counts = new Set([
  'perWeek',
  'amount',
  'times',
  'cells',
  'latitude',
  'columns',
  'rows',
  'used',
  'plants',
]);

/** Groups and lists that are not there as long as nothing is typed in them. */
const optional = new Set(['water_degC', 'labels', 'nursery', 'pulses', 'holidays', 'missed', 'partly']);

/** What is typed about planning again belongs to no season. */
const notOfSeasons = new Set(['again']);

/** A season that was written before, as the form shows it. */
export function draftOf(file: TurnoverFile): SeasonDraft {
  const { id: _, shared: __, again: ___, ...rest } = file;
  const given = Object.entries(rest).filter(([, value]) => value !== undefined);
  return {
    version: 2,
    own: file.own === undefined ? 'leftOut' : 'there',
    fields: treeOf(Object.fromEntries(given), '', file.sheet.units),
  };
}

/** As a file would say it; what cannot be read as a number stays as it was typed. */
export function rawOf(draft: SeasonDraft): Plain {
  const all = plain(draft.fields, '', unitsOf(draft)) as Plain;
  const unwanted = new Set([...notOfSeasons, draft.own === 'there' ? 'climate' : 'own']);
  return { id: 'my-season', ...without(all, unwanted) };
}

/** What a plan hangs on: all but the paper that it is printed on. */
export function wishedBy(draft: SeasonDraft): string {
  return JSON.stringify(without(rawOf(draft), new Set(['sheet', 'labels'])));
}

/**
 * What came differently, as it was typed; from the day of today where no other is.
 * @param sowings ids of those in the plan: one that was ticked in another plan may not be there
 */
export function changeOf(draft: SeasonDraft, today: string, sowings: readonly string[]): Plain {
  const of = (key: string) => listAt(draft, ['again', key]);
  const lists = plain({ missed: of('missed'), partly: of('partly') }, '', unitsOf(draft)) as Plain;
  const from = againFrom(draft, today);
  const all = { from, failed: failedIn(draft).filter((id) => sowings.includes(id)), ...lists };
  if (!hasOthers(draft)) return all;
  const wishesFrom = textAt(draft, ['again', 'wishesFrom']).trim();
  const others = plain({ wishes: of('wishes') }, '', unitsOf(draft)) as Plain;
  return { ...all, ...others, ...(wishesFrom === '' ? {} : { wishesFrom }) };
}

/** Whether something else is wanted from then on. */
export function hasOthers(draft: SeasonDraft): boolean {
  return listAt(draft, otherWishes).length > 0;
}

const otherWishes: Place = ['again', 'wishes'];

/** With the wishes from then on, which begin as those of now; or without them. */
export function withOthers(draft: SeasonDraft, is: 'yes' | 'no'): SeasonDraft {
  return withTree(draft, otherWishes, is === 'yes' ? listAt(draft, ['wishes']) : []);
}

export function againFrom(draft: SeasonDraft, today: string): string {
  return textAt(draft, ['again', 'from']).trim() || today;
}

const failed: Place = ['again', 'failed'];

/** Ids of the sowings that are ticked. */
export function failedIn(draft: Fields): readonly string[] {
  return listAt(draft, failed).flatMap((tree) => (isTyped(tree) ? [tree.text] : []));
}

export function withFailed(draft: SeasonDraft, id: string, is: 'yes' | 'no'): SeasonDraft {
  const others = failedIn(draft).filter((one) => one !== id);
  const ids = is === 'yes' ? [...others, id] : others;
  return withTree(
    draft,
    failed,
    ids.map((text) => ({ text })),
  );
}

/** The same, with nothing typed about planning again. */
export function withoutChange(draft: SeasonDraft): SeasonDraft {
  return withTree(draft, ['again'], {});
}

export function withWishes(draft: SeasonDraft, wishes: TurnoverFile['wishes']): SeasonDraft {
  return withTree(draft, ['wishes'], treeOf(wishes, '', unitsOf(draft)));
}

/** The same, with what is typed about planning again in another one, and the wishes that went with it. */
export function withChangeOf(draft: SeasonDraft, other: SeasonDraft): SeasonDraft {
  const again = (other.fields as Group)['again'];
  const next = withTree(draft, ['again'], again ?? {});
  return hasOthers(other) ? withTree(next, ['wishes'], listAt(other, ['wishes'])) : next;
}

function plain(tree: Tree, key: string, units: UnitSystem): unknown {
  if (isTyped(tree)) return isNumber(key) ? siOf(tree, key, units) : tree.text.trim() || undefined;
  if (Array.isArray(tree)) return listOf(tree, key, units);
  const entries = Object.entries(tree as Group).map(([name, of]) => [name, plain(of, name, units)] as const);
  const group = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
  return optional.has(key) && Object.keys(group).length === 0 ? undefined : group;
}

/** Months are twelve or none. Of other lists that may be empty, rows at the end in which nothing stands do not count. */
function listOf(list: readonly Tree[], key: string, units: UnitSystem): readonly unknown[] | undefined {
  const isMonths = key.endsWith('_degC');
  const entries = list.map((tree) => plain(tree, isMonths ? key : '', units));
  if (!optional.has(key)) return entries;
  const last = entries.findLastIndex((entry) => !isEmpty(entry));
  if (last < 0) return undefined;
  return isMonths ? Array.from({ length: 12 }, (_, month) => entries[month]) : entries.slice(0, last + 1);
}

function isEmpty(entry: unknown): boolean {
  return entry === undefined || (typeof entry === 'object' && Object.keys(entry ?? {}).length === 0);
}

function isNumber(key: string): boolean {
  return counts.has(key) || key.includes('_');
}

function without(group: Plain, unwanted: ReadonlySet<string>): Plain {
  return Object.fromEntries(Object.entries(group).filter(([key]) => !unwanted.has(key)));
}
