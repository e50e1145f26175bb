/** Baskets of media in the fish tank: their grains take the place of water, and too many leave none. */
import { volume_L } from '../core/geometry/container.ts';
import type { Basket } from '../core/plan/lowerVessel.ts';
import type { Problem } from '../core/problem.ts';
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

/** Whether the baskets leave water in the tank at all. */
export function checkBaskets(parts: Parts, facts: Facts, place: Path): readonly Problem[] {
  const { tank, beds } = parts;
  const first = beds.findIndex((bed) => bed?.mode === 'inTank');
  const baskets = basketsOf(beds, facts);
  if (first < 0 || baskets === null || !tank || checkVessel(tank, []).length > 0) return [];
  const tank_L = volume_L(toContainer(tank.container), tank.full_mm) * tank.count;
  const taken_L = baskets.reduce((sum, basket) => {
    const wet_mm = Math.max(0, Math.min(basket.mediaDepth_mm, tank.full_mm - basket.above_mm));
    return sum + volume_L(basket.container, wet_mm) * basket.count;
  }, 0);
  if (taken_L < tank_L) return [];
  const at = [...place, 'beds', first, 'container'];
  return [{ code: 'basketsTooLarge', place: at, given: String(taken_L), max: tank_L, unit: 'L' }];
}
