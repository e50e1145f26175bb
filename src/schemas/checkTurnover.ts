/** Checks on a season that need more than one field, or a file of crops or climates. */
import { dateOf } from '../core/calendar.ts';
import { mondayOf_d } from '../core/isoWeek.ts';
import type { Problem } from '../core/problem.ts';
import { checkPulses } from './checkPulses.ts';
import { dayAt_d, inOrder, notTooLong } from './dayOrder.ts';
import { type CropFacts, entry } from './facts.ts';
import { workdays } from './closedLists.ts';
import { type Path, valueAt } from './schemaAt.ts';
import { seasonWeeks } from './seasonWeeks.ts';
import { referenceProblem } from './toSystem.ts';

/** Two years, and what is left of the first and the last week. */
const longest_d = 742;

/** Works on whatever could be read, so that everything is told at once. */
export function checkTurnover(raw: unknown, facts: CropFacts): readonly Problem[] {
  return [
    ...climateProblems(raw, facts),
    ...inOrder(raw, ['season']),
    ...notTooLong(raw, ['season'], { code: 'seasonLong', most_d: longest_d }),
    ...withoutWork(raw),
    ...many(raw, 'holidays').flatMap((_, index) => inOrder(raw, ['holidays', index])),
    ...many(raw, 'wishes').flatMap((_, index) => wishProblems(raw, ['wishes', index], facts)),
    ...checkPulses(raw, ['pulses']),
    ...warmNights(raw),
    ...twice(raw),
  ];
}

/** A season of a few days with no day of work in it is none. */
function withoutWork(raw: unknown): readonly Problem[] {
  const [from, to] = ['from', 'to'].map((key) => valueAt(raw, ['season', key]));
  const [from_d, to_d] = ['from', 'to'].map((key) => dayAt_d(raw, ['season', key]));
  const told = valueAt(raw, ['workday']) ?? 'saturday';
  const workday = workdays.find((one) => one === told);
  if (typeof from !== 'string' || typeof to !== 'string' || workday === undefined) return [];
  if (typeof from_d !== 'number' || typeof to_d !== 'number' || to_d < from_d) return [];
  if (seasonWeeks({ season: { from, to }, workday }).weeks > 0) return [];
  return [{ code: 'seasonNoWorkday', place: ['season', 'to'], given: to, other: from }];
}

function many(raw: unknown, key: string): readonly unknown[] {
  const list = valueAt(raw, [key]);
  return Array.isArray(list) ? list : [];
}

/** One of the two says how warm it is. */
function climateProblems(raw: unknown, { climates }: CropFacts): readonly Problem[] {
  const climate = valueAt(raw, ['climate']);
  if (typeof climate === 'string') {
    return entry(climates, climate) ? [] : [referenceProblem(climate, ['climate'], Object.keys(climates))];
  }
  return valueAt(raw, ['own']) === undefined ? [{ code: 'missing', place: ['climate'] }] : [];
}

/** Nights above the mean of the day: the two were mixed up, or one digit is wrong. */
function warmNights(raw: unknown): readonly Problem[] {
  return Array.from({ length: 12 }, (_, month) => month).flatMap((month) => {
    const [mean, night] = ['mean_degC', 'night_degC'].map((key) => valueAt(raw, ['own', key, month]));
    if (typeof mean !== 'number' || typeof night !== 'number' || night <= mean) return [];
    const place = ['own', 'night_degC', month];
    return [{ code: 'nightAboveMean' as const, place, given: String(night), max: mean, unit: 'degC' }];
  });
}

function wishProblems(raw: unknown, place: Path, { crops }: CropFacts): readonly Problem[] {
  const name = valueAt(raw, [...place, 'crop']);
  const unit = valueAt(raw, [...place, 'unit']);
  const order = [...inOrder(raw, place), ...elsewhere(raw, place), ...checkPulses(raw, [...place, 'pulses'])];
  if (typeof name !== 'string') return order;
  const crop = entry(crops, name);
  if (crop === undefined) return [...order, referenceProblem(name, [...place, 'crop'], Object.keys(crops))];
  const allowed = ['kg', ...(crop.portion ? [crop.portion.unit] : [])];
  const isCounted =
    typeof unit !== 'string' || allowed.includes(unit) || !['head', 'bunch', 'kg'].includes(unit);
  return isCounted
    ? order
    : [...order, { code: 'notAllowed', place: [...place, 'unit'], given: unit, allowed }];
}

/** A wish that begins after the season, or ends before it, would be none: a wrong year, most likely. */
function elsewhere(raw: unknown, place: Path): readonly Problem[] {
  const [first_d, last_d] = ['from', 'to'].map((key) => dayAt_d(raw, ['season', key]));
  const [from_d, to_d] = ['from', 'to'].map((key) => dayAt_d(raw, [...place, key]));
  if (typeof first_d !== 'number' || typeof last_d !== 'number') return [];
  const outside = (key: 'from' | 'to', day_d: number): Problem => ({
    ...{ code: 'outsideSeason', place: [...place, key], given: dateOf(day_d) },
  });
  if (typeof from_d === 'number' && mondayOf_d(last_d) < mondayOf_d(from_d)) return [outside('from', from_d)];
  return typeof to_d === 'number' && mondayOf_d(to_d) < mondayOf_d(first_d) ? [outside('to', to_d)] : [];
}

/** Two wishes for one crop would be two amounts for one place; of two beds with one name nobody knows which is meant. */
function twice(raw: unknown): readonly Problem[] {
  return [...twiceIn(raw, ['wishes', 'crop'], 'sameCrop'), ...twiceIn(raw, ['beds', 'name'], 'sameBed')];
}

function twiceIn(
  raw: unknown,
  [list, key]: readonly [string, string],
  code: Problem['code'],
): readonly Problem[] {
  const names = many(raw, list).map((_, index) => trimmed(valueAt(raw, [list, index, key])));
  return names.flatMap((name, index) =>
    typeof name === 'string' && name !== '' && names.indexOf(name) < index
      ? [{ code, place: [list, index, key], given: name }]
      : [],
  );
}

function trimmed(value: unknown): unknown {
  return typeof value === 'string' ? value.trim() : value;
}
