/** The holes that a section shows. */
import type { SectionHole, SectionPipe, SectionVessel } from './figure.ts';

/**
 * Where a standpipe goes through a bed's floor, and the hole at its foot that a timer bed drains through.
 * @param bed the bed, placed
 * @param own its pipes
 * @param drainHole_mm bore of the hole at the foot; null where there is none or it was not measured
 * @returns one or two holes
 * @valid left to right the places are the drawing's own
 * @source geometry
 */
export function bedHoles(
  bed: SectionVessel,
  own: readonly SectionPipe[],
  drainHole_mm: number | null,
): readonly SectionHole[] {
  const pipe = own.find((one) => one.role === 'standpipe');
  const at = pipe?.points.at(-1);
  if (pipe === undefined || at === undefined) return [];
  const { role, index, copy } = bed;
  const place = { role, index, copy, at };
  return [
    { for: 'standpipe', ...place, bore_mm: pipe.bore_mm },
    ...(drainHole_mm === null ? [] : [{ for: 'drain' as const, ...place, bore_mm: drainHole_mm }]),
  ];
}

/**
 * Where the overflow goes through the wall of a tank beside a sump.
 * @param tank the tank that overflows
 * @param over the overflow pipe, if there is one
 * @returns one hole, or none without a sump
 * @source geometry
 */
export function overflowHoles(tank: SectionVessel, over: readonly SectionPipe[]): readonly SectionHole[] {
  const { role, index, copy } = tank;
  return over.flatMap(({ points: [at], bore_mm }) =>
    at === undefined ? [] : [{ for: 'overflow' as const, role, index, copy, at, bore_mm }],
  );
}
