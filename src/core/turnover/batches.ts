/** Plants that are sown together, planted together and lifted together, as the counts of a season say. */
import type { Choice } from './choices.ts';
import type { Counts } from './counts.ts';
import { held, type Season } from './season.ts';

export type Batch = {
  readonly choice: Choice;
  readonly units: number;
  /** Places that it takes, in all. */
  readonly places: number;
  /** Week after the last in which its places are held, rest included. */
  readonly until_week: number;
};

/** Batches of one crop that are sown in one week into one kind of bed: they stand side by side. */
export type Together = {
  readonly kind: number;
  readonly from_week: number;
  readonly batches: readonly Batch[];
};

/**
 * The batches of a plan, those that are sown together side by side.
 * @param season the season
 * @param counts units of each choice
 * @returns in the order in which they are planted; what stands longer first, what is larger first
 * @valid every season
 * @source geometry
 */
export function togetherIn(season: Season, counts: Counts): readonly Together[] {
  const found = new Map<string, Batch[]>();
  for (const [column, choice] of season.choices.entries()) {
    const units = counts[column] ?? 0;
    if (units === 0) continue;
    const key = [choice.wish, choice.kind, choice.sow_week, choice.from_week].join(' ');
    const places = units * (season.units[choice.wish]?.places ?? 1);
    const batch = { choice, units, places, until_week: held(season, choice).to };
    found.set(key, [...(found.get(key) ?? []), batch]);
  }
  return [...found.values()].map(inOrder).sort((a, b) => a.from_week - b.from_week || sizeOf(b) - sizeOf(a));
}

function inOrder(batches: readonly Batch[]): Together {
  const sorted = [...batches].sort((a, b) => a.choice.to_week - b.choice.to_week);
  const { kind = 0, from_week = 0 } = sorted[0]?.choice ?? {};
  return { kind, from_week, batches: sorted };
}

/**
 * Places of all batches together.
 * @param together batches side by side
 * @returns a whole number
 * @valid every group
 * @source geometry
 * @example sizeOf({ kind: 0, from_week: 0, batches: [] }) // 0
 */
export function sizeOf(together: Together): number {
  return together.batches.reduce((sum, { places }) => sum + places, 0);
}
