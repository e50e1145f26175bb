/** The weeks of the start-up, its signs day by day, and its first dose by product. */
import type { System } from '../system.ts';
import { ammoniaProducts, cyclingDose_g } from '../water/dosing.ts';
import { cyclingStart_mg_L, nitrifiersSlowBelow_degC } from '../water/waterConstants.ts';
import type { Table } from './figure.ts';

/** FAO's three to five weeks are for warm water, the six to eight of Kentucky reach the long end. */
const weeks = { warm: { low: 3, high: 6 }, cool: { low: 4, high: 8 } } as const;
const warmFrom_degC = 22;
/** FAO: ammonia oxidisers show 5 to 7 days after the first dose, and nitrite rises as many days later. */
const signDays_d = { from: 5, to: 7 } as const;

/**
 * Weeks until the bacteria have settled, by the warmth of the water.
 * @param now_degC as measured; null counts as cool
 * @returns the range in weeks; null where it is too cold to promise any
 * @source fao589 chapter 5, kentuckyAquaponics2021
 */
export function cyclingWeeks(
  now_degC: number | null,
): { readonly low: number; readonly high: number } | null {
  if (now_degC !== null && now_degC < nitrifiersSlowBelow_degC.value) return null;
  return now_degC !== null && warmFrom_degC <= now_degC ? weeks.warm : weeks.cool;
}

/**
 * What to expect on which day, and grams of each ammonia product that bring the water to the first dose.
 * @param system a checked system
 * @param systemWater_L all water
 * @returns two tables, or none where fish are present
 * @source fao589 chapter 5 for the days; molarMasses for the grams
 */
export function startUpTables(system: System, systemWater_L: number): readonly Table[] {
  if ((system.fish?.present ?? 0) > 0) return [];
  return [
    signsTable(system),
    {
      key: 'cyclingDoseByProduct',
      columns: [
        { key: 'product', unit: 'ratio' },
        { key: 'firstDose', unit: 'g' },
      ],
      rows: ammoniaProducts.map((one) => [
        one.key,
        cyclingDose_g(systemWater_L, cyclingStart_mg_L.value, one.nitrogen_frac),
      ]),
    },
  ];
}

/** Days of the first dose and of each sign that follows it. Without a promise where the water is cold. */
function signsTable(system: System): Table {
  const range = cyclingWeeks(system.water.now_degC);
  const { low, high } = range ?? weeks.cool;
  const signs = [
    ['firstDose', 1, 1],
    ['ammoniaFalls', signDays_d.from, signDays_d.to],
    ['nitriteRises', 2 * signDays_d.from, 2 * signDays_d.to],
    ['nitrateShows', 2 * signDays_d.from, 7 * low],
    ['readyForFish', 7 * low, 7 * high],
  ] as const;
  return {
    key: 'startUpDays',
    columns: [
      { key: 'sign', unit: 'ratio' },
      { key: 'fromDay', unit: 'd' },
      { key: 'toDay', unit: 'd' },
    ],
    rows: signs.map(([sign, from, to]) =>
      range === null && sign !== 'firstDose' ? [sign, null, null] : [sign, from, to],
    ),
  };
}
