/** Baskets of media in the fish tank: their grains take the place of water, and too many leave none. */
import { area_m2, volume_L } from '../core/geometry/container.ts';
import { rim_mm } from '../core/geometry/rim.ts';
import type { Basket } from '../core/plan/lowerVessel.ts';
import type { Problem } from '../core/problem.ts';
import type { Container } from '../core/system.ts';
import type { BedFile } from './bed.ts';
import { checkContainer } from './checkContainer.ts';
import { checkVessel } from './checkVessel.ts';
import { toContainer } from './container.ts';
import type { Facts } from './facts.ts';
import type { Parts } from './parts.ts';
import type { Path } from './schemaAt.ts';
import { voidOf } from './voidOf.ts';

/** The baskets as the core counts them; null where one cannot be read yet, for then nothing can be said. */
export function basketsOf(beds: readonly (BedFile | null)[], facts: Facts): readonly Basket[] | null {
  const found = beds
    .filter((bed) => bed === null || bed.mode === 'inTank')
    .map((bed) => basketOf(bed, facts));
  return found.includes(null) ? null : found.filter((one) => one !== null);
}

function basketOf(bed: BedFile | null, facts: Facts): Basket | null {
  const void_frac = bed && voidOf(bed, facts);
  if (!bed || !void_frac || checkContainer(bed.container, []).length > 0) return null;
  return { ...bed, container: toContainer(bed.container), media: { void_frac } };
}

/** Whether the baskets fit into the tank at every height, and leave water in it. */
export function checkBaskets(parts: Parts, facts: Facts, place: Path): readonly Problem[] {
  const { tank, beds } = parts;
  const first = beds.findIndex((bed) => bed?.mode === 'inTank');
  const baskets = basketsOf(beds, facts);
  if (first < 0 || baskets === null || !tank || checkVessel(tank, []).length > 0) return [];
  const at = [...place, 'beds', first, 'container'];
  const around = { ...tank, container: toContainer(tank.container) };
  const tank_L = volume_L(around.container, tank.full_mm) * tank.count;
  const taken_L = taken(baskets, tank.full_mm);
  if (taken_L >= tank_L) {
    return [{ code: 'basketsTooLarge', place: at, given: String(taken_L), max: tank_L, unit: 'L' }];
  }
  const narrow_mm = narrowest_mm(around, baskets);
  if (narrow_mm === null) return [];
  return [{ code: 'basketsTooWide', place: at, given: String(narrow_mm), unit: 'mm' }];
}

/** Room that baskets take below a height. */
function taken(baskets: readonly Basket[], depth_mm: number): number {
  return baskets.reduce((sum, basket) => {
    const wet_mm = Math.max(0, Math.min(basket.mediaDepth_mm, depth_mm - basket.above_mm));
    return sum + volume_L(basket.container, wet_mm) * basket.count;
  }, 0);
}

type Around = { readonly container: Container; readonly count: number };

/** Heights looked at between two corners: enough for walls that bend. */
const looks = 16;

/**
 * The height at which baskets cover most of what they cannot cover: more than the surface of the tank's water there.
 * A drum on its side is narrow at its floor and, cut open near its top, at its rim; null where all fits.
 */
function narrowest_mm(tank: Around, baskets: readonly Basket[]): number | null {
  const over_m2 = (height_mm: number): number =>
    covered_m2(baskets, height_mm) - area_m2(tank.container, height_mm) * tank.count * (1 + 1e-9);
  const worst_mm = heights_mm(tank, baskets).reduce((worst, height_mm) =>
    over_m2(height_mm) > over_m2(worst) ? height_mm : worst,
  );
  return over_m2(worst_mm) > 0 ? worst_mm : null;
}

function covered_m2(baskets: readonly Basket[], height_mm: number): number {
  return baskets.reduce((sum, { above_mm, mediaDepth_mm, container, count }) => {
    const in_mm = height_mm - above_mm;
    return 0 <= in_mm && in_mm <= mediaDepth_mm ? sum + area_m2(container, in_mm) * count : sum;
  }, 0);
}

/** Every height where a wall begins, ends or bends, and some between. */
function heights_mm(tank: Around, baskets: readonly Basket[]): readonly number[] {
  const rim = rim_mm(tank.container);
  const ends = baskets.flatMap((basket) => [
    ...cornersOf(basket.container).map((corner_mm) => basket.above_mm + corner_mm),
    basket.above_mm + basket.mediaDepth_mm,
  ]);
  const corners = [0, rim, ...cornersOf(tank.container), ...ends]
    .filter((corner_mm) => corner_mm <= rim)
    .sort((a, b) => a - b);
  return corners.flatMap((corner_mm, i) => {
    const next_mm = corners[i + 1] ?? corner_mm;
    return Array.from({ length: looks }, (_, look) => corner_mm + ((next_mm - corner_mm) * look) / looks);
  });
}

function cornersOf(container: Container): readonly number[] {
  return container.shape === 'dipTable' ? [0, ...container.dips.map((dip) => dip.depth_mm)] : [0];
}
