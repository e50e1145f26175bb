/** Whether two crops stand on one place at a time. */
import type { Sown, SownPlan } from './sown.ts';

/**
 * From planting to the end of the rest nothing else stands on a place.
 * @param plan a plan, with places that its beds have
 * @returns the first sowing that is planted where another still stands or rests; null where there is none
 * @valid every plan
 * @source geometry
 */
export function firstClash(plan: SownPlan): Sown | null {
  const { task, sowings } = plan;
  const taken = task.beds.map(({ places }) => Array.from({ length: places }, () => -1));
  const strips = sowings
    .flatMap((sowing) => sowing.strips.map((strip) => ({ sowing, ...strip })))
    .sort((a, b) => a.from_week - b.from_week);
  const clash = strips.find(({ sowing: { bed }, first, last, from_week, restTo_week }) => {
    const places = taken[bed]?.slice(first - 1, last) ?? [];
    taken[bed]?.fill(restTo_week, first - 1, last);
    return places.some((until) => until >= from_week);
  });
  return clash?.sowing ?? null;
}
