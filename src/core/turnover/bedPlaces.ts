/** Places of a bed that is planted with quick crops. */
import { type BedOutline, placesIn, plantEdge_mm } from '../crops/places.ts';

/**
 * Places of one size in a bed: in rows side by side or in offset rows, whichever are more.
 * @param outline the bed from above
 * @param place_mm side of a place, above 0
 * @returns a whole number, at least 1: what is smaller than a place still holds one plant
 * @valid beds without pipes in the way
 * @source geometry
 * @example placesOf({ form: 'box', length_mm: 1000, width_mm: 1000 }, 200) // 25
 */
export function placesOf(outline: BedOutline, place_mm: number): number {
  const edge_mm = plantEdge_mm(outline, place_mm);
  return Math.max(
    1,
    placesIn(outline, place_mm, edge_mm, 'square'),
    placesIn(outline, place_mm, edge_mm, 'offset'),
  );
}
