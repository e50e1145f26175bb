/** What laws of plans ask of a plan, and how they change a system. */
import type { FishStock } from '../../src/core/fish.ts';
import { volume_L } from '../../src/core/geometry/container.ts';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { Bed, System, Vessel } from '../../src/core/system.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { content } from '../demoSystems.ts';
import { scaled } from '../systemArbitrary.ts';
import type { PlanCase } from './law.ts';

/** The value of a figure that has to be there. */
export function value(plan: Plan, key: string): number {
  const found = plan.figures[key]?.value;
  if (found === undefined || found === null) throw new Error(`${plan.systemId} has no ${key}`);
  return found;
}

export function isThere(plan: Plan, key: string): boolean {
  return typeof plan.figures[key]?.value === 'number';
}

/** Litres in a vessel below a height, baskets and all. */
export function standing_L(vessel: Vessel, depth_mm: number): number {
  return volume_L(vessel.container, depth_mm) * vessel.count;
}

/** Stone that baskets hold below a height over the tank's floor, as much as the tightest heap. */
export function stone_L(beds: readonly Bed[], depth_mm: number): number {
  return beds
    .filter((bed) => bed.mode === 'inTank')
    .reduce((sum, bed) => {
      const wet_mm = Math.min(bed.mediaDepth_mm, Math.max(0, depth_mm - bed.above_mm));
      return sum + volume_L(bed.container, wet_mm) * bed.count * (1 - bed.media.void_frac.low);
    }, 0);
}

/** Water in the pump's vessel below a height, the media of baskets left out. */
export function waterUnder_L(system: System, depth_mm: number): number {
  const stone = system.sump ? 0 : stone_L(system.beds, depth_mm);
  return standing_L(system.sump ?? system.tank, depth_mm) - stone;
}

/** What stands in the pumped beds, with the loosest media: to the line, or to the drain. */
export function inBeds_L(system: System, state: 'flooded' | 'drained' | 'siphonedDry'): number {
  return system.beds
    .filter((bed) => bed.mode !== 'inTank')
    .reduce((sum, bed) => {
      const drains = bed.mode !== 'constantFlood';
      const rest_mm = state === 'siphonedDry' ? 0 : drains ? bed.drained_mm : bed.waterLine_mm;
      const at_mm = state === 'flooded' ? bed.waterLine_mm : rest_mm;
      return sum + volume_L(bed.container, at_mm) * bed.count * bed.media.void_frac.high;
    }, 0);
}

/** Water of a tank that overflows into a sump: it stands at its full line whatever the beds do. */
export function stillTank_L(system: System): number {
  return system.sump
    ? standing_L(system.tank, system.tank.full_mm) - stone_L(system.beds, system.tank.full_mm)
    : 0;
}

/** Fish for the table, for laws of limits and rations. */
export const tableFish: FishStock = fishOf('nileTilapia');

function fishOf(kind: string): FishStock {
  const raw = {
    id: 'x',
    name: 'x',
    tank: { container: { shape: 'box', length_mm: 900, width_mm: 900, depth_mm: 900 }, full_mm: 800 },
    beds: [],
    fish: { kind, present: 10, massNow_g: 100, massAdult_g: 500 },
  };
  const bed = {
    name: 'x',
    container: { shape: 'box', length_mm: 300, width_mm: 300, depth_mm: 860 },
    mode: 'inTank',
    media: Object.keys(content.media)[0],
    mediaDepth_mm: 850,
    above_mm: 0,
  };
  const read = toSystem({ ...raw, beds: [bed] }, content);
  if (!('system' in read) || read.system.fish === null) throw new Error(JSON.stringify(read));
  return read.system.fish;
}

/** The system with so many of those fish. */
export function withFish(system: System, more: Partial<FishStock> = {}): System {
  return { ...system, fish: { ...tableFish, ...more } };
}

const kept = new WeakMap<PlanCase, Map<string, Plan>>();

/** A plan of a changed system that several laws ask for: worked out once for each case. */
function once(one: PlanCase, change: string, system: () => System): Plan {
  const plans = kept.get(one) ?? new Map<string, Plan>();
  kept.set(one, plans);
  const plan = plans.get(change) ?? planOf(system());
  plans.set(change, plan);
  return plan;
}

/** The plan with those fish. */
export function fed(one: PlanCase): Plan {
  return once(one, 'fed', () => withFish(one.system));
}

/** The plan with those fish in a tank of the same form, larger in all its lengths. */
export function fedInLargerTank(one: PlanCase): Plan {
  return once(one, 'larger', () => {
    const { system, change } = one;
    const { container, full_mm } = system.tank;
    const tank = { ...system.tank, container: scaled(container, change.by), full_mm: full_mm * change.by };
    return withFish({ ...system, tank });
  });
}

/** The plan with more of those fish. */
export function fedMany(one: PlanCase): Plan {
  return once(one, 'many', () => withFish(one.system, { present: tableFish.present + one.change.more }));
}
