/** What a person has typed about a season so far: every field as text, so that nothing typed is ever lost. */
import type { UnitSystem } from '../../wording/quantity.ts';
import type { TurnoverFile } from '../../schemas/turnoverFile.ts';
import { siOf, typedOf } from '../typedNumber.ts';

export type Row = Readonly<Record<string, string>>;
export type ListName = 'beds' | 'wishes' | 'holidays';

export type SeasonDraft = {
  readonly version: 1;
  readonly fields: Row;
  readonly lists: Readonly<Record<ListName, readonly Row[]>>;
};

/** Fields of the form with the place that each has in the file. Numbers are told by their unit or stand in `counts`. */
const places: Readonly<Record<string, readonly string[]>> = {
  name: ['name'],
  climate: ['climate'],
  even_degC: ['nursery', 'even_degC'],
  cells: ['nursery', 'cells'],
  shortDays: ['shortDays'],
  from: ['season', 'from'],
  to: ['season', 'to'],
  workday: ['workday'],
  place_mm: ['place_mm'],
  rest_d: ['rest_d'],
  rotation: ['rotation'],
  feed_g_d: ['feed_g_d'],
  paper: ['sheet', 'paper'],
  units: ['sheet', 'units'],
};

const counts: ReadonlySet<string> = new Set(['perWeek', 'cells', 'rest_d', 'feed_g_d']);

export const rowKeys: Readonly<Record<ListName, readonly string[]>> = {
  beds: ['name', 'mode', 'length_mm', 'width_mm'],
  wishes: ['crop', 'perWeek', 'unit'],
  holidays: ['name', 'from', 'to'],
};

export function unitsOf({ fields }: SeasonDraft): UnitSystem {
  return fields['units'] === 'us' ? 'us' : 'metric';
}

/** The field of the form at which a problem is shown; the whole form where it has none of its own. */
export function fieldAt(place: readonly (string | number)[]): string {
  const [list, index, key] = place;
  if (typeof index === 'number') return `${list}-${index}-${key ?? ''}`;
  const found = Object.entries(places).find(([, path]) => path.join('.') === place.join('.'));
  return found?.[0] ?? String(place.at(-1) ?? '');
}

/** As a file would say it; what cannot be read as a number stays as it was typed. */
export function rawOf(draft: SeasonDraft): unknown {
  const units = unitsOf(draft);
  const raw: Record<string, unknown> = { id: 'my-season' };
  for (const [key, place] of Object.entries(places))
    put(raw, place, typedValue(key, draft.fields[key], units));
  for (const [name, keys] of Object.entries(rowKeys) as [ListName, readonly string[]][])
    raw[name] = draft.lists[name].map((row) =>
      Object.fromEntries(keys.map((key) => [key, typedValue(key, row[key], units)] as const).filter(isThere)),
    );
  return raw;
}

function isThere([, value]: readonly [string, unknown]): boolean {
  return value !== undefined;
}

function typedValue(key: string, text: string | undefined, units: UnitSystem): unknown {
  const typed = (text ?? '').trim();
  if (typed === '') return undefined;
  return isNumber(key) ? siOf({ text: typed }, key, units) : typed;
}

function isNumber(key: string): boolean {
  return counts.has(key) || /_(mm|degC|d)$/.test(key);
}

function put(into: Record<string, unknown>, [first = '', ...rest]: readonly string[], value: unknown): void {
  if (value === undefined) return;
  if (rest.length === 0) into[first] = value;
  else {
    const inner = (into[first] ?? {}) as Record<string, unknown>;
    put(inner, rest, value);
    into[first] = inner;
  }
}

/** A season that was written before, as the form shows it. Pulses stay in the file: the form has no field for them. */
export function draftOf(file: TurnoverFile): SeasonDraft {
  const { units } = file.sheet;
  const shown = (key: string, value: unknown): string => {
    if (value === undefined || value === null) return '';
    return typeof value === 'number' && isNumber(key) ? typedOf(value, key, units).text : String(value);
  };
  const row = (name: ListName, of: object): Row =>
    Object.fromEntries(rowKeys[name].map((key) => [key, shown(key, (of as Record<string, unknown>)[key])]));
  return {
    version: 1,
    fields: Object.fromEntries(
      Object.entries(places).map(([key, place]) => [key, shown(key, valueAt(file, place))]),
    ),
    lists: {
      beds: file.beds.map((bed) => row('beds', bed)),
      wishes: file.wishes.map((wish) => row('wishes', wish)),
      holidays: file.holidays.map((holiday) => row('holidays', holiday)),
    },
  };
}

function valueAt(of: unknown, place: readonly string[]): unknown {
  return place.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined),
    of,
  );
}
