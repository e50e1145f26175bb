/** A bed as a template: its outline at the height at which is planted, and a place for every plant. */
import { bedRim_mm } from '../crops/bedRim.ts';
import { placesIn, plantEdge_mm, plantPlaces_mm, type Rows } from '../crops/places.ts';
import type { System } from '../system.ts';
import type { BedTemplate } from './figure.ts';
import { leafy, outlineOf } from './plantingPlan.ts';

/**
 * The templates of a system: for each bed whose form from above is known and that holds a plant at all.
 * Rows square or offset, whichever holds more; square where both hold as many.
 * @param system a checked system
 * @returns templates in the order of the beds, of one container of each
 * @valid leafy plants at the spacing of the plan; where pipes stand nobody measured
 * @source fao589 for the spacing; geometry
 */
export function bedTemplates(system: System): readonly BedTemplate[] {
  return system.beds.flatMap((bed, index) => {
    const outline = outlineOf(bed);
    if (outline === null || outline.length_mm === 0 || outline.width_mm === 0) return [];
    const { spacing_mm } = leafy;
    const edge_mm = plantEdge_mm(outline, spacing_mm);
    const held = (one: Rows): number => placesIn(outline, spacing_mm, edge_mm, one);
    const rows = held('offset') > held('square') ? 'offset' : 'square';
    const places = plantPlaces_mm(outline, spacing_mm, edge_mm, rows);
    const count = places.length;
    const rim = bedRim_mm(outline);
    const number = index + 1;
    return count === 0 ? [] : [{ number, outline, rim, rows, spacing_mm, edge_mm, count, places }];
  });
}
