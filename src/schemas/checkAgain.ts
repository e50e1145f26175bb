/** Checks on what came differently that need more than one field, but no plan. */
import { dateOf } from '../core/calendar.ts';
import { mondayOf_d } from '../core/isoWeek.ts';
import type { Problem } from '../core/problem.ts';
import { checkTurnover } from './checkTurnover.ts';
import { dayAt_d } from './dayOrder.ts';
import type { CropFacts } from './facts.ts';
import { rowsIn } from './rowsIn.ts';
import { type Path, valueAt } from './schemaAt.ts';

/** More places than any bed has. */
const mostPlaces = 200_000;

/** All that a season's file says of planning again: each by itself, and their days one after the other. */
export function checkAgains(season: unknown, facts: CropFacts): readonly Problem[] {
  const all = listAt(season, ['again']);
  return all.flatMap((told, at) => [
    ...backwards(all, at),
    ...checkAgain(told, season, facts).map((one) => ({ ...one, place: ['again', at, ...one.place] })),
  ]);
}

/**
 * Works on whatever could be read, so that everything is told at once.
 * @param told what came differently
 * @param season the season's file
 */
export function checkAgain(told: unknown, season: unknown, facts: CropFacts): readonly Problem[] {
  return [
    ...outside(told, season),
    ...tooLate(told),
    ...tooEarly(told),
    ...wishProblems(told, season, facts),
    ...sowingProblems(told),
    ...listAt(told, ['partly']).flatMap((one, at) => partProblems(one, ['partly', at])),
  ];
}

function listAt(of: unknown, place: Path): readonly unknown[] {
  const list = valueAt(of, place);
  return Array.isArray(list) ? list : [];
}

function backwards(all: readonly unknown[], at: number): readonly Problem[] {
  const [before, from] = [all[at - 1], all[at]].map((one) => valueAt(one, ['from']));
  if (typeof before !== 'string' || typeof from !== 'string' || before <= from) return [];
  return [{ code: 'againOrder', place: ['again', at, 'from'], given: from, other: before }];
}

/** Every day that is told lies in the season. */
function outside(told: unknown, season: unknown): readonly Problem[] {
  const [first_d, last_d] = ['from', 'to'].map((key) => dayAt_d(season, ['season', key]));
  if (typeof first_d !== 'number' || typeof last_d !== 'number') return [];
  const rows = listAt(told, ['missed']).map((_, at): Path => ['missed', at, 'on']);
  return [['from'], ...rows, ['wishesFrom']].flatMap((place) => {
    const day_d = dayAt_d(told, place);
    const isInside = day_d === null || (mondayOf_d(first_d) <= day_d && mondayOf_d(day_d) <= last_d);
    return isInside ? [] : [{ code: 'outsideSeason' as const, place, given: dateOf(day_d) }];
  });
}

/** A week that is still to come cannot have been missed. */
function tooLate(told: unknown): readonly Problem[] {
  const from_d = dayAt_d(told, ['from']);
  return listAt(told, ['missed']).flatMap((_, at) => {
    const place = ['missed', at, 'on'];
    const day_d = dayAt_d(told, place);
    if (from_d === null || day_d === null || mondayOf_d(day_d) <= mondayOf_d(from_d)) return [];
    return [{ code: 'missedLater' as const, place, given: dateOf(day_d), other: dateOf(from_d) }];
  });
}

/** What was wanted before stays as it was. */
function tooEarly(told: unknown): readonly Problem[] {
  const [from_d, wishes_d] = ['from', 'wishesFrom'].map((key) => dayAt_d(told, [key]));
  if (typeof from_d !== 'number' || typeof wishes_d !== 'number' || from_d <= wishes_d) return [];
  return [{ code: 'wishesEarly', place: ['wishesFrom'], given: dateOf(wishes_d), other: dateOf(from_d) }];
}

/** As those of the season, and only those: what else is wrong with it is told once. */
function wishProblems(told: unknown, season: unknown, facts: CropFacts): readonly Problem[] {
  const wishes = valueAt(told, ['wishes']);
  const isDated = valueAt(told, ['wishesFrom']) !== undefined;
  if (wishes === undefined) return isDated ? [{ code: 'missing', place: ['wishes'] }] : [];
  if (typeof season !== 'object') return [];
  return checkTurnover({ ...season, wishes }, facts).filter(({ place }) => place[0] === 'wishes');
}

/** Each sowing once, and by a name that a sowing can have. */
function sowingProblems(told: unknown): readonly Problem[] {
  const places: readonly Path[] = [
    ...listAt(told, ['failed']).map((_, at) => ['failed', at]),
    ...listAt(told, ['partly']).map((_, at) => ['partly', at, 'sowing']),
  ];
  const names = places.map((place) => valueAt(told, place));
  return names.flatMap((given, at): readonly Problem[] => {
    const place = places[at];
    if (typeof given !== 'string' || given.trim() === '' || place === undefined) return [];
    if (!/^[A-Za-z][A-Za-z0-9]*-\d{4}W\d{2}-\d+$/.test(given)) return [{ code: 'sowingName', place, given }];
    return names.indexOf(given) < at ? [{ code: 'sowingTwice', place, given }] : [];
  });
}

/** Plants or places, one of the two. */
function partProblems(part: unknown, place: Path): readonly Problem[] {
  const [plants, empty] = ['plants', 'empty'].map((key) => valueAt(part, [key]));
  if ((plants === undefined) === (empty === undefined))
    return [{ code: 'partlyOne', place: [...place, 'plants'], given: String(plants ?? '') }];
  if (typeof empty !== 'string' || rowsIn(empty, mostPlaces) !== null) return [];
  return [{ code: 'placesForm', place: [...place, 'empty'], given: empty }];
}
