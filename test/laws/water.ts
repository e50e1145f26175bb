/** What the balances of the water obey, whatever goes in. */
import fc from 'fast-check';
import { tanAtUnionised_mg_L, unionised_frac } from '../../src/core/water/ammonia.ts';
import {
  fallHeight_mm,
  fieldTransfer_g_h,
  oxygenAfterFall_mg_L,
  standardTransfer_g_h,
} from '../../src/core/water/aeration.ts';
import {
  carbonDioxide_mg_L,
  inorganicCarbon_mmol_L,
  pHAtCarbonDioxide,
  pHOfCarbonates,
} from '../../src/core/water/carbonate.ts';
import { afterChanges_mg_L, changeFor_frac } from '../../src/core/water/dilution.ts';
import {
  bufferDose_g,
  buffers,
  cyclingDose_g,
  dechlorinator_g,
  salt_g,
} from '../../src/core/water/dosing.ts';
import {
  nitrifyingSurface_m2,
  presentSurface_m2,
  tanByFeed_g_d,
  tanBySplit_g_d,
} from '../../src/core/water/nitrogen.ts';
import { inForm_mg_L, type NitrogenForm } from '../../src/core/water/nitrogenForms.ts';
import { oxygenSaturation_mg_L, pressure_frac } from '../../src/core/water/oxygen.ts';
import {
  bedCeiling_g_d,
  routineRespiration_mg_kg_h,
  timeInHand_min,
} from '../../src/core/water/respiration.ts';
import { largestChange_frac, mixOf, unionisedOfMix_mg_L, type Water } from '../../src/core/water/waterMix.ts';
import { atMost, equal, less, near } from './claims.ts';
import { type FormulaLaw, law } from './law.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const warmth = between(0, 39);

/** Waters of tanks and taps: their alkalinity is more than their pH alone takes. */
const water: fc.Arbitrary<Water> = fc.record({
  pH: between(5.5, 9),
  alkalinity_mg_L: between(5, 400),
  water_degC: between(1, 35),
  tan_mg_L: between(0, 5),
});
const share = between(0, 1);
const pH = between(4, 11);
const form = fc.constantFrom<NitrogenForm>('N', 'NH3', 'NH4', 'NO2', 'NO3');
const anyWarmth = between(0, 50);

