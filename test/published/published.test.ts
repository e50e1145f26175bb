/**
 * Every value in the YAML files beside this one was printed by somebody else. It stands here as printed, in the
 * printed unit; our answer is converted to that unit and compared. Nothing rewrites an expected value.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { dayNumber_d } from '../../src/core/calendar.ts';
import { dayLength_h } from '../../src/core/crops/dayLength.ts';
import { boxArea_m2, boxVolume_L } from '../../src/core/geometry/box.ts';
import { area_m2, depthAt_mm, rim_L, volume_L, width_mm } from '../../src/core/geometry/container.ts';
import { circleArea_m2, cylinderVolume_L } from '../../src/core/geometry/cylinder.ts';
import { dipTableArea_m2, dipTableDepth_mm, dipTableVolume_L } from '../../src/core/geometry/dipTable.ts';
import { ellipseArea_m2, ellipseVolume_L } from '../../src/core/geometry/ellipse.ts';
import { chord_mm, lyingCylinderVolume_L } from '../../src/core/geometry/lyingCylinder.ts';
import { obroundArea_m2, obroundVolume_L } from '../../src/core/geometry/obround.ts';
import { prismatoidVolume_L } from '../../src/core/geometry/prismatoid.ts';
import { measureAt_mm } from '../../src/core/geometry/taper.ts';
import { surfaceDiameter_mm } from '../../src/core/geometry/surface.ts';
import { taperedBoxVolume_L } from '../../src/core/geometry/taperedBox.ts';
import { taperedRoundDepth_mm, taperedRoundVolume_L } from '../../src/core/geometry/taperedRound.ts';
import { wetBed_L } from '../../src/core/hydraulics/bedCells.ts';
import { fullPipeFlow_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { drainTime_s } from '../../src/core/hydraulics/draining.ts';
import { fittingLoss_m, twoK } from '../../src/core/hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../../src/core/hydraulics/friction.ts';
import { blockedHead_mm } from '../../src/core/hydraulics/halfBlocked.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { bucket_s, energy_kWh_d, hydraulicPower_W } from '../../src/core/hydraulics/power.ts';
import { mostFlow_L_h, pumpHead_m } from '../../src/core/hydraulics/pumpCurve.ts';
import { reynolds, velocity_m_s } from '../../src/core/hydraulics/reynolds.ts';
import { settlerArea_m2 } from '../../src/core/hydraulics/settler.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import { waterDensity_kg_m3, waterViscosity_m2_s } from '../../src/core/hydraulics/waterProperties.ts';
import { weirFlow_L_h } from '../../src/core/hydraulics/weir.ts';
import { waterAt_L } from '../../src/core/plan/floodTraces.ts';
import { on_frac } from '../../src/core/plan/timer.ts';
import { ration_g_d } from '../../src/core/stocking/feed.ts';
import { massAfter_g, warmthTo_degC_d } from '../../src/core/stocking/growth.ts';
import {
  fallHeight_mm,
  fieldTransfer_g_h,
  oxygenAfterFall_mg_L,
  standardTransfer_g_h,
} from '../../src/core/water/aeration.ts';
import { tanAtUnionised_mg_L, unionised_frac } from '../../src/core/water/ammonia.ts';
import {
  carbonDioxide_mg_L,
  inorganicCarbon_mmol_L,
  pHAtCarbonDioxide,
  pHOfCarbonates,
  pK1,
  pK2,
  pKw,
} from '../../src/core/water/carbonate.ts';
import { afterChanges_mg_L, changeFor_frac } from '../../src/core/water/dilution.ts';
import { bufferDose_g, cyclingDose_g, dechlorinator_g, salt_g } from '../../src/core/water/dosing.ts';
import {
  alkalinityUsed_g_d,
  fedArea_m2,
  nitrifyingSurface_m2,
  presentSurface_m2,
  tanByFeed_g_d,
} from '../../src/core/water/nitrogen.ts';
import { inForm_mg_L } from '../../src/core/water/nitrogenForms.ts';
import { oxygenSaturation_mg_L, pressure_frac } from '../../src/core/water/oxygen.ts';
import { nitrifierOxygen_g_d, timeInHand_min } from '../../src/core/water/respiration.ts';
import { floodedBed_kg, load_kg_m2 } from '../../src/core/weight/full.ts';
import { compositions } from './compositions.ts';
import { coreFormulas } from './coreFormulas.ts';
import { type Input, inOurUnit, inPrintedUnit } from './printedUnits.ts';

const formulas: Readonly<Record<string, (...inputs: never[]) => number>> = {
  afterChanges_mg_L,
  alkalinityUsed_g_d,
  area_m2,
  blockedHead_mm,
  boxArea_m2,
  boxVolume_L,
  bucket_s,
  bufferDose_g,
  carbonDioxide_mg_L,
  changeFor_frac,
  chord_mm,
  circleArea_m2,
  cyclingDose_g,
  cylinderVolume_L,
  dayLength_h,
  dayNumber_d,
  dechlorinator_g,
  depthAt_mm,
  dipTableArea_m2,
  dipTableDepth_mm,
  dipTableVolume_L,
  drainTime_s,
  ellipseArea_m2,
  ellipseVolume_L,
  energy_kWh_d,
  fallHeight_mm,
  fedArea_m2,
  fieldTransfer_g_h,
  fittingLoss_m,
  floodedBed_kg,
  frictionFactor,
  frictionLoss_m,
  fullPipeFlow_L_h,
  hydraulicPower_W,
  inForm_mg_L,
  inorganicCarbon_mmol_L,
  load_kg_m2,
  lyingCylinderVolume_L,
  massAfter_g,
  measureAt_mm,
  mostFlow_L_h,
  nitrifierOxygen_g_d,
  nitrifyingSurface_m2,
  obroundArea_m2,
  obroundVolume_L,
  on_frac,
  orificeFlow_L_h,
  oxygenAfterFall_mg_L,
  oxygenSaturation_mg_L,
  pHAtCarbonDioxide,
  pHOfCarbonates,
  pK1,
  pK2,
  pKw,
  presentSurface_m2,
  pressure_frac,
  prismatoidVolume_L,
  pumpHead_m,
  ration_g_d,
  reynolds,
  rim_L,
  salt_g,
  settlerArea_m2,
  standardTransfer_g_h,
  standpipeFlow_L_h,
  standpipeHead_mm,
  surfaceDiameter_mm,
  tanAtUnionised_mg_L,
  tanByFeed_g_d,
  taperedBoxVolume_L,
  taperedRoundDepth_mm,
  taperedRoundVolume_L,
  timeInHand_min,
  twoK,
  unionised_frac,
  velocity_m_s,
  volume_L,
  warmthTo_degC_d,
  waterAt_L,
  waterDensity_kg_m3,
  waterViscosity_m2_s,
  weirFlow_L_h,
  wetBed_L,
  width_mm,
};

const input: z.ZodType<Input> = z.lazy(() =>
  z.union([z.number(), z.string(), z.array(input), z.record(z.string(), input)]),
);

const caseShape = z.strictObject({
  /** A formula of the core; or, with `of`, a composition of several (compositions.ts). */
  formula: z.string().optional(),
  of: z.string().optional(),
  inputs: z.array(input),
  expected: z.number(),
  unit: z.string(),
  source: z.string().min(10),
  place: z.string().min(3),
  tag: z.string().regex(/^(SEEN|as quoted by .+)$/),
  /** Largest allowed difference, in the printed unit. */
  within: z.number().positive(),
  why: z.string().min(10),
});

