/** Laws of whole plans: where the water is, how high it stands, and what size does to it. */
import { rim_L } from '../../src/core/geometry/container.ts';
import { bedPlans } from '../../src/core/plan/beds.ts';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System, Vessel } from '../../src/core/system.ts';
import { scaled } from '../systemArbitrary.ts';
import { atMost, finite, less, near } from './claims.ts';
import type { PlanLaw } from './law.ts';
import { inBeds_L, isThere, stillTank_L, stone_L, value, waterUnder_L } from './planParts.ts';

/** To 1e-9 of the litres at hand, or of a litre where there are fewer. */
function alike(ours: number, theirs: number, share = 1e-9, what = ''): void {
  near(ours, theirs, share * Math.max(1, Math.abs(theirs)), what);
}

const most_L = (plan: Plan): number => plan.figures['systemWater_L']?.high ?? Number.NaN;
const low_mm = (system: System, plan: Plan): number => value(plan, system.sump ? 'sumpLow_mm' : 'tankLow_mm');

const conserved: readonly PlanLaw[] = [
  {
    name: 'at the full line all vessels together hold the water of the system',
    holds: ({ system, plan }) => {
      const lower = system.sump ?? system.tank;
      const lower_L = waterUnder_L(system, lower.full_mm);
      alike(most_L(plan), lower_L + stillTank_L(system) + inBeds_L(system, 'drained'));
    },
  },
  {
    name: 'with all beds full they hold the same',
    holds: ({ system, plan }) => {
      const lower_L = waterUnder_L(system, low_mm(system, plan));
      alike(lower_L + stillTank_L(system) + inBeds_L(system, 'flooded'), most_L(plan));
    },
  },
  {
    name: 'after a power cut they hold the same, all of it below',
    holds: ({ system, plan }) => {
      alike(value(plan, 'afterPowerCut_L') + stillTank_L(system), most_L(plan));
      if (!isThere(plan, 'freeboard_mm')) return;
      const { container } = system.sump ?? system.tank;
      const lower_L = waterUnder_L(system, container.depth_mm - value(plan, 'freeboard_mm'));
      alike(lower_L + stillTank_L(system) + inBeds_L(system, 'siphonedDry'), most_L(plan));
    },
  },
  {
    name: 'where a power cut spills, the litres that run over are those that find no room',
    holds: ({ system, plan }) => {
      const spills = plan.figures['freeboard_mm']?.notes.find((note) => note.code === 'powerCutSpills');
      if (spills === undefined) return;
      const { container, count } = system.sump ?? system.tank;
      const stone = system.sump ? 0 : stone_L(system.beds, container.depth_mm);
      const over_L = spills.numbers['over_L'] ?? Number.NaN;
      alike(over_L, value(plan, 'afterPowerCut_L') - (rim_L(container) * count - stone));
      less(0, over_L);
    },
  },
  {
    name: 'what a blocked return leaves is what lies below the intake',
    holds: ({ system, plan }) => {
      if (system.pump === null) return;
      alike(value(plan, 'blockedReturn_L'), waterUnder_L(system, system.pump.intake_mm));
    },
  },
  {
    name: 'what a bed holds is what moves and what stays',
    holds: ({ system }) => {
      for (const bed of bedPlans(system)) {
        for (const end of ['low', 'likely', 'high'] as const) {
          alike(bed.moved_L[end] + bed.left_L[end], bed.held_L[end]);
        }
      }
    },
  },
];

const ordered: readonly PlanLaw[] = [
  {
    name: 'levels stand in their order: intake, low, full, rim',
    holds: ({ system, plan }) => {
      const { full_mm, container } = system.sump ?? system.tank;
      atMost(low_mm(system, plan), full_mm, 'low and full', 1e-12);
      atMost(full_mm, container.depth_mm, 'full and rim');
      atMost(value(plan, 'tankLow_L'), value(plan, 'tankFull_L'), 'litres', 1e-12);
      if (system.pump) less(system.pump.intake_mm, low_mm(system, plan), 'intake');
    },
  },
  {
    name: 'after a power cut the water stands between full line and rim, or runs over',
    holds: ({ system, plan }) => {
      const { container, full_mm } = system.sump ?? system.tank;
      if (!isThere(plan, 'freeboard_mm')) return;
      const freeboard_mm = value(plan, 'freeboard_mm');
      atMost(0, freeboard_mm);
      atMost(full_mm, container.depth_mm - freeboard_mm, '', 1e-12);
    },
  },
  {
    name: 'the order of the beds changes no level and no litre',
    holds: ({ system, plan }) => {
      if (system.beds.length < 2) return;
      const turned = planOf({ ...system, beds: [...system.beds].reverse() });
      for (const [key, figure] of Object.entries(plan.figures)) {
        if (key.startsWith('bed') || figure.value === null) continue;
        alike(value(turned, key), figure.value, 1e-9, key);
      }
    },
  },
  {
    name: 'no level falls lower with floods spread than with all of them together',
    holds: ({ plan }) => {
      const lowest = plan.figures['levelLowest_mm'];
      if (lowest === undefined || lowest.value === null) return;
      atMost(lowest.value, lowest.high ?? 0);
      const trace = plan.traces.find((one) => one.key.endsWith('Level_mm'))?.points ?? [];
      for (const [, level] of trace) atMost(lowest.value * (1 - 1e-9) - 1e-6, level);
    },
  },
  {
    name: 'in every trace time goes on and levels stay between floor and rim',
    holds: ({ system, plan }) => {
      for (const { key, points } of plan.traces) {
        const bed = /^bed(\d+)/.exec(key)?.[1];
        const vessel = bed === undefined ? (system.sump ?? system.tank) : system.beds[Number(bed) - 1];
        let before_s = 0;
        for (const [time_s, level] of points) {
          finite(level, key);
          atMost(0, level, key);
          atMost(level, (vessel?.container.depth_mm ?? 0) + 1e-9, key);
          atMost(before_s, time_s, key);
          before_s = time_s;
        }
      }
    },
  },
];

