/** The cases in which water kills, with the words that are printed for them. */
import { describe, expect, test } from 'vitest';
import type { Figure, Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import { figureValue } from '../../src/wording/figure.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { demoSystem, english } from '../demoSystems.ts';

const acid = demoSystem('hollow-lane-ibc-two-beds').system;

function figureOf(plan: Plan, key: string): Figure {
  const found = plan.figures[key];
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

function said(plan: Plan, key: string): readonly string[] {
  return figureOf(plan, key).notes.map((note) =>
    `${note.level}: ${noteSentence(note, english, 'metric')}`.replaceAll('\u00a0', ' '),
  );
}

function shown(plan: Plan, key: string): string {
  return figureValue(figureOf(plan, key), english, 'metric').replaceAll('\u00a0', ' ');
}

describe('a tank of low pH and tap water of high pH', () => {
  const plan = planOf(acid);

  test('gets a small step, never the usual quarter', () => {
    const largest = figureOf(plan, 'largestChange_frac').value ?? Number.NaN;
    expect(largest).toBeGreaterThan(0.05);
    expect(largest).toBeLessThan(0.25);
    expect(figureOf(plan, 'mixPH').value).toBeGreaterThan(6.9);
    expect(said(plan, 'largestChange_frac').at(-1)).toBe(
      'caution: The tank reads pH 6.6 and the tap pH 8.1. A quarter would bring the tank to pH 7.1 at once. Stop the feed first; change at most 11 % a day, and test ammonia and pH before each step.',
    );
    expect(shown(plan, 'largestChange_frac')).toBe('11 %');
  });

  test('with much ammonia in it is stopped before the ammonia turns to poison', () => {
    const sick: System = { ...acid, water: { ...acid.water, tan_mg_L: 12, pH: 6.4 } };
    const stopped = planOf(sick);
    expect(figureOf(stopped, 'mixUnionised_mg_L').value).toBeGreaterThan(0.05);
    expect(said(stopped, 'mixUnionised_mg_L').at(-1)).toMatch(
      /^stop: A change of a quarter would bring free ammonia to 0\.\d+ mg\/L, over the 0\.05 mg\/L that harm fish\. Do not pour it\./,
    );
  });

  test('frees ammonia where the tap water holds chloramine', () => {
    const { tap } = acid;
    if (tap === null || tap === undefined) throw new Error('the system has lost its tap');
    const ammonia = (disinfectant: 'chlorine' | 'chloramine'): number =>
      figureOf(planOf({ ...acid, tap: { ...tap, disinfectant } }), 'mixUnionised_mg_L').value ?? Number.NaN;
    expect(ammonia('chloramine')).toBeGreaterThan(ammonia('chlorine'));
    expect(said(plan, 'dechlorinator_g').join('\n')).toContain(
      'Chloramine does not leave by standing or airing.',
    );
    expect(said(plan, 'dechlorinator_g').join('\n')).toContain('it must read zero before the water goes in');
  });

  test('gets no figure while a reading is missing, but what to do until then', () => {
    const blind = planOf({ ...acid, tap: null });
    expect(shown(blind, 'largestChange_frac')).toBe('not known');
    expect(said(blind, 'largestChange_frac')).toEqual([
      'info: No figure: it takes pH, alkalinity and temperature of both the tank and the tap water. Until then a tenth, then wait a day and test.',
    ]);
  });
});

describe('a reading of nitrite', () => {
  const plan = planOf(acid);

  test('as N takes more than three times the salt of the same reading as NO2, and the words say so', () => {
    const numbers = figureOf(plan, 'saltPerNitrite_g').notes[0]?.numbers ?? {};
    const ratio = (numbers['asNitrogen_g'] ?? 0) / (numbers['asNO2_g'] ?? 1);
    expect(ratio).toBeCloseTo(3.28443, 5);
    expect(said(plan, 'saltPerNitrite_g')[0]).toBe(
      'info: Look on the kit for what it counts. A reading of 1 mg/L as NO2 takes 12 g; a reading of 1 mg/L as N (nitrite nitrogen) is 3.28 mg/L as NO2 and takes 40 g. Take off the chloride that is there.',
    );
    expect(said(plan, 'saltPerNitrite_g')[1]).toContain('only by the keeper');
  });

  test('stands in both forms side by side in the table', () => {
    const table = plan.tables.find((one) => one.key === 'saltByNitrite');
    expect(table?.columns.map((one) => one.key)).toEqual([
      'nitriteAsNO2',
      'nitriteAsN',
      'saltWithoutChloride',
      'saltStillWanted',
    ]);
    for (const [asNO2, asN] of table?.rows ?? []) expect(Number(asNO2) / Number(asN)).toBeCloseTo(3.28443, 5);
  });
});

describe('salt where the water holds chloride already', () => {
  test('is only what is still wanted, and the words say how far the chloride goes', () => {
    const salted = planOf({ ...acid, water: { ...acid.water, chloride_mg_L: 15 } });
    const rows = salted.tables.find((one) => one.key === 'saltByNitrite')?.rows ?? [];
    const still = new Map(rows.map((row) => [row[0], row[3]]));
    expect(still.get(1)).toBe(0);
    expect(Number(still.get(2))).toBeCloseTo(Number(rows.find((row) => row[0] === 2)?.[2]) / 4, 9);
    expect(said(salted, 'saltPerNitrite_g')[1]).toBe(
      'info: The water holds 15 mg/L of chloride already, which stands against 1.5 mg/L of nitrite, read as NO2. Add salt only for what goes beyond that.',
    );
  });
});

describe('pump and air stop', () => {
  test('and the time is the short end, not a waiting time', () => {
    const plan = planOf(acid);
    expect(figureOf(plan, 'timeInHand_min').safeSide).toBe('down');
    expect(said(plan, 'timeInHand_min')[0]).toContain('it is not a safe waiting time');
    const fasting = figureOf(plan, 'oxygenDemand_g_h').low ?? Number.NaN;
    expect(fasting).toBeGreaterThan(0);
  });

  test('and a fasting tank is no endless one: the time hangs on the fish, not on the feed', () => {
    const { fish } = acid;
    if (fish === null) throw new Error('the system has lost its fish');
    const fed = planOf(acid).figures['timeInHand_min']?.value;
    const unfed = planOf({ ...acid, fish: { ...fish, keeperRation_frac: 0 } }).figures['timeInHand_min']
      ?.value;
    expect(unfed).toBe(fed);
  });

  test('in green water there is no figure, but the reason', () => {
    const plan = planOf(demoSystem('pond-and-tray').system);
    expect(figureOf(plan, 'timeInHand_min').value).toBeNull();
    expect(said(plan, 'timeInHand_min')[0]).toContain(
      'green water makes oxygen by day and takes it at night',
    );
  });
});

describe('spare surface for nitrifiers', () => {
  test('is said in words and never makes room for fish', () => {
    const plan = planOf(acid);
    expect(said(plan, 'nitrifyingSurface_m2')).toEqual([
      'info: Nitrogen does not limit here: solids, oxygen and water do. Spare surface carries no more fish.',
    ]);
    const more = planOf({ ...acid, feedProtein_frac: 0.2 });
    expect(more.figures['fishPlanned']?.value).toBe(plan.figures['fishPlanned']?.value);
  });
});

describe('ammonia for starting without fish', () => {
  test('is never offered while fish are in the water', () => {
    const plan = planOf(acid);
    expect(figureOf(plan, 'cyclingDose_g').value).toBeNull();
    expect(plan.tables.map((one) => one.key)).not.toContain('cyclingDoseByProduct');
  });

  test('comes with who may touch it, and when to stop', () => {
    const empty = planOf({ ...acid, fish: null });
    expect(figureOf(empty, 'cyclingDose_g').value).toBeGreaterThan(0);
    const words = said(empty, 'cyclingDose_g').join('\n');
    expect(words).toContain('Adults only');
    expect(words).toContain('never near bleach');
    expect(words).toContain('Never above 4 mg/L');
  });
});

describe('a thiosulfate dose', () => {
  test('is larger than what empties pipelines', () => {
    const plan = planOf(demoSystem('bent-fork-stock-tank').system);
    const grams = figureOf(plan, 'dechlorinator_g').value ?? Number.NaN;
    const change_L = plan.figures['waterChange_L']?.value ?? Number.NaN;
    const each = (grams * 1000) / (0.8 * change_L);
    expect(each).toBeGreaterThan(1.9);
    // Standard Methods, 23rd edition, as quoted: 0.1 mL of a 10 % solution in 120 mL for 15 mg/L of chlorine.
    expect(each).toBeGreaterThan(10 / 0.12 / 15);
  });
});
