import type { Problem } from '../core/problem.ts';
import { checkContainer } from './checkContainer.ts';
import { knownTo_mm } from './container.ts';
import type { Path } from './schemaAt.ts';
import type { VesselFile } from './systemFile.ts';

/** A tank or sump by itself. */
export function checkVessel(vessel: VesselFile, place: Path): readonly Problem[] {
  const rest = checkContainer(vessel.container, [...place, 'container']);
  const given = { place: [...place, 'full_mm'], given: String(vessel.full_mm), unit: 'mm' };
  if (vessel.full_mm > vessel.container.depth_mm) {
    return [...rest, { code: 'fullAboveRim', ...given, max: vessel.container.depth_mm }];
  }
  const known_mm = knownTo_mm(vessel.container);
  if (vessel.full_mm > known_mm) return [...rest, { code: 'dipTableShort', ...given, max: known_mm }];
  return rest;
}
