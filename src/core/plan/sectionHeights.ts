/** The heights that a drawing of the section tells: every rim and every inside floor. */
import type { SectionHeight, SectionVessel } from './figure.ts';

/** What differs by less is one height for whoever builds with a tape. */
const sameHeight_mm = 0.5;

/**
 * Heights over the floor of the place.
 * Rim and inside floor of every kind of vessel; what ends at the same height is told together.
 * @param vessels all vessels, placed
 * @returns heights from the top down
 * @valid what was measured
 * @source geometry
 */
export function heights(vessels: readonly SectionVessel[]): readonly SectionHeight[] {
  const edges = vessels
    .filter((one) => one.copy === 0)
    .flatMap(({ role, index, outline }) => {
      const ys = outline.map(([, y]) => y);
      return [
        { y_mm: Math.max(...ys), of: { role, index, edge: 'rim' as const } },
        { y_mm: Math.min(...ys), of: { role, index, edge: 'floor' as const } },
      ];
    })
    .sort((a, b) => b.y_mm - a.y_mm);
  const found: SectionHeight[] = [];
  for (const { y_mm, of } of edges) {
    const last = found.at(-1);
    if (last !== undefined && last.y_mm - y_mm < sameHeight_mm) {
      found[found.length - 1] = { ...last, of: [...last.of, of] };
    } else found.push({ y_mm, of: [of] });
  }
  return found;
}