/** Laws of the water. */
export const waterLaws: readonly FormulaLaw[] = [
  law('the poisonous share of ammonia lies between nothing and all', fc.tuple(pH, anyWarmth), ([p, t]) => {
    less(0, unionised_frac(p, t));
    less(unionised_frac(p, t), 1);
  }),
  law(
    'the poisonous share of ammonia grows with pH and with warmth',
    fc.tuple(pH, pH, anyWarmth),
    ([a, b, t]) => {
      atMost(unionised_frac(Math.min(a, b), t), unionised_frac(Math.max(a, b), t));
    },
  ),
  law(
    'the poisonous share of ammonia times the total that it allows gives the limit back',
    fc.tuple(pH, anyWarmth),
    ([p, t]) => {
      near(tanAtUnionised_mg_L(0.05, p, t) * unionised_frac(p, t), 0.05, 1e-12);
    },
  ),
  law(
    'oxygen of water is less the warmer, the saltier and the higher',
    fc.tuple(warmth, between(0.6, 1), between(0, 39)),
    ([degC, p, salt]) => {
      const here = oxygenSaturation_mg_L(degC, p, salt);
      less(oxygenSaturation_mg_L(degC + 1, p, salt), here);
      less(oxygenSaturation_mg_L(degC, p, salt + 1), here);
      less(oxygenSaturation_mg_L(degC, p - 0.05, salt), here);
    },
  ),
  law(
    'oxygen of water falls with the air pressure, which falls with the height',
    between(-400, 4900),
    (height) => {
      less(pressure_frac(height + 10), pressure_frac(height));
    },
  ),
  law(
    'what is breathed grows with warmth, and a kilogram of small fish breathes more than one of large',
    fc.tuple(between(0.1, 3000), warmth),
    ([mass_g, degC]) => {
      const here = routineRespiration_mg_kg_h(mass_g, degC);
      less(here, routineRespiration_mg_kg_h(mass_g, degC + 1));
      less(routineRespiration_mg_kg_h(mass_g * 1.1, degC), here);
    },
  ),
  law(
    'what is breathed leaves half the time to twice the fish, and none at the limit',
    fc.tuple(between(1, 5000), between(0.1, 6), between(0.0001, 30)),
    ([water_L, spare, breathed_g_h]) => {
      const once = timeInHand_min(water_L, 5 + spare, 5, breathed_g_h);
      near(timeInHand_min(water_L, 5 + spare, 5, 2 * breathed_g_h), once / 2, 1e-9 * once);
      equal(timeInHand_min(water_L, 5, 5, breathed_g_h), 0);
      // What is breathed in that time is what was there to breathe.
      near((once / 60) * breathed_g_h * 1000, water_L * spare, 1e-6 * water_L * spare + 1e-9);
    },
  ),
  law(
    'what is breathed in a still bed never takes more oxygen than flows in',
    fc.tuple(between(0, 5000), between(0, 10), between(0, 5)),
    ([flow_L_h, oxygen, left]) => {
      const bound = ((flow_L_h * Math.max(0, oxygen - left)) / 1000) * 24;
      near(bedCeiling_g_d(flow_L_h, oxygen, left) * 4.57, bound, 1e-9 * bound + 1e-12);
    },
  ),
  law(
    'air stones bring nothing into water that holds all it can, and take from water that holds more',
    fc.tuple(between(0.1, 100), between(5, 14), warmth),
    ([standard, saturation, degC]) => {
      near(fieldTransfer_g_h(standard, 0.9, 1, saturation, saturation, degC), 0, 1e-12);
      less(fieldTransfer_g_h(standard, 0.9, 1, saturation, saturation + 1, degC), 0);
    },
  ),
  law(
    'air stones bring twice as much with twice the air, and never more than the air holds',
    fc.tuple(between(0, 100), between(0, 20_000), between(0, 0.15)),
    ([air, depth_mm, part]) => {
      const once = standardTransfer_g_h(air, depth_mm, part, 1);
      near(standardTransfer_g_h(2 * air, depth_mm, part, 1), 2 * once, 1e-9 * once + 1e-12);
      atMost(once, air * 60 * 0.2787 * (1 + 1e-12));
    },
  ),
  law(
    'falling water comes to an oxygen from which its height comes back, never above saturation',
    fc.tuple(between(5, 14), between(0.01, 0.95), between(1, 3000), warmth),
    ([saturation, part, fall_mm, degC]) => {
      const before = saturation * part;
      const after = oxygenAfterFall_mg_L(saturation, before, fall_mm, 0.8, 1, degC);
      less(after, saturation);
      near(fallHeight_mm(saturation, before, after, 0.8, 1, degC), fall_mm, 1e-6 * fall_mm + 1e-6);
    },
  ),
  law(
    'the carbonate balance gives back the pH that it was worked out from',
    water,
    ({ pH, alkalinity_mg_L, water_degC }) => {
      const carbon = inorganicCarbon_mmol_L(pH, alkalinity_mg_L, water_degC);
      near(pHOfCarbonates(alkalinity_mg_L, carbon, water_degC), pH, 1e-6);
      const dioxide = carbonDioxide_mg_L(pH, alkalinity_mg_L, water_degC);
      near(pHAtCarbonDioxide(alkalinity_mg_L, dioxide, water_degC), pH, 1e-6);
    },
  ),
  law(
    'the carbonate balance has less pH with more carbon, and more with more alkalinity',
    fc.tuple(between(5, 400), between(0.1, 20), between(0, 35)),
    ([alkalinity, carbon, degC]) => {
      const here = pHOfCarbonates(alkalinity, carbon, degC);
      less(pHOfCarbonates(alkalinity, carbon * 1.1, degC), here);
      less(here, pHOfCarbonates(alkalinity * 1.1, carbon, degC));
    },
  ),
  law(
    'a mix of two waters keeps their alkalinity, carbon and ammonia',
    fc.tuple(water, water, share),
    ([tank, tap, part]) => {
      const mix = mixOf(tank, tap, part);
      const both = (of: (one: Water) => number) => of(tank) * (1 - part) + of(tap) * part;
      near(
        mix.alkalinity_mg_L,
        both((one) => one.alkalinity_mg_L),
        1e-9 * 400,
      );
      near(
        mix.tan_mg_L,
        both((one) => one.tan_mg_L),
        1e-9,
      );
      const carbonOf = (one: Water) => inorganicCarbon_mmol_L(one.pH, one.alkalinity_mg_L, one.water_degC);
      const carbon = both(carbonOf);
      near(carbonOf(mix), carbon, 1e-5 * carbon);
    },
  ),
  law('a mix of two waters of equal waters changes nothing', fc.tuple(water, share), ([one, part]) => {
    const mix = mixOf(one, one, part);
    near(mix.pH, one.pH, 1e-6);
    near(mix.settledPH, one.pH, 1e-6);
    near(unionisedOfMix_mg_L(mix), unionisedOfMix_mg_L(mixOf(one, one, 0)), 1e-6);
    const limits = { unionisedMax_mg_L: 0.05, pHStep: 0.3, most_frac: 0.5 };
    equal(largestChange_frac(one, one, limits), 0.5);
  }),
  law('a mix of two waters is the tank at none and the tap at all', fc.tuple(water, water), ([tank, tap]) => {
    near(mixOf(tank, tap, 0).pH, tank.pH, 1e-6);
    near(mixOf(tank, tap, 1).pH, tap.pH, 1e-6);
  }),
  law(
    'a mix of two waters is safe up to the largest change, on the whole way there',
    fc.tuple(water, water, share),
    ([tank, tap, part]) => {
      const limits = { unionisedMax_mg_L: 0.05, pHStep: 0.3, most_frac: 0.5 };

      const largest = largestChange_frac(tank, tap, limits);
      const most = Math.max(0.05, unionisedOfMix_mg_L(mixOf(tank, tap, 0)));
      const mix = mixOf(tank, tap, largest * part);
      atMost(Math.abs(mix.pH - tank.pH), 0.3 + 1e-3);
      atMost(Math.abs(mix.settledPH - tank.pH), 0.3 + 1e-3);
      atMost(unionisedOfMix_mg_L(mix), most * (1 + 1e-3));
    },
  ),
  law(
    'a mix of two waters allows no larger step where a smaller move of pH is allowed',
    fc.tuple(water, water),
    ([tank, tap]) => {
      const step = (pHStep: number) =>
        largestChange_frac(tank, tap, { unionisedMax_mg_L: 0.05, pHStep, most_frac: 0.5 });
      atMost(step(0.1), step(0.3));
    },
  ),
  law(
    'nitrogen of the two published splits differs by six in a hundred, always the same way',
    fc.tuple(between(0.1, 1000), between(0.05, 0.7)),
    ([feed, protein]) => {
      const ratio = tanBySplit_g_d(feed, protein) / tanByFeed_g_d(feed, protein);
      near(ratio, 0.0976 / 0.092, 1e-9);
    },
  ),
  law(
    'nitrogen read in another form and back is the same reading',
    fc.tuple(between(0, 100), form, form),
    ([reading, one, other]) => {
      near(inForm_mg_L(inForm_mg_L(reading, one, other), other, one), reading, 1e-9 * reading + 1e-12);
    },
  ),
  law(
    'nitrogen needs more surface with more ammonia, and more media has more surface',
    fc.tuple(between(0, 100), between(0.2, 2), between(0, 2000)),
    ([ammonia, rate, media]) => {
      less(nitrifyingSurface_m2(ammonia, rate), nitrifyingSurface_m2(ammonia + 1, rate));
      less(presentSurface_m2(media, 250), presentSurface_m2(media + 1, 250));
    },
  ),
  law(
    'dilution by one change is a mix of both waters, and the share for it comes back',
    fc.tuple(between(1, 300), between(0.01, 0.99), between(0, 0.9)),
    ([before, part, incomingPart]) => {
      const incoming = before * incomingPart;
      const once = afterChanges_mg_L(before, incoming, part, 1);
      near(once, before * (1 - part) + incoming * part, 1e-9 * before);
      near(changeFor_frac(before, incoming, once), part, 1e-6);
    },
  ),
  law(
    'dilution by many changes comes near what comes in, and several small ones leave more than one large one',
    fc.tuple(between(0, 300), between(0, 300), between(0.1, 1)),
    ([before, incoming, part]) => {
      near(afterChanges_mg_L(before, incoming, part, 400), incoming, 1e-6);
      const large = Math.min(1, 3 * part);
      atMost(afterChanges_mg_L(before, 0, large, 1) - 1e-9, afterChanges_mg_L(before, 0, part, 3));
    },
  ),
  law(
    'a dose grows with the water and with what it stands against',
    fc.tuple(between(0, 5000), between(0, 10)),
    ([water_L, level]) => {
      near(
        salt_g(2 * level, 0, 10, water_L),
        2 * salt_g(level, 0, 10, water_L),
        1e-9 * water_L * level + 1e-12,
      );
      near(
        dechlorinator_g(level, 2 * water_L, 248.18, 2),
        2 * dechlorinator_g(level, water_L, 248.18, 2),
        1e-9 * water_L * level + 1e-12,
      );
      near(
        cyclingDose_g(water_L, 2 * level, 0.26),
        2 * cyclingDose_g(water_L, level, 0.26),
        1e-9 * water_L * level + 1e-12,
      );
    },
  ),
  law('a dose of each buffer neutralises the same acid', between(0, 1000), (alkalinity) => {
    for (const one of buffers) {
      const charges = (bufferDose_g(alkalinity, one.mass_g_mol, one.charges) / one.mass_g_mol) * one.charges;
      near(charges, alkalinity / 50.0435, 1e-9 * alkalinity + 1e-12);
    }
  }),
];
