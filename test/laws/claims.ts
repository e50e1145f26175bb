/**
 * What laws claim of numbers. Each throws where it is not so, and a number that is none is never so. Words are made
 * only then: laws are asked hundreds of millions of times.
 */
import { isDeepStrictEqual } from 'node:util';

function fail(what: string, told: string): never {
  throw new Error(what === '' ? told : `${what}: ${told}`);
}

/** Alike, but for a share of the second one. */
export function same(ours: number, theirs: number, share: number, what = ''): void {
  near(ours, theirs, share * Math.max(Math.abs(theirs), 1e-12), what);
}

/** Alike, but for so much. */
export function near(ours: number, theirs: number, within: number, what = ''): void {
  if (Math.abs(ours - theirs) <= within) return;
  fail(what, `${ours} and ${theirs} are further apart than ${within}`);
}

export function less(small: number, large: number, what = ''): void {
  if (!(small < large)) fail(what, `${small} is not less than ${large}`);
}

/** Not more; a share of the larger may be a rounding error. */
export function atMost(small: number, large: number, what = '', rounding = 0): void {
  if (!(small <= large + rounding * Math.abs(large))) fail(what, `${small} is more than ${large}`);
}

/** The very same: numbers to the last digit, records in all they hold. */
export function equal(ours: unknown, theirs: unknown, what = ''): void {
  if (Object.is(ours, theirs) || isDeepStrictEqual(ours, theirs)) return;
  fail(what, `${JSON.stringify(ours)?.slice(0, 300)} is not ${JSON.stringify(theirs)?.slice(0, 300)}`);
}

/** A number as numbers go: neither endless nor none. */
export function finite(value: number, what = ''): void {
  if (!Number.isFinite(value)) fail(what, `${value} is no number`);
}
