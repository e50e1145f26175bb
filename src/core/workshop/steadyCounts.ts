/** Whether the fish of an exercise are the same for whoever rounds on the way, as a pencil does. */
import { mediaPerFish_L, ruleFish_g, waterPerFish_L } from '../constants.ts';
import { densityCap_kg_L, wholeCount } from '../stocking/limits.ts';
import type { Container } from '../system.ts';
import { off_frac } from './agrees.ts';

/** What the water of an exercise is worked from. */
export type Litres = {
  readonly tank: Pick<Container, 'shape'>;
  readonly full_L: number;
  readonly bed: Pick<Container, 'shape'>;
  readonly wet_L: number;
};

type Way = (exact: number) => number;

/** How somebody works: what they write down for each number on the way to a count, and what they take for π. */
type Hand = {
  readonly wetMedia: Way;
  readonly full: Way;
  readonly taken: Way;
  readonly lowest: Way;
  readonly kilograms: Way;
  readonly pi: number;
};

const all: Way = (exact) => exact;
/** Half and more goes up, as it is taught. */
const whole: Way = (exact) => Math.floor(exact + 0.5);
const tenths: Way = (exact_kg) => whole(exact_kg * 10) / 10;

/** Whoever rounds does so to whole litres, of all water or of the lowest only, to tenths of a kilogram, or takes 3.14. */
const rounding: readonly Hand[] = [Math.PI, 3.14].flatMap((pi) =>
  [all, whole].flatMap((litres) =>
    [all, whole].flatMap((lowest) =>
      [all, tenths].map((kilograms): Hand => {
        return { wetMedia: litres, full: litres, taken: litres, lowest, kilograms, pi };
      }),
    ),
  ),
);

const exactly: Hand = { wetMedia: all, full: all, taken: all, lowest: all, kilograms: all, pi: Math.PI };

/** Whoever has one number as far off as passes for right, and goes on with it. */
const slipping = (['full', 'wetMedia', 'lowest', 'kilograms', 'taken'] as const).flatMap((name) =>
  [1 - off_frac.measured, 1 + off_frac.measured].map((by): Hand => {
    return { ...exactly, [name]: (exact: number) => exact * by };
  }),
);

const hands = [...slipping, ...rounding];

/**
 * Whether somebody counts as many fish by each limit who works it by hand.
 * With whole litres, tenths of a kilogram and 3.14 for π, each of them or not, in all combinations; and with any one
 * number on the way half a per cent off, as much as passes for right. The counts compared with those of all digits.
 * @param of the litres of tank and wet media
 * @param voids_frac the most water that the media holds, as a share of its volume
 * @returns whether all count alike
 * @valid what exercises are made of
 * @source commonPractice
 * @example steadyCounts({ tank: { shape: 'box' }, full_L: 862.5, bed: { shape: 'box' }, wet_L: 144 }, 0.45) // false
 */
export function steadyCounts(of: Litres, voids_frac: number): boolean {
  const exact = counted(of, voids_frac, exactly);
  // Most that are not steady fail at one of the first.
  return hands.every((hand) => counted(of, voids_frac, hand).every((count, at) => count === exact[at]));
}

/** The fish by each limit, as this hand counts them. */
function counted({ tank, full_L, bed, wet_L }: Litres, voids_frac: number, hand: Hand): readonly number[] {
  const { wetMedia, full, taken, lowest, kilograms, pi } = hand;
  const read = (exact_L: number, { shape }: Pick<Container, 'shape'>): number =>
    shape === 'box' ? exact_L : (exact_L * pi) / Math.PI;
  const media_L = wetMedia(read(wet_L, bed));
  const low_L = lowest(full(read(full_L, tank)) - taken(voids_frac * media_L));
  return [
    wholeCount(media_L, mediaPerFish_L.value),
    wholeCount(low_L, waterPerFish_L.value),
    wholeCount(kilograms(densityCap_kg_L(full_L) * low_L) * 1000, ruleFish_g.value),
  ];
}
