/** Whether the fish of an exercise are the same for whoever rounds on the way, as a pencil does. */
import { mediaPerFish_L, ruleFish_g, waterPerFish_L } from '../constants.ts';
import { densityCap_kg_L, wholeCount } from '../stocking/limits.ts';
import type { Container } from '../system.ts';

/** What the water of an exercise is worked from. */
export type Litres = {
  readonly tank: Pick<Container, 'shape'>;
  readonly full_L: number;
  readonly bed: Pick<Container, 'shape'>;
  readonly wet_L: number;
};

/** How somebody works: what is left of litres on the way and of the lowest water, of kilograms, and what they take for π. */
type Hand = {
  readonly litres: (exact_L: number) => number;
  readonly lowest: (exact_L: number) => number;
  readonly kilograms: (exact_kg: number) => number;
  readonly pi: number;
};

const all = (exact: number): number => exact;
/** Half and more goes up, as it is taught. */
const whole = (exact: number): number => Math.floor(exact + 0.5);
const tenths = (exact_kg: number): number => whole(exact_kg * 10) / 10;
const hands: readonly Hand[] = [Math.PI, 3.14].flatMap((pi) =>
  [all, whole].flatMap((litres) =>
    [all, whole].flatMap((lowest) =>
      [all, tenths].map((kilograms): Hand => ({ litres, lowest, kilograms, pi })),
    ),
  ),
);

/**
 * Whether somebody counts as many fish by each limit with whole litres, tenths of a kilogram and 3.14 for π.
 * Every step once with all digits and once rounded, in all combinations, and the counts compared.
 * @param of the litres of tank and wet media
 * @param voids_frac the most water that the media holds, as a share of its volume
 * @returns whether all count alike
 * @valid what exercises are made of
 * @source commonPractice
 * @example steadyCounts({ tank: { shape: 'box' }, full_L: 862.5, bed: { shape: 'box' }, wet_L: 144 }, 0.45) // false
 */
export function steadyCounts(of: Litres, voids_frac: number): boolean {
  const { tank, full_L, bed, wet_L } = of;
  const share_kg_L = densityCap_kg_L(full_L);
  const counts = hands.map(({ litres, lowest, kilograms, pi }): readonly number[] => {
    const read = (exact_L: number, { shape }: Pick<Container, 'shape'>): number =>
      litres(shape === 'box' ? exact_L : (exact_L * pi) / Math.PI);
    const media_L = read(wet_L, bed);
    const low_L = lowest(read(full_L, tank) - litres(voids_frac * media_L));
    return [
      wholeCount(media_L, mediaPerFish_L.value),
      wholeCount(low_L, waterPerFish_L.value),
      wholeCount(kilograms(share_kg_L * low_L) * 1000, ruleFish_g.value),
    ];
  });
  return [0, 1, 2].every((limit) => new Set(counts.map((one) => one[limit])).size === 1);
}
