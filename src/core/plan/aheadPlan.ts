/** What comes next: fish that the estimates carry, growth, planting, an absence, and the stages a system can grow into. */
import type { System } from '../system.ts';
import { absenceFigures, absenceTables } from './absencePlan.ts';
import type { BedPlan } from './beds.ts';
import type { Figure, Table } from './figure.ts';
import { fishEstimates, fishLimitTables } from './fishEstimates.ts';
import { growthPlan } from './growthPlan.ts';
import type { Levels } from './levels.ts';
import { monthsPlan } from './monthsPlan.ts';
import { ornamentalFigures, ornamentalTables } from './ornamentalPlan.ts';
import { partsTables } from './partsPlan.ts';
import { plantingFigures, plantingTables } from './plantingPlan.ts';
import { stagePlan } from './stagePlan.ts';

/**
 * Figures and tables that look ahead, after those that they build on.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param levels its levels
 * @param before the plan's figures so far
 * @returns figures and tables
 * @source see the figures
 */
export function aheadPlan(
  system: System,
  beds: readonly BedPlan[],
  levels: Levels,
  before: readonly Figure[],
): { readonly figures: readonly Figure[]; readonly tables: readonly Table[] } {
  const worked = (key: string): number | null => before.find((one) => one.key === key)?.value ?? null;
  const estimates = fishEstimates(system, beds, before);
  const growth = growthPlan(system);
  const months = monthsPlan(system, beds, levels, growth.months, {
    oxygenSupply_g_h: worked('oxygenSupply_g_h'),
    bedCeiling_g_d: worked('bedCeiling_g_d'),
  });
  const stages = stagePlan(system, before);
  return {
    figures: [
      ...estimates,
      ...ornamentalFigures(system, levels),
      ...growth.figures,
      ...months.figures,
      ...plantingFigures(beds),
      ...stages.figures,
      ...absenceFigures(system, worked('feed_g_d')),
    ],
    tables: [
      ...fishLimitTables([...before, ...estimates]),
      ...ornamentalTables(system, levels),
      ...months.tables,
      ...plantingTables(beds),
      ...stages.tables,
      ...absenceTables(system, worked('feed_g_d')),
      ...partsTables(system, before),
    ],
  };
}
