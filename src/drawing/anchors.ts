/** The places of a section that want a label or a number. */
import type { Section, SectionVessel } from '../core/plan/figure.ts';
import { spanAt } from './fills.ts';
import type { Fit } from './fit.ts';
import type { Anchor, Tag } from './shape.ts';

/** Levels of tank and sump, and one place for each bed. */
export function anchorsOf(section: Section, at: Fit): readonly Anchor[] {
  const low = section.vessels.filter((one) => one.role !== 'bed');
  const last = (role: SectionVessel['role']): SectionVessel | undefined =>
    low.filter((one) => one.role === role).at(-1);
  const levels = [last('tank'), last('sump')].flatMap((vessel) =>
    vessel === undefined
      ? []
      : vessel.levels.map((level): Anchor => {
          const point = [
            at.x(level.right_mm) + (level.key === 'blocked' ? -6 : 0),
            at.y(level.y_mm),
          ] as const;
          return { key: `${vessel.role}.${level.key}`, at: point, y: point[1] };
        }),
  );
  return [...levels, ...bedAnchors(section, at)];
}

function bedAnchors(section: Section, at: Fit): readonly Anchor[] {
  const beds = section.vessels.filter((one) => one.role === 'bed');
  const numbers = [...new Set(beds.map((bed) => bed.index))];
  return numbers.map((index) => {
    const bed = beds.filter((one) => one.index === index).at(-1);
    const level = bed?.levels.find((one) => one.key === 'waterLine');
    if (bed === undefined || level === undefined) return { key: `bed.${index}`, at: null, y: 0 };
    const y = at.y(level.y_mm);
    const free = !beds.some((one) => one !== bed && isRightOf(one, bed, level.y_mm));
    const inTank = bed.mode === 'inTank';
    return { key: `bed.${index}`, at: free && !inTank ? [at.x(level.right_mm), y] : null, y };
  });
}

function isRightOf(one: SectionVessel, bed: SectionVessel, y_mm: number): boolean {
  const span = spanAt(one.outline, y_mm);
  const own = spanAt(bed.outline, y_mm);
  return span !== null && own !== null && span[0] > own[1] - 1;
}

/** Beds are numbered as soon as there are two kinds of them. */
export function tagsOf(section: Section, at: Fit, box: Box): readonly Tag[] {
  const beds = section.vessels.filter((one) => one.role === 'bed');
  if (new Set(beds.map((bed) => bed.index)).size < 2) return [];
  const placed: Tag[] = [];
  for (const bed of beds) {
    const xs = bed.outline.map(([x]) => x);
    const ys = bed.outline.map(([, y]) => y);
    const x = at.x(0.66 * Math.min(...xs) + 0.34 * Math.max(...xs));
    const y = at.y((Math.min(...ys) + Math.max(...ys)) / 2);
    const free = freePlace(x, y, placed, box);
    if (free !== null) placed.push({ text: String(bed.index + 1), ...free });
  }
  return placed;
}

type Box = { readonly width: number; readonly height: number };

/** Distance of two tags that just do not touch: the disc that sheets draw, and a hair. */
const tagPitch = 58;

/** The wished place, or the nearest one around it where no other tag lies; null in a drawing full of tags. */
function freePlace(
  x: number,
  y: number,
  placed: readonly Tag[],
  box: Box,
): { readonly x: number; readonly y: number } | null {
  const steps = [-3, -2, -1, 0, 1, 2, 3];
  const half = tagPitch / 2;
  const places = steps
    .flatMap((across) => steps.map((down) => ({ across, down })))
    .sort((a, b) => Math.hypot(a.across, a.down) - Math.hypot(b.across, b.down))
    .map(({ across, down }) => ({
      x: clamped(x + across * tagPitch, half, box.width - half),
      y: clamped(y + down * tagPitch, half, box.height - half),
    }));
  const free = places.find((one) =>
    placed.every((tag) => Math.abs(tag.x - one.x) >= tagPitch || Math.abs(tag.y - one.y) >= tagPitch),
  );
  return free ?? null;
}

function clamped(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
