/**
 * The steps of a worksheet, and where whoever works it has each number from: as a measure on top of the sheet, as the
 * result of an earlier step, or told where it is needed. So nothing is asked for that cannot be known.
 */
import type { Figure, Quantity, Step } from '../plan/figure.ts';
import { inDecimetres, quantityInDecimetres } from './decimetres.ts';
import type { Level } from './exercise.ts';
import { plainStep } from './plainStep.ts';

/** Where a number of a step comes from; of a result, from which figure. */
export type From =
  | { readonly is: 'measure' | 'told' }
  | { readonly is: 'result'; readonly key: string; readonly number: number };

export type AskedStep = Step & {
  /** Which of the figure's steps it is, from 1. */
  readonly number: number;
  /** worked: with a pencil; rule: a rule gives it that stands there; given: told, since a pencil is too slow for it. */
  readonly way: 'worked' | 'rule' | 'given';
  /** By their signs. */
  readonly from: Readonly<Record<string, From>>;
};

/** A figure that a worksheet asks for, with the steps to it and the measures of its container. */
export type Asked = {
  readonly key: string;
  readonly steps: readonly AskedStep[];
  readonly measures: readonly Quantity[];
};

type Unlinked = Omit<AskedStep, 'from'>;

/**
 * Figures as a worksheet asks for them.
 * The plan's own steps without factors of one and terms of nothing; in decimetres for children. Where a step is too
 * long for a pencil its result is given, and the steps that only lead there are left out.
 * @param figures those that are asked for, in the order in which they are worked; each with a step at least
 * @param level for whom
 * @returns as many figures; every number of their steps says where it comes from
 * @valid the figures of one plan
 * @source see the figures
 */
export function askedSteps(
  figures: readonly Pick<Figure, 'key' | 'steps'>[],
  level: Level,
): readonly Asked[] {
  const asked: Asked[] = [];
  for (const { key, steps } of figures) {
    const ways = wayOf(steps, level);
    const measures = measuresOf(
      key,
      ways.some(({ way }) => way === 'given') ? withoutDips(steps) : steps,
      asked,
    );
    const shown = level === 'primary' ? measures.map(quantityInDecimetres) : measures;
    const so: AskedStep[] = [];
    const earlier: readonly Earlier[] = [...asked, { key, steps: so }];
    for (const step of namedAlike(ways)) {
      const own = withOneName(step, key, asked);
      const from: Record<string, From> = {};
      for (const symbol of own.symbols) from[symbol.sign] = fromOf(symbol, key, earlier, taken(from));
      so.push({ ...own, from });
    }
    asked.push({ key, steps: so, measures: shown });
  }
  return asked;
}

/** The steps that are left, each with the way in which its result is come by. */
function wayOf(steps: readonly Step[], level: Level): readonly Unlinked[] {
  const all = steps.map((step, at): Unlinked => {
    const number = at + 1;
    const easy = step.byHand === 'no' ? null : plainStep(step);
    const own = easy !== null && level === 'primary' ? inDecimetres(easy) : easy;
    if (own !== null) return { ...own, number, way: 'worked' };
    if (step.kind === 'lookup' && step.formula === '' && step.symbols.length > 0)
      return { ...step, number, way: 'rule' };
    return { ...step, number, way: 'given', formula: '', symbols: [] };
  });
  return all.slice(
    Math.max(
      0,
      all.findLastIndex(({ way }) => way === 'given'),
    ),
  );
}

/** What one of several equal containers holds goes by one name, where it comes out and where it is multiplied. */
function namedAlike(steps: readonly Unlinked[]): readonly Unlinked[] {
  const isOfSeveral = steps.some(({ symbols }) => symbols.some(({ term }) => term === 'oneContainer'));
  return steps.map((step) =>
    isOfSeveral && step.gives.term === 'waterVolume'
      ? { ...step, gives: { ...step.gives, term: 'oneContainer' } }
      : step,
  );
}