/** The same system in a world where every length is twice as long. */
function twiceAsLong(system: System): System {
  const vessel = (of: Vessel): Vessel => ({ ...doubled(of), container: scaled(of.container, 2) });
  return {
    ...system,
    tank: vessel(system.tank),
    sump: system.sump ? vessel(system.sump) : null,
    beds: system.beds.map((bed) => ({ ...doubled(bed), container: scaled(bed.container, 2) })),
    pump: system.pump ? doubled(system.pump) : null,
  };
}

function doubled<T extends object>(of: T): T {
  const measures = Object.entries(of).map(([key, one]) => [
    key,
    key.endsWith('_mm') && typeof one === 'number' ? one * 2 : one,
  ]);
  return Object.fromEntries(measures) as T;
}

/** What stands over a lip follows the pump's flow, which stays the same when vessels grow. */
const standsOverLip = /(overLip|halfBlocked|levelLowest)_mm$/;

/** What follows the fish, or goes by the surface and not by a length. */
const byFish = new Set(['fishNeed_L', 'mineralBarrel_L', 'ornamentalLength_mm']);

const bySize: readonly PlanLaw[] = [
  {
    name: 'twice all lengths is eight times all litres and twice all levels',
    holds: ({ system, plan }) => {
      const large = planOf(twiceAsLong(system));
      for (const { key, value: of, unit } of Object.values(plan.figures)) {
        // What the fish need depends on the fish; water over a lip does not grow with the pipe.
        if (byFish.has(key) || standsOverLip.test(key) || of === null || !isThere(large, key)) continue;
        if (unit === 'L' || unit === 'L_d') alike(value(large, key), 8 * of, 1e-8, key);
        if (unit === 'mm') alike(value(large, key), 2 * of, 1e-8, key);
      }
    },
  },
  {
    name: 'twice as many equal vessels and beds hold twice as much, at the same levels',
    holds: ({ system, plan }) => {
      const twice = <T extends { readonly count: number }>(of: T): T => ({ ...of, count: of.count * 2 });
      const sump = system.sump ? twice(system.sump) : null;
      const more = planOf({ ...system, tank: twice(system.tank), sump, beds: system.beds.map(twice) });
      for (const { key, value: of, unit } of Object.values(plan.figures)) {
        if (byFish.has(key) || key === 'levelLowest_mm' || of === null || !isThere(more, key)) continue;
        if (unit === 'L') alike(value(more, key), 2 * of, 1e-8, key);
        if (unit === 'mm') alike(value(more, key), of, 1e-8, key);
      }
    },
  },
  {
    name: 'with more bends or a longer pipe the pump gives no more',
    holds: ({ system, plan, change }) => {
      const pipe = system.pump?.pipe ?? null;
      if (system.pump === null || pipe === null || (system.pump.curve ?? null) === null) return;
      const flow = (of: Plan): number => of.figures['pumpFlow_L_h']?.value ?? 0;
      const withPipe = (more: object): System => ({
        ...system,
        pump: system.pump && { ...system.pump, pipe: { ...pipe, ...more } },
      });
      const bent = planOf(withPipe({ bends: pipe.bends + 1 + (change.more % 10) }));
      atMost(flow(bent), flow(plan), 'bends', 1e-9);
      const long = planOf(withPipe({ length_m: pipe.length_m * change.by }));
      atMost(flow(long), flow(plan), 'length', 1e-9);
    },
  },
];

/** Laws of the water in a plan. */
export const planWaterLaws: readonly PlanLaw[] = [...conserved, ...ordered, ...bySize];
