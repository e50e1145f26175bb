/** Laws of whole plans: fish, feed, air and ammonia. More of what is hard on the water never makes it look better. */
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { waterFigures } from '../../src/core/plan/waterPlan.ts';
import type { Bed, System } from '../../src/core/system.ts';
import { atMost, equal } from './claims.ts';
import type { PlanLaw } from './law.ts';
import { fed, fedInLargerTank, fedMany, isThere, tableFish, value, withFish } from './planParts.ts';

const counts = ['fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned'] as const;

/** Each of these is no less in the second plan, where both have it. */
function noLess(before: Plan, after: Plan, keys: readonly string[]): void {
  for (const key of keys) {
    if (isThere(before, key) && isThere(after, key))
      atMost(value(before, key), value(after, key), key, 1e-12);
  }
}

const limits: readonly PlanLaw[] = [
  {
    name: 'a larger adult fish never means more fish',
    holds: (one) => {
      const { mass_g } = one.change;
      const other = planOf(withFish(one.system, { massAdult_g: mass_g }));
      const [small, large] = mass_g < tableFish.massAdult_g ? [other, fed(one)] : [fed(one), other];
      noLess(large, small, counts);
    },
  },
  {
    name: 'more wet media never means fewer fish by the bed',
    holds: (one) => {
      const { system, change } = one;
      const lower = (bed: Bed): Bed => ({
        ...bed,
        waterLine_mm: bed.drained_mm + (bed.waterLine_mm - bed.drained_mm) * change.share,
      });
      const less = planOf(withFish({ ...system, beds: system.beds.map(lower) }));
      noLess(less, fed(one), ['fishByBed']);
    },
  },
  {
    name: 'a larger tank never means fewer fish by the tank or by their mass',
    holds: (one) => noLess(fed(one), fedInLargerTank(one), ['fishByTank', 'fishByDensity']),
  },
  {
    name: 'the fish planned are the least of the three limits, and it says which',
    holds: (one) => {
      const plan = fed(one);
      const three = counts.slice(0, 3).map((key) => value(plan, key));
      const least = Math.min(...three);
      equal(value(plan, 'fishPlanned'), least);
      const notes = plan.figures['fishPlanned']?.notes ?? [];
      const binds = notes.find((note) => note.code.startsWith('binds.'))?.code.slice(6);
      equal(value(plan, binds ?? ''), least);
      for (const one of three) equal(Number.isInteger(one), true);
    },
  },
];

const loads: readonly PlanLaw[] = [
  {
    name: 'more fish never need less feed, water or oxygen, and never leave less ammonia or solids',
    holds: (one) => {
      noLess(fed(one), fedMany(one), [
        'feed_g_d',
        'fishNeed_L',
        'fishMass_kg',
        'oxygenDemand_g_h',
        'tan_g_d',
        'solids_g_d',
      ]);
    },
  },
  {
    name: 'more fish never have more time in hand',
    holds: (one) => {
      noLess(fedMany(one), fed(one), ['timeInHand_min']);
      equal(isThere(fedMany(one), 'timeInHand_min'), isThere(fed(one), 'timeInHand_min'));
    },
  },
  {
    name: 'more feed never makes less ammonia, uses less alkalinity or asks for less surface and air',
    holds: (one) => {
      const keeperRation_frac = value(fed(one), 'ration_frac') * one.change.by;
      const rich = planOf(withFish(one.system, { keeperRation_frac }));
      const keys = ['feed_g_d', 'tan_g_d', 'alkalinityUsed_g_d', 'nitrifyingSurface_m2', 'fedArea_m2'];
      noLess(fed(one), rich, [...keys, 'oxygenDemand_g_h', 'airPump_L_min', 'solids_g_d']);
    },
  },
  {
    name: 'a larger tank never leaves less time in hand',
    holds: (one) => noLess(fed(one), fedInLargerTank(one), ['timeInHand_min']),
  },
];

/** The same system in other water or at another height. */
function inWater(system: System, water: Partial<System['water']>): System {
  return { ...system, water: { ...system.water, ...water } };
}

const waters: readonly PlanLaw[] = [
  {
    name: 'warmer water never holds more oxygen, and never leaves more time in hand',
    holds: (one) => {
      const { water } = one.system;
      // The warm end counts: what was measured, or the top of what the fish like.
      const now_degC = Math.max(water.now_degC ?? 0, tableFish.species.good_degC.max);
      const warm = inWater(one.system, { now_degC: now_degC + (40 - now_degC) * one.change.share });
      noLess(planOf(withFish(warm)), fed(one), ['oxygenSaturation_mg_L', 'timeInHand_min']);
    },
  },
  {
    name: 'higher above the sea water never holds more oxygen, and never leaves more time in hand',
    holds: (one) => {
      const altitude_m = (one.system.altitude_m ?? 0) + 10 * one.change.more;
      const high = planOf(withFish({ ...one.system, altitude_m }));
      noLess(high, fed(one), ['oxygenSaturation_mg_L', 'timeInHand_min']);
    },
  },
  {
    name: 'a higher pH or warmer water never allows more ammonia',
    holds: ({ system, change: { share, by } }) => {
      const pH = 5 + 2.5 * share;
      const most = (water: Partial<System['water']>): number => {
        const figures = waterFigures(inWater(withFish(system), water), 1000);
        return figures.find((one) => one.key === 'tanMax_mg_L')?.value ?? Number.NaN;
      };
      const here = most({ pH, now_degC: 10 });
      atMost(most({ pH: pH + by, now_degC: 10 }), here, 'pH', 1e-12);
      atMost(most({ pH, now_degC: 10 * by }), here, 'warmth', 1e-12);
    },
  },
];

/** Laws of fish and what they live in. */
export const planFishLaws: readonly PlanLaw[] = [...limits, ...loads, ...waters];