type Case = z.infer<typeof caseShape>;

const here = new URL('.', import.meta.url);
const files = readdirSync(here)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => ({ name, cases: casesIn(name) }));
const ran = new Map<Case, number>();

function casesIn(name: string): readonly Case[] {
  const text = readFileSync(new URL(name, here), 'utf8');
  return z.strictObject({ cases: z.array(caseShape).min(1) }).parse(parse(text)).cases;
}

function nameOf(one: Case): string {
  if ((one.formula === undefined) === (one.of === undefined)) {
    throw new Error(`${one.place}: a case names either a formula or, with of, a composition`);
  }
  return one.formula ?? one.of ?? '';
}

function sumOf(one: Case): (...inputs: never[]) => number {
  const name = nameOf(one);
  const sum = one.of === undefined ? formulas[name] : compositions[name]?.of;
  if (sum === undefined) throw new Error(`${name} is not a formula or a composition this test knows`);
  return sum;
}

/** The formulas that a case counts for. */
function checkedBy(one: Case): readonly string[] {
  return one.of === undefined ? [nameOf(one)] : (compositions[one.of]?.checks ?? []);
}

for (const { name, cases } of files) {
  describe(name, () => {
    test.each(cases.map((one) => [`${nameOf(one)}: ${one.source}, ${one.place}`, one] as const))(
      '%s',
      (_title, one) => {
        const ours = inPrintedUnit(
          sumOf(one)(...(one.inputs.map(inOurUnit) as never[])),
          nameOf(one),
          one.unit,
        );
        ran.set(one, Math.abs(ours - one.expected) / Math.abs(one.expected));
        expect(Math.abs(ours - one.expected), `got ${ours} ${one.unit}`).toBeLessThanOrEqual(one.within);
      },
    );
  });
}

