/**
 * Every value in the YAML files beside this one was printed by somebody else. It stands here as printed, in the
 * printed unit; our answer is converted to that unit and compared. Nothing rewrites an expected value.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { boxArea_m2, boxVolume_L } from '../../src/core/geometry/box.ts';
import { area_m2, depthAt_mm, rim_L, volume_L, width_mm } from '../../src/core/geometry/container.ts';
import { circleArea_m2, cylinderVolume_L } from '../../src/core/geometry/cylinder.ts';
import { dipTableDepth_mm, dipTableVolume_L } from '../../src/core/geometry/dipTable.ts';
import { ellipseArea_m2, ellipseVolume_L } from '../../src/core/geometry/ellipse.ts';
import { chord_mm, lyingCylinderVolume_L } from '../../src/core/geometry/lyingCylinder.ts';
import { obroundArea_m2, obroundVolume_L } from '../../src/core/geometry/obround.ts';
import { prismatoidVolume_L } from '../../src/core/geometry/prismatoid.ts';
import { measureAt_mm } from '../../src/core/geometry/taper.ts';
import { taperedBoxVolume_L } from '../../src/core/geometry/taperedBox.ts';
import { taperedRoundDepth_mm, taperedRoundVolume_L } from '../../src/core/geometry/taperedRound.ts';
import { fullPipeFlow_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { drainTime_s } from '../../src/core/hydraulics/draining.ts';
import { fittingLoss_m, twoK } from '../../src/core/hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../../src/core/hydraulics/friction.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { bucket_s, hydraulicPower_W } from '../../src/core/hydraulics/power.ts';
import { pumpHead_m } from '../../src/core/hydraulics/pumpCurve.ts';
import { reynolds, velocity_m_s } from '../../src/core/hydraulics/reynolds.ts';
import { settlerArea_m2 } from '../../src/core/hydraulics/settler.ts';
import { standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import { waterDensity_kg_m3, waterViscosity_m2_s } from '../../src/core/hydraulics/waterProperties.ts';
import { weirFlow_L_h } from '../../src/core/hydraulics/weir.ts';
import { ration_g_d } from '../../src/core/stocking/feed.ts';
import { fallHeight_mm, fieldTransfer_g_h } from '../../src/core/water/aeration.ts';
import { unionised_frac } from '../../src/core/water/ammonia.ts';
import { carbonDioxide_mg_L, pHAtCarbonDioxide, pK1, pK2, pKw } from '../../src/core/water/carbonate.ts';
import { bufferDose_g, dechlorinator_g, salt_g } from '../../src/core/water/dosing.ts';
import { alkalinityUsed_g_d } from '../../src/core/water/nitrogen.ts';
import { oxygenSaturation_mg_L, pressure_frac } from '../../src/core/water/oxygen.ts';
import { nitrifierOxygen_g_d } from '../../src/core/water/respiration.ts';
import { floodedBed_kg } from '../../src/core/weight/full.ts';
import { coreFormulas } from './coreFormulas.ts';
import { inOurUnit, inPrintedUnit } from './printedUnits.ts';

const formulas: Readonly<Record<string, (...inputs: never[]) => number>> = {
  alkalinityUsed_g_d,
  area_m2,
  boxArea_m2,
  boxVolume_L,
  bucket_s,
  bufferDose_g,
  carbonDioxide_mg_L,
  chord_mm,
  circleArea_m2,
  cylinderVolume_L,
  dechlorinator_g,
  depthAt_mm,
  dipTableDepth_mm,
  dipTableVolume_L,
  drainTime_s,
  ellipseArea_m2,
  ellipseVolume_L,
  fallHeight_mm,
  fieldTransfer_g_h,
  fittingLoss_m,
  floodedBed_kg,
  frictionFactor,
  frictionLoss_m,
  fullPipeFlow_L_h,
  hydraulicPower_W,
  lyingCylinderVolume_L,
  measureAt_mm,
  nitrifierOxygen_g_d,
  obroundArea_m2,
  obroundVolume_L,
  orificeFlow_L_h,
  oxygenSaturation_mg_L,
  pHAtCarbonDioxide,
  pK1,
  pK2,
  pKw,
  pressure_frac,
  prismatoidVolume_L,
  pumpHead_m,
  ration_g_d,
  reynolds,
  rim_L,
  salt_g,
  settlerArea_m2,
  standpipeFlow_L_h,
  standpipeHead_mm,
  taperedBoxVolume_L,
  taperedRoundDepth_mm,
  taperedRoundVolume_L,
  twoK,
  unionised_frac,
  velocity_m_s,
  volume_L,
  waterDensity_kg_m3,
  waterViscosity_m2_s,
  weirFlow_L_h,
  width_mm,
};

const measures = z.record(z.string(), z.union([z.number(), z.string()]));

const caseShape = z.strictObject({
  formula: z.string(),
  inputs: z.array(z.union([z.number(), z.string(), measures, z.array(measures)])),
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

for (const { name, cases } of files) {
  describe(name, () => {
    test.each(cases.map((one) => [`${one.formula}: ${one.source}, ${one.place}`, one] as const))(
      '%s',
      (_title, one) => {
        const formula = formulas[one.formula];
        if (formula === undefined) throw new Error(`${one.formula} is not a formula this test knows`);
        const ours = inPrintedUnit(formula(...(one.inputs.map(inOurUnit) as never[])), one.formula, one.unit);
        ran.set(one, Math.abs(ours - one.expected) / Math.abs(one.expected));
        expect(Math.abs(ours - one.expected), `got ${ours} ${one.unit}`).toBeLessThanOrEqual(one.within);
      },
    );
  });
}

describe('the whole set', () => {
  const all = files.flatMap((file) => file.cases);

  test('has run every case', () => {
    expect(all.filter((one) => !ran.has(one)).map((one) => `${one.formula}: ${one.place}`)).toEqual([]);
  });

  test('uses every formula that this test knows', () => {
    const used = new Set(all.map((one) => one.formula));
    expect(Object.keys(formulas).filter((name) => !used.has(name))).toEqual([]);
  });

  test('names only formulas that the core ships', () => {
    const shipped = new Set(coreFormulas());
    expect(Object.keys(formulas).filter((name) => !shipped.has(name))).toEqual([]);
  });
});

afterAll(() => {
  for (const { name, cases } of files) {
    const worst = Math.max(...cases.map((one) => ran.get(one) ?? Number.NaN));
    const sources = new Set(cases.map((one) => one.source)).size;
    const named = new Set(cases.map((one) => one.formula)).size;
    console.log(
      `${name}: ${cases.length} cases, ${named} formulas, ${sources} sources, worst error ${(worst * 100).toPrecision(2)} %`,
    );
  }
  const count = (formula: string) =>
    files.flatMap((file) => file.cases).filter((one) => one.formula === formula).length;
  const listed = (wanted: (cases: number) => boolean) =>
    coreFormulas()
      .filter((formula) => wanted(count(formula)))
      .join(', ');
  console.log(`fewer than three outside values: ${listed((cases) => 0 < cases && cases < 3)}`);
  console.log(`no outside value: ${listed((cases) => cases === 0)}`);
});
