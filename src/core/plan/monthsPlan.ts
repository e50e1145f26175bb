/** The months to come side by side: mass of all fish, their feed, and the first limit that the feed meets. */
import type { FishStock } from '../fish.ts';
import type { Note } from '../note.ts';
import { rationGrowOut_frac, rationFrom_g } from '../constants.ts';
import { densityCap_kg_L } from '../stocking/limits.ts';
import { leafyFeed_g_m2_d } from '../water/waterConstants.ts';
import type { System } from '../system.ts';
import type { BedPlan } from './beds.ts';
import { conditionsOf } from './conditions.ts';
import type { Figure, Table } from './figure.ts';
import { feeds, type GrownMonth } from './growthPlan.ts';
import type { Levels } from './levels.ts';
import { loadOf } from './nitrogenPlan.ts';
import { demandFigure } from './oxygenDemand.ts';
import { figure, noFigure, numberOf, quantity } from './write.ts';

/** What the months are held against; null where the plan has no such figure. */
export type MonthLimits = {
  readonly oxygenSupply_g_h: number | null;
  readonly bedCeiling_g_d: number | null;
};

type Month = GrownMonth & {
  readonly feedLow_g_d: number | null;
  readonly feedHigh_g_d: number | null;
  readonly meets: string | null;
};

/**
 * The table of months and the month when the feed first meets a limit.
 * Feed at the planned ration for the quickest growth, against leafy beds, fish mass, air stones and still beds.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param levels its levels
 * @param grown months of growth; none gives nothing
 * @param limits figures of the plan so far
 * @returns feedLimitMonths and the table fishMonths
 * @valid as growthPlan
 * @source fao589 for ration, mass and feed of leafy beds; see the other figures
 */
export function monthsPlan(
  system: System,
  beds: readonly BedPlan[],
  levels: Levels,
  grown: readonly GrownMonth[],
  limits: MonthLimits,
): { readonly figures: readonly Figure[]; readonly tables: readonly Table[] } {
  const { fish } = system;
  if (fish === null || grown.length === 0) return { figures: [], tables: [] };
  const checks = checksOf(system, fish, beds, levels, limits);
  const months = grown.map((one) => monthOf(fish, one, checks));
  return { figures: [limitFigure(months)], tables: [tableOf(fish, months)] };
}

type Check = {
  readonly code: string;
  readonly isMet: (mass_g: number, feed_g_d: number) => boolean;
};

function checksOf(
  system: System,
  fish: FishStock,
  beds: readonly BedPlan[],
  levels: Levels,
  limits: MonthLimits,
): readonly Check[] {
  const bed_m2 = beds.reduce((sum, one) => sum + one.surface_m2, 0);
  const cap_kg = densityCap_kg_L(levels.tankFull_L) * levels.tankLow_L;
  const at = conditionsOf(system);
  const pumped = beds.filter((one) => one.bed.mode !== 'inTank').length;
  const still = beds.filter((one) => one.bed.mode === 'constantFlood').length;
  const { oxygenSupply_g_h: supply_g_h, bedCeiling_g_d: ceiling_g_d } = limits;
  const demand_g_h = (massNow_g: number, feed_g_d: number): number =>
    'code' in at
      ? 0
      : numberOf(demandFigure({ ...fish, massNow_g }, loadOf(system, feed_g_d), at.water_degC));
  const tan_g_d = (feed_g_d: number): number => loadOf(system, feed_g_d)?.tan_g_d ?? 0;
  return [
    { code: 'meetsLeafyBeds', isMet: (_, feed_g_d) => feed_g_d > bed_m2 * leafyFeed_g_m2_d.high },
    { code: 'meetsDensity', isMet: (mass_g) => (fish.present * mass_g) / 1000 > cap_kg * (1 + 1e-9) },
    {
      code: 'meetsOxygen',
      isMet: (mass_g, feed) => supply_g_h !== null && demand_g_h(mass_g, feed) > supply_g_h,
    },
    {
      code: 'meetsStillBeds',
      isMet: (_, feed) => ceiling_g_d !== null && (tan_g_d(feed) * still) / pumped > ceiling_g_d,
    },
  ];
}

/** Water in which these fish are in danger goes before every limit of feed. */
function waterMeets(fish: FishStock, month: GrownMonth): string | null {
  if (month.water_degC < fish.species.alive_degC.min) return 'meetsCold';
  return month.water_degC > fish.species.callAbove_degC ? 'meetsHeat' : null;
}

/** Colder or warmer than the fish are fed: none. Lighter than the ration speaks of: no figure. */
function feed_g_d(fish: FishStock, month: GrownMonth, mass_g: number, end: 'low' | 'high'): number | null {
  if (!feeds(fish, month)) return 0;
  const own = fish.keeperRation_frac;
  if (own === null && mass_g < rationFrom_g.value) return null;
  return fish.present * mass_g * (own ?? rationGrowOut_frac[end]);
}

function monthOf(fish: FishStock, month: GrownMonth, checks: readonly Check[]): Month {
  const planned_g_d = feed_g_d(fish, month, month.high_g, 'low');
  const limit = checks.find((one) => planned_g_d !== null && one.isMet(month.high_g, planned_g_d));
  const met = waterMeets(fish, month) ?? limit?.code ?? null;
  return {
    ...month,
    feedLow_g_d: feed_g_d(fish, month, month.low_g, 'low'),
    feedHigh_g_d: feed_g_d(fish, month, month.high_g, 'high'),
    meets: met,
  };
}

function limitFigure(months: readonly Month[]): Figure {
  const index = months.findIndex((one) => one.meets !== null);
  const first = months[index];
  const met = first?.meets ?? null;
  if (met === null) {
    const none: Note = { code: 'noLimitMet', level: 'info', numbers: {}, source: 'fao589' };
    return noFigure('feedLimitMonths', 'months', none);
  }
  const meets: Note = {
    code: met,
    level: 'caution',
    numbers: {},
    source: met === 'meetsOxygen' || met === 'meetsStillBeds' ? 'fromMemory' : 'fao589',
  };
  return figure({
    key: 'feedLimitMonths',
    value: index,
    unit: 'months',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      {
        kind: 'simulated',
        gives: quantity('n', 'feedLimitMonths', index, 'months'),
        formula: '',
        symbols: [],
        byHand: 'no',
        source: 'iwamaTautz1981',
      },
    ],
    notes: [meets],
  });
}

function tableOf(fish: FishStock, months: readonly Month[]): Table {
  return {
    key: 'fishMonths',
    columns: [
      { key: 'month', unit: 'ratio' },
      { key: 'waterTemperature', unit: 'degC' },
      { key: 'massLow', unit: 'g' },
      { key: 'massHigh', unit: 'g' },
      { key: 'fishMassHigh', unit: 'kg' },
      { key: 'feedLow', unit: 'g_d' },
      { key: 'feedHigh', unit: 'g_d' },
      { key: 'meets', unit: 'ratio' },
    ],
    rows: months.map((one) => [
      one.label,
      one.water_degC,
      one.low_g,
      one.high_g,
      (fish.present * one.high_g) / 1000,
      one.feedLow_g_d,
      one.feedHigh_g_d,
      one.meets,
    ]),
  };
}
