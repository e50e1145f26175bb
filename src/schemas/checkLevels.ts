/** Tank, sump, pump and beds together: is there water at the pump when all beds have taken theirs? */
import { volume_L } from '../core/geometry/container.ts';
import { type LowerVessel, levelOf_mm, waterBelow_L } from '../core/plan/lowerVessel.ts';
import type { Problem } from '../core/problem.ts';
import { basketsOf } from './baskets.ts';
import type { BedFile } from './bed.ts';
import { checkContainer } from './checkContainer.ts';
import { checkVessel } from './checkVessel.ts';
import { toContainer } from './container.ts';
import type { Facts } from './facts.ts';
import type { Parts } from './parts.ts';
import type { Path } from './schemaAt.ts';
import { voidOf } from './voidOf.ts';

/** Whether there is a pump exactly where one is needed. */
export function checkPumpThere(parts: Parts, place: Path): readonly Problem[] {
  const { beds, has } = parts;
  const pumped = beds.findIndex((bed) => bed !== null && bed.mode !== 'inTank');
  const allBaskets = beds.length > 0 && beds.every((bed) => bed?.mode === 'inTank');
  const problems: Problem[] = [];
  if (pumped >= 0 && !has.pump) {
    problems.push({ code: 'pumpMissing', place: [...place, 'pump'], other: beds[pumped]?.name ?? '' });
  }
  if (allBaskets && has.pump) problems.push({ code: 'pumpUnneeded', place: [...place, 'pump'] });
  if (has.sump && !has.pump) problems.push({ code: 'sumpNeedsPump', place: [...place, 'sump'] });
  return problems;
}

/** Height of the intake against the water in the pump's vessel, at its highest and at its lowest. */
export function checkIntake(parts: Parts, facts: Facts, place: Path): readonly Problem[] {
  const vessel = parts.has.sump ? parts.sump : parts.tank;
  if (!vessel || !parts.pump || checkVessel(vessel, []).length > 0) return [];
  const { intake_mm } = parts.pump;
  const at = { place: [...place, 'pump', 'intake_mm'], given: String(intake_mm), unit: 'mm' };
  if (intake_mm >= vessel.full_mm) return [{ code: 'intakeAboveFull', ...at, max: vessel.full_mm }];
  const taken_L = takenByBeds_L(parts.beds, facts);
  const baskets = parts.has.sump ? [] : basketsOf(parts.beds, facts);
  if (taken_L === null || baskets === null) return [];
  const name = parts.has.sump ? 'sump' : 'tank';
  const lower: LowerVessel = {
    name,
    vessel: { ...vessel, container: toContainer(vessel.container) },
    baskets,
  };
  const full_L = waterBelow_L(lower, vessel.full_mm);
  // Baskets that leave no water are told by themselves.
  if (full_L <= 0) return [];
  if (taken_L >= full_L) {
    const full = [...place, name, 'full_mm'];
    return [{ code: 'bedsTakeTooMuch', place: full, given: String(full_L), min: taken_L, unit: 'L' }];
  }
  const low_mm = levelOf_mm(lower, full_L - taken_L);
  return intake_mm >= low_mm ? [{ code: 'intakeAboveLow', ...at, max: low_mm }] : [];
}

/**
 * Most water that all flood-and-drain beds hold at once, with the loosest media; null where a bed cannot be read
 * yet, for then nothing can be said.
 */
function takenByBeds_L(beds: readonly (BedFile | null)[], facts: Facts): number | null {
  let taken_L = 0;
  for (const bed of beds) {
    const held_L = bed === null ? null : moved_L(bed, facts);
    if (held_L === null) return null;
    taken_L += held_L;
  }
  return taken_L;
}

function moved_L(bed: BedFile, facts: Facts): number | null {
  if (bed.mode === 'inTank' || bed.mode === 'constantFlood') return 0;
  const void_frac = voidOf(bed, facts);
  if (!void_frac || bed.waterLine_mm === undefined || bed.drained_mm > bed.waterLine_mm) return null;
  if (checkContainer(bed.container, []).length > 0) return null;
  const container = toContainer(bed.container);
  const wet_L = volume_L(container, bed.waterLine_mm) - volume_L(container, bed.drained_mm);
  return wet_L * bed.count * void_frac.high;
}
