/** Checks on a season that need more than one field, or a file of crops or climates. */
import type { Problem } from '../core/problem.ts';
import { checkPulses } from './checkPulses.ts';
import { inOrder, notTooLong } from './dayOrder.ts';
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
    ...notTooLong(raw, ['season'], { code: 'seasonLong', most_d: longest_d }),
    ...many(raw, 'holidays').flatMap((_, index) => inOrder(raw, ['holidays', index])),
    ...many(raw, 'wishes').flatMap((_, index) => wishProblems(raw, ['wishes', index], facts)),
    ...checkPulses(raw, ['pulses']),
    ...warmNights(raw),
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
  const order = [...inOrder(raw, place), ...checkPulses(raw, [...place, 'pulses'])];
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