/** A tape reads lengths, and a jug the litres of a dip. */
function isMeasure({ term, unit }: Quantity): boolean {
  return term !== 'spacing' && (unit === 'mm' || unit === 'dm' || /^(lower|upper)Dip/.test(term));
}

/** A table of dips is of no use to whoever is given what it comes to; lengths still tell what container it is. */
function withoutDips(steps: readonly Step[]): readonly Step[] {
  return steps.filter(({ symbols }) => !symbols.some(({ term }) => /Dip/.test(term)));
}

/** Every measure that goes into a figure once, but for those that its container has told already. */
function measuresOf(key: string, steps: readonly Step[], asked: readonly Asked[]): readonly Quantity[] {
  const found: Quantity[] = [];
  const worked = steps.map(({ gives }) => gives);
  for (const { formula, symbols } of steps)
    for (const symbol of formula === '' ? [] : symbols) {
      const isKnown = [...found, ...worked].some((one) => one.term === symbol.term && isEqual(one, symbol));
      if (isMeasure(symbol) && !isKnown && sameMeasure(symbol, key, asked) === undefined) found.push(symbol);
    }
  return found;
}

/** A bed with upright walls is as long for plants as for water. */
const sameAs: Readonly<Record<string, string>> = { bedLength: 'insideLength', bedWidth: 'insideWidth' };

function sameMeasure(of: Quantity, key: string, asked: readonly Asked[]): Quantity | undefined {
  const term = sameAs[of.term];
  if (term === undefined) return undefined;
  const here = asked.filter((one) => containerOf(one.key) === containerOf(key));
  return here
    .flatMap(({ measures }) => measures)
    .find((one) => one.term === term && isEqual(quantityInDecimetres(one), quantityInDecimetres(of)));
}

/** Calls a measure what its container was told by. */
function withOneName(step: Unlinked, key: string, asked: readonly Asked[]): Unlinked {
  const symbols = step.symbols.map((symbol) => {
    const same = sameMeasure(symbol, key, asked);
    return same === undefined ? symbol : { ...symbol, term: same.term };
  });
  return { ...step, symbols };
}

/** `bed1` of `bed1.wetMedia_L`; nothing for the tank. */
function containerOf(key: string): string {
  return /^bed\d+/.exec(key)?.[0] ?? '';
}

type Earlier = Pick<Asked, 'key' | 'steps'>;

/** Figures whose results stand in the step already. */
function taken(from: Readonly<Record<string, From>>): ReadonlySet<string> {
  return new Set(Object.values(from).flatMap((one) => (one.is === 'result' ? [one.key] : [])));
}

/** Of equal beds each is meant once, so that the sum of three beds does not name the first one three times. */
function fromOf(
  symbol: Quantity,
  key: string,
  earlier: readonly Earlier[],
  named: ReadonlySet<string>,
): From {
  const found = earlier.flatMap((one): readonly From[] => {
    const meant = one.key === key ? withinFigure(symbol, one) : ofFigure(symbol, one);
    const isIt = meant !== undefined && isEqual(meant.gives, symbol);
    return isIt ? [{ is: 'result', key: one.key, number: meant.number }] : [];
  });
  const fresh = found.find((one) => one.is === 'result' && !named.has(one.key));
  return fresh ?? found[0] ?? { is: isMeasure(symbol) ? 'measure' : 'told' };
}

/** A step of the same figure goes by its term. */
function withinFigure({ term }: Quantity, { steps }: Earlier): AskedStep | undefined {
  return steps.find(({ gives }) => gives.term === term);
}

/** The last step of another figure goes by the figure's name. */
function ofFigure({ term }: Quantity, { key, steps }: Earlier): AskedStep | undefined {
  return term === key.replace(/^bed\d+\./, '').replace(/_L$/, '') ? steps.at(-1) : undefined;
}

/** Rounding of the last digit apart. */
function isEqual(one: Quantity, other: Quantity): boolean {
  return one.unit === other.unit && Math.abs(one.value - other.value) <= 1e-9 * Math.abs(other.value);
}