describe('the whole set', () => {
  const all = files.flatMap((file) => file.cases);

  test('has run every case', () => {
    expect(all.filter((one) => !ran.has(one)).map((one) => `${nameOf(one)}: ${one.place}`)).toEqual([]);
  });

  test('uses every formula and every composition that this test knows', () => {
    const used = new Set(all.map(nameOf));
    const known = [...Object.keys(formulas), ...Object.keys(compositions)];
    expect(known.filter((name) => !used.has(name))).toEqual([]);
  });

  test('names only formulas that the core ships', () => {
    const shipped = new Set(coreFormulas());
    const named = [...Object.keys(formulas), ...Object.values(compositions).flatMap(({ checks }) => checks)];
    expect(named.filter((name) => !shipped.has(name))).toEqual([]);
  });

  test('has at least 250 counted cases from 20 sources', () => {
    expect(counted(all)).toBeGreaterThanOrEqual(250);
    expect(sourcesOf(all)).toBeGreaterThanOrEqual(20);
  });
});

/** So many values of one printed table count; the rest only run. */
const mostOfATable = 15;

function counted(cases: readonly Case[]): number {
  const tables = new Map<string, number>();
  for (const one of cases) tables.set(one.source, (tables.get(one.source) ?? 0) + 1);
  return [...tables.values()].reduce((sum, rows) => sum + Math.min(mostOfATable, rows), 0);
}

function sourcesOf(cases: readonly Case[]): number {
  return new Set(cases.map((one) => one.source)).size;
}

function formulasWith(wanted: (cases: number) => boolean): readonly string[] {
  const checked = files.flatMap((file) => file.cases).flatMap(checkedBy);
  return coreFormulas().filter((formula) => wanted(checked.filter((name) => name === formula).length));
}

function summary(name: string, cases: readonly Case[]): string {
  const worst = Math.max(...cases.map((one) => ran.get(one) ?? Number.NaN));
  const named = new Set(cases.flatMap(checkedBy)).size;
  const uncounted = cases.length - counted(cases);
  const beyond = uncounted === 0 ? '' : ` (and ${uncounted} beyond ${mostOfATable} of one table)`;
  return `${name}: ${counted(cases)} cases${beyond}, ${named} formulas, ${sourcesOf(cases)} sources, worst error ${(worst * 100).toPrecision(2)} %`;
}

afterAll(() => {
  for (const { name, cases } of files) console.log(summary(name, cases));
  console.log(
    summary(
      'all',
      files.flatMap((file) => file.cases),
    ),
  );
  console.log(
    `fewer than three outside values: ${formulasWith((cases) => 0 < cases && cases < 3).join(', ')}`,
  );
  console.log(`no outside value: ${formulasWith((cases) => cases === 0).join(', ')}`);
});
