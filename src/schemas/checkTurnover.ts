/** Checks on a season that need more than one field, or a file of crops or climates. */
import { dayNumber_d, dayOf } from '../core/calendar.ts';
import type { Problem } from '../core/problem.ts';
import { type CropFacts, entry } from './facts.ts';
import { type Path, valueAt } from './schemaAt.ts';
import { referenceProblem } from './toSystem.ts';

/** Two years, and what is left of the first and the last week. */
const longest_d = 742;

/** Works on whatever could be read, so that everything is told at once. */
export function checkTurnover(raw: unknown, facts: CropFacts): readonly Problem[] {
  return [
    ...climateProblems(raw, facts),
    ...inOrder(raw, ['season']),
    ...tooLong(raw),
    ...many(raw, 'holidays').flatMap((_, index) => inOrder(raw, ['holidays', index])),
    ...many(raw, 'wishes').flatMap((_, index) => wishProblems(raw, ['wishes', index], facts)),
    ...twice(raw),
  ];
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

function inOrder(raw: unknown, place: Path): readonly Problem[] {
  const from = valueAt(raw, [...place, 'from']);
  const to = valueAt(raw, [...place, 'to']);
  if (typeof from !== 'string' || typeof to !== 'string' || dayOf(from) === null || dayOf(to) === null)
    return [];
  return dayNumber_d(to) < dayNumber_d(from)
    ? [{ code: 'dayOrder', place: [...place, 'to'], given: to, other: from }]
    : [];
}

function tooLong(raw: unknown): readonly Problem[] {
  const [from, to] = ['from', 'to'].map((key) => valueAt(raw, ['season', key]));
  if (typeof from !== 'string' || typeof to !== 'string' || dayOf(from) === null || dayOf(to) === null)
    return [];
  const days = dayNumber_d(to) - dayNumber_d(from) + 1;
  return days > longest_d
    ? [{ code: 'seasonLong', place: ['season', 'to'], given: String(days), max: longest_d }]
    : [];
}

function wishProblems(raw: unknown, place: Path, { crops }: CropFacts): readonly Problem[] {
  const name = valueAt(raw, [...place, 'crop']);
  const unit = valueAt(raw, [...place, 'unit']);
  const order = inOrder(raw, place);
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

/** Two wishes for one crop would be two amounts for one place. */
function twice(raw: unknown): readonly Problem[] {
  const names = many(raw, 'wishes').map((_, index) => valueAt(raw, ['wishes', index, 'crop']));
  return names.flatMap((name, index) =>
    typeof name === 'string' && names.indexOf(name) < index
      ? [{ code: 'sameCrop' as const, place: ['wishes', index, 'crop'], given: name }]
      : [],
  );
}
