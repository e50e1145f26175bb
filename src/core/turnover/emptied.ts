/** Sowings that failed in part: which of their places are empty, and what is left of them. */
import type { Sown } from './sown.ts';
import type { Strip } from './turnover.ts';

/**
 * The places that are given up where only so many plants are left: those with the highest numbers, plant by plant.
 * @param sowing a sowing of the plan
 * @param unit plants that stand on so many places
 * @param plants plants that are left, 0 and more
 * @returns numbers of places; plants that fill no whole place are not counted
 * @valid every sowing
 * @source commonPractice
 */
export function lastPlaces(
  sowing: Pick<Sown, 'strips'>,
  unit: { readonly plants: number; readonly places: number },
  plants: number,
): readonly number[] {
  const left = Math.floor(plants / unit.plants) * unit.places;
  const groups = byLifting(sowing);
  const found: number[] = [];
  while (found.length < numbersOf(sowing).length - left) {
    // The highest number that is still there; the others of its plant are lifted in the same week.
    const highest = groups.reduce((best, one) => ((one.at(-1) ?? 0) > (best.at(-1) ?? 0) ? one : best), []);
    if (highest.length === 0) break;
    found.push(...highest.splice(-unit.places));
  }
  return found.sort((a, b) => a - b);
}

/**
 * Whether whole plants are left where some places are empty: a wide one stands on several.
 * @param sowing a sowing of the plan
 * @param empty numbers of its places
 * @param places places of one plant unit
 * @returns yes or no
 * @valid plants that are lifted in one week stand side by side
 * @source geometry
 */
export function leavesWholePlants(
  sowing: Pick<Sown, 'strips'>,
  empty: readonly number[],
  places: number,
): boolean {
  const gone = new Set(empty);
  return byLifting(sowing).every((all) => all.filter((place) => gone.has(place)).length % places === 0);
}

/**
 * Numbers of all places of a sowing.
 * @param sowing a sowing of the plan
 * @returns in order
 * @valid every sowing
 * @source geometry
 * @example numbersOf({ strips: [{ first: 3, last: 5 }] }) // [3, 4, 5]
 */
export function numbersOf(sowing: {
  readonly strips: readonly Pick<Strip, 'first' | 'last'>[];
}): readonly number[] {
  return sowing.strips.flatMap(numbersIn).sort((a, b) => a - b);
}

/**
 * A strip in two: the runs that still hold plants, and those that are empty.
 * @param strip a strip of a sowing
 * @param empty numbers of places
 * @returns shorter strips with the same weeks
 * @valid every strip
 * @source geometry
 */
export function inTwo(
  strip: Strip,
  empty: readonly number[],
): { readonly left: readonly Strip[]; readonly gone: readonly Strip[] } {
  const runs: { first: number; last: number; readonly isGone: boolean }[] = [];
  for (const place of numbersIn(strip)) {
    const isGone = empty.includes(place);
    const before = runs.at(-1);
    if (before?.isGone === isGone) before.last = place;
    else runs.push({ first: place, last: place, isGone });
  }
  const of = (wanted: (run: (typeof runs)[number]) => boolean): readonly Strip[] =>
    runs.filter(wanted).map(({ first, last }) => ({ ...strip, first, last }));
  return { left: of(({ isGone }) => !isGone), gone: of(({ isGone }) => isGone) };
}

function numbersIn({ first, last }: Pick<Strip, 'first' | 'last'>): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
}

/** Places in order, by the week in which they are lifted. */
function byLifting({ strips }: Pick<Sown, 'strips'>): readonly number[][] {
  const groups = new Map<number, number[]>();
  for (const strip of [...strips].sort((a, b) => a.first - b.first))
    groups.set(strip.to_week, [...(groups.get(strip.to_week) ?? []), ...numbersIn(strip)]);
  return [...groups.values()];
}
