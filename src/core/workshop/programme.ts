/** How a workshop's time is spent. */
import type { Level } from './exercise.ts';

/** One part of a workshop, in minutes from its beginning. */
export type Part = {
  readonly key: PartKey;
  readonly from_min: number;
  readonly takes_min: number;
  /** Whether the class can do in that time what it is there for. */
  readonly time: 'enough' | 'short';
};

export type PartKey =
  | 'arrive'
  | 'safety'
  | 'example'
  | 'measure'
  | 'calculate'
  | 'compare'
  | 'next'
  | 'clear';

/** Shares of the time, in the order of the parts. Children measure longer, adults calculate longer. */
const shares: Readonly<Record<Level, Readonly<Record<PartKey, number>>>> = {
  primary: { arrive: 6, safety: 12, example: 16, measure: 26, calculate: 18, compare: 8, next: 4, clear: 10 },
  secondary: {
    arrive: 6,
    safety: 10,
    example: 14,
    measure: 22,
    calculate: 22,
    compare: 12,
    next: 6,
    clear: 8,
  },
  adults: { arrive: 6, safety: 8, example: 16, measure: 18, calculate: 22, compare: 12, next: 10, clear: 8 },
};

/** Two containers are measured twice; each task wants two minutes of a pencil at least. Other parts are told in any time. */
const least_min: Readonly<Record<Level, Partial<Record<PartKey, number>>>> = {
  primary: { measure: 15, calculate: 10 },
  secondary: { measure: 15, calculate: 15 },
  adults: { measure: 15, calculate: 20 },
};

/** Nobody plans a part to the minute. */
const step_min = 5;

/**
 * The parts of a workshop, with their times.
 * Each gets its share of the time in whole steps of five minutes, one at least; what is left over goes, step by step,
 * to the parts that rounding took most from. The last part takes what is no whole step. Measuring below 15 minutes, and
 * calculating below 10 to 20 by the number of tasks, is short.
 * @param level for whom
 * @param length_min the whole workshop, 40 or more
 * @returns eight parts, one after the other, that fill the time
 * @valid up to a day
 * @throws RangeError below 40 minutes
 * @source commonPractice
 */
export function programme(level: Level, length_min: number): readonly Part[] {
  const parts = Object.entries(shares[level]) as [PartKey, number][];
  const most = Math.floor(length_min / step_min);
  if (!(parts.length <= most)) throw new RangeError(`programme(${level}, ${length_min})`);
  const wanted = parts.map(([, share]) => (share / 100) * most);
  const steps = wanted.map((exact) => Math.max(1, Math.floor(exact)));
  let left = most - steps.reduce((sum, one) => sum + one, 0);
  while (left !== 0) {
    const owed = steps.map((got, at) => (wanted[at] ?? 0) - got);
    const at =
      left > 0
        ? owed.indexOf(Math.max(...owed))
        : owed.indexOf(Math.min(...owed.filter((_, i) => (steps[i] ?? 0) > 1)));
    steps[at] = (steps[at] ?? 0) + Math.sign(left);
    left -= Math.sign(left);
  }
  let from_min = 0;
  return parts.map(([key], at): Part => {
    const isLast = at + 1 === parts.length;
    const takes_min = isLast ? length_min - from_min : (steps[at] ?? 0) * step_min;
    const time = takes_min < (least_min[level][key] ?? 0) ? 'short' : 'enough';
    const part: Part = { key, from_min, takes_min, time };
    from_min += takes_min;
    return part;
  });
}

/**
 * The time of day so many minutes after another.
 * Hours and minutes, around midnight if it comes to that.
 * @param starts such as 09:30
 * @param after_min minutes, 0 or more
 * @returns such as 10:15
 * @valid times of day
 * @source geometry
 * @example clockAt('09:30', 45) // '10:15'
 * @example clockAt('23:50', 20) // '00:10'
 */
export function clockAt(starts: string, after_min: number): string {
  const [hours = 0, minutes = 0] = starts.split(':').map(Number);
  const all = hours * 60 + minutes + after_min;
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(all / 60) % 24)}:${two(all % 60)}`;
}
