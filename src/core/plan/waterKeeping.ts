/** Everything that keeps the water fit to live in: air, nitrogen, doses, changes, start-up, loss. */
import { waterChange_frac } from '../constants.ts';
import type { Range, System } from '../system.ts';
import { airFigures } from './airPlan.ts';
import type { BedPlan } from './beds.ts';
import { changeFigures } from './changePlan.ts';
import { chlorineTables } from './chlorinePlan.ts';
import { dosingFigures, dosingTables } from './dosingPlan.ts';
import type { Figure, Table } from './figure.ts';
import type { Levels } from './levels.ts';
import { lossFigures } from './lossPlan.ts';
import { loadOf, nitrogenFigures } from './nitrogenPlan.ts';
import { startUpFigures } from './startUpPlan.ts';
import { startUpTables } from './startUpTables.ts';

/**
 * Figures and tables of water keeping, after those that they build on.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param levels its levels
 * @param before the plan's figures so far: feed, planned fish, limit of ammonia
 * @param flow_L_h what the pump really gives; null where nothing is pumped or the pump is too weak
 * @returns figures and tables
 * @source see the figures
 */
export function waterKeeping(
  system: System,
  beds: readonly BedPlan[],
  levels: Levels,
  before: readonly Figure[],
  flow_L_h: Range | null,
): { readonly figures: readonly Figure[]; readonly tables: readonly Table[] } {
  const worked = (key: string): number | null => before.find((one) => one.key === key)?.value ?? null;
  const wetMedia_L = beds.reduce((total, bed) => total + bed.wetMedia_L, 0);
  const load = loadOf(system, worked('feed_g_d'));
  const { systemWater_L } = levels;
  return {
    figures: [
      ...airFigures(system, levels, load, flow_L_h),
      ...nitrogenFigures(system, beds, wetMedia_L, load),
      ...dosingFigures(system, systemWater_L, load),
      ...changeFigures(system, systemWater_L, worked('tanMax_mg_L')),
      ...startUpFigures(system, systemWater_L, worked('fishPlanned')),
      ...lossFigures(systemWater_L),
    ],
    tables: [
      ...dosingTables(systemWater_L, load, system.water.chloride_mg_L ?? null),
      ...chlorineTables(system.tap ?? null, systemWater_L * waterChange_frac.quarter),
      ...startUpTables(system, systemWater_L),
    ],
  };
}
