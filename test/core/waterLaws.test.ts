/** Laws that the balances of the water obey, whatever goes in. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
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

const runs = { numRuns: 200 };
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

function close(ours: number, theirs: number, within: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(within);
}

describe('oxygen of water', () => {
  test('is less the warmer, the saltier and the higher', () => {
    const check = (degC: number, p: number, salt: number) => {
      const here = oxygenSaturation_mg_L(degC, p, salt);
      expect(oxygenSaturation_mg_L(degC + 1, p, salt)).toBeLessThan(here);
      expect(oxygenSaturation_mg_L(degC, p, salt + 1)).toBeLessThan(here);
      expect(oxygenSaturation_mg_L(degC, p - 0.05, salt)).toBeLessThan(here);
    };
    fc.assert(fc.property(warmth, between(0.6, 1), between(0, 39), check), runs);
  });

  test('falls with the air pressure, which falls with the height', () => {
    const check = (height: number) => {
      expect(pressure_frac(height + 10)).toBeLessThan(pressure_frac(height));
    };
    fc.assert(fc.property(between(-400, 4900), check), runs);
  });

  test('at the edges: nothing outside 0 to 40 °C', () => {
    expect(() => oxygenSaturation_mg_L(-0.1, 1, 0)).toThrow(RangeError);
    expect(() => oxygenSaturation_mg_L(40.1, 1, 0)).toThrow(RangeError);
    expect(() => pressure_frac(5001)).toThrow(RangeError);
  });
});

describe('what is breathed', () => {
  test('grows with warmth, and a kilogram of small fish breathes more than one of large', () => {
    const check = (mass_g: number, degC: number) => {
      const here = routineRespiration_mg_kg_h(mass_g, degC);
      expect(routineRespiration_mg_kg_h(mass_g, degC + 1)).toBeGreaterThan(here);
      expect(routineRespiration_mg_kg_h(mass_g * 1.1, degC)).toBeLessThan(here);
    };
    fc.assert(fc.property(between(0.1, 3000), warmth, check), runs);
  });

  test('leaves half the time to twice the fish, and none at the limit', () => {
    const check = (water_L: number, spare: number, breathed_g_h: number) => {
      const once = timeInHand_min(water_L, 5 + spare, 5, breathed_g_h);
      close(timeInHand_min(water_L, 5 + spare, 5, 2 * breathed_g_h), once / 2, 1e-9 * once);
      expect(timeInHand_min(water_L, 5, 5, breathed_g_h)).toBe(0);
      // What is breathed in that time is what was there to breathe.
      close((once / 60) * breathed_g_h * 1000, water_L * spare, 1e-6 * water_L * spare + 1e-9);
    };
    fc.assert(fc.property(between(1, 5000), between(0.1, 6), between(0.0001, 30), check), runs);
  });

  test('in a still bed never takes more oxygen than flows in', () => {
    const check = (flow_L_h: number, oxygen: number, left: number) => {
      const bound = ((flow_L_h * Math.max(0, oxygen - left)) / 1000) * 24;
      close(bedCeiling_g_d(flow_L_h, oxygen, left) * 4.57, bound, 1e-9 * bound + 1e-12);
    };
    fc.assert(fc.property(between(0, 5000), between(0, 10), between(0, 5), check), runs);
  });
});

describe('air stones', () => {
  test('bring nothing into water that holds all it can, and take from water that holds more', () => {
    const check = (standard: number, saturation: number, degC: number) => {
      close(fieldTransfer_g_h(standard, 0.9, 1, saturation, saturation, degC), 0, 1e-12);
      expect(fieldTransfer_g_h(standard, 0.9, 1, saturation, saturation + 1, degC)).toBeLessThan(0);
    };
    fc.assert(fc.property(between(0.1, 100), between(5, 14), warmth, check), runs);
  });

  test('bring twice as much with twice the air, and never more than the air holds', () => {
    const check = (air: number, depth_mm: number, part: number) => {
      const once = standardTransfer_g_h(air, depth_mm, part, 1);
      close(standardTransfer_g_h(2 * air, depth_mm, part, 1), 2 * once, 1e-9 * once + 1e-12);
      expect(once).toBeLessThanOrEqual(air * 60 * 0.2787 * (1 + 1e-12));
    };
    fc.assert(fc.property(between(0, 100), between(0, 20_000), between(0, 0.15), check), runs);
  });
});

describe('falling water', () => {
  test('comes to an oxygen from which its height comes back, never above saturation', () => {
    const check = (saturation: number, part: number, fall_mm: number, degC: number) => {
      const before = saturation * part;
      const after = oxygenAfterFall_mg_L(saturation, before, fall_mm, 0.8, 1, degC);
      expect(after).toBeLessThan(saturation);
      close(fallHeight_mm(saturation, before, after, 0.8, 1, degC), fall_mm, 1e-6 * fall_mm + 1e-6);
    };
    fc.assert(fc.property(between(5, 14), between(0.01, 0.95), between(1, 3000), warmth, check), runs);
  });
});

describe('the carbonate balance', () => {
  test('gives back the pH that it was worked out from', () => {
    const check = ({ pH, alkalinity_mg_L, water_degC }: Water) => {
      const carbon = inorganicCarbon_mmol_L(pH, alkalinity_mg_L, water_degC);
      close(pHOfCarbonates(alkalinity_mg_L, carbon, water_degC), pH, 1e-6);
      const dioxide = carbonDioxide_mg_L(pH, alkalinity_mg_L, water_degC);
      close(pHAtCarbonDioxide(alkalinity_mg_L, dioxide, water_degC), pH, 1e-6);
    };
    fc.assert(fc.property(water, check), runs);
  });

  test('has less pH with more carbon, and more with more alkalinity', () => {
    const check = (alkalinity: number, carbon: number, degC: number) => {
      const here = pHOfCarbonates(alkalinity, carbon, degC);
      expect(pHOfCarbonates(alkalinity, carbon * 1.1, degC)).toBeLessThan(here);
      expect(pHOfCarbonates(alkalinity * 1.1, carbon, degC)).toBeGreaterThan(here);
    };
    fc.assert(fc.property(between(5, 400), between(0.1, 20), between(0, 35), check), runs);
  });
});

describe('a mix of two waters', () => {
  test('keeps their alkalinity, carbon and ammonia', () => {
    const check = (tank: Water, tap: Water, part: number) => {
      const mix = mixOf(tank, tap, part);
      const both = (of: (one: Water) => number) => of(tank) * (1 - part) + of(tap) * part;
      close(
        mix.alkalinity_mg_L,
        both((one) => one.alkalinity_mg_L),
        1e-9 * 400,
      );
      close(
        mix.tan_mg_L,
        both((one) => one.tan_mg_L),
        1e-9,
      );
      const carbonOf = (one: Water) => inorganicCarbon_mmol_L(one.pH, one.alkalinity_mg_L, one.water_degC);
      const carbon = both(carbonOf);
      close(carbonOf(mix), carbon, 1e-5 * carbon);
    };
    fc.assert(fc.property(water, water, share, check), runs);
  });

  test('of equal waters changes nothing', () => {
    const check = (one: Water, part: number) => {
      const mix = mixOf(one, one, part);
      close(mix.pH, one.pH, 1e-6);
      close(mix.settledPH, one.pH, 1e-6);
      close(unionisedOfMix_mg_L(mix), unionisedOfMix_mg_L(mixOf(one, one, 0)), 1e-6);
      const limits = { unionisedMax_mg_L: 0.05, pHStep: 0.3, most_frac: 0.5 };
      expect(largestChange_frac(one, one, limits)).toBe(0.5);
    };
    fc.assert(fc.property(water, share, check), runs);
  });

  test('is the tank at none and the tap at all', () => {
    const check = (tank: Water, tap: Water) => {
      close(mixOf(tank, tap, 0).pH, tank.pH, 1e-6);
      close(mixOf(tank, tap, 1).pH, tap.pH, 1e-6);
    };
    fc.assert(fc.property(water, water, check), runs);
  });

  test('is safe up to the largest change, on the whole way there', () => {
    const limits = { unionisedMax_mg_L: 0.05, pHStep: 0.3, most_frac: 0.5 };
    const check = (tank: Water, tap: Water, part: number) => {
      const largest = largestChange_frac(tank, tap, limits);
      const most = Math.max(0.05, unionisedOfMix_mg_L(mixOf(tank, tap, 0)));
      const mix = mixOf(tank, tap, largest * part);
      expect(Math.abs(mix.pH - tank.pH)).toBeLessThanOrEqual(0.3 + 1e-3);
      expect(Math.abs(mix.settledPH - tank.pH)).toBeLessThanOrEqual(0.3 + 1e-3);
      expect(unionisedOfMix_mg_L(mix)).toBeLessThanOrEqual(most * (1 + 1e-3));
    };
    fc.assert(fc.property(water, water, share, check), runs);
  });

  test('allows no larger step where a smaller move of pH is allowed', () => {
    const check = (tank: Water, tap: Water) => {
      const step = (pHStep: number) =>
        largestChange_frac(tank, tap, { unionisedMax_mg_L: 0.05, pHStep, most_frac: 0.5 });
      expect(step(0.1)).toBeLessThanOrEqual(step(0.3));
    };
    fc.assert(fc.property(water, water, check), runs);
  });
});

describe('nitrogen', () => {
  test('of the two published splits differs by six in a hundred, always the same way', () => {
    const check = (feed: number, protein: number) => {
      const ratio = tanBySplit_g_d(feed, protein) / tanByFeed_g_d(feed, protein);
      close(ratio, 0.0976 / 0.092, 1e-9);
    };
    fc.assert(fc.property(between(0.1, 1000), between(0.05, 0.7), check), runs);
  });

  test('read in another form and back is the same reading', () => {
    const form = fc.constantFrom<NitrogenForm>('N', 'NH3', 'NH4', 'NO2', 'NO3');
    const check = (reading: number, one: NitrogenForm, other: NitrogenForm) => {
      close(inForm_mg_L(inForm_mg_L(reading, one, other), other, one), reading, 1e-9 * reading + 1e-12);
    };
    fc.assert(fc.property(between(0, 100), form, form, check), runs);
  });

  test('has the conversions that a water laboratory prints', () => {
    // A maker of water tests, question TE149 and its kin: 1.21589, 1.28786, 3.28443, 4.42664. Conversions, not counted.
    close(inForm_mg_L(1, 'N', 'NH3'), 1.21589, 6e-6);
    close(inForm_mg_L(1, 'N', 'NH4'), 1.28786, 6e-6);
    close(inForm_mg_L(1, 'N', 'NO2'), 3.28443, 6e-6);
    close(inForm_mg_L(1, 'N', 'NO3'), 4.42664, 6e-6);
  });

  test('needs more surface with more ammonia, and more media has more surface', () => {
    const check = (ammonia: number, rate: number, media: number) => {
      expect(nitrifyingSurface_m2(ammonia + 1, rate)).toBeGreaterThan(nitrifyingSurface_m2(ammonia, rate));
      expect(presentSurface_m2(media + 1, 250)).toBeGreaterThan(presentSurface_m2(media, 250));
    };
    fc.assert(fc.property(between(0, 100), between(0.2, 2), between(0, 2000), check), runs);
  });
});

describe('dilution', () => {
  test('by one change is a mix of both waters, and the share for it comes back', () => {
    const check = (before: number, part: number, incomingPart: number) => {
      const incoming = before * incomingPart;
      const once = afterChanges_mg_L(before, incoming, part, 1);
      close(once, before * (1 - part) + incoming * part, 1e-9 * before);
      close(changeFor_frac(before, incoming, once), part, 1e-6);
    };
    fc.assert(fc.property(between(1, 300), between(0.01, 0.99), between(0, 0.9), check), runs);
  });

  test('by many changes comes near what comes in, and several small ones leave more than one large one', () => {
    const check = (before: number, incoming: number, part: number) => {
      close(afterChanges_mg_L(before, incoming, part, 400), incoming, 1e-6);
      const large = Math.min(1, 3 * part);
      expect(afterChanges_mg_L(before, 0, part, 3)).toBeGreaterThanOrEqual(
        afterChanges_mg_L(before, 0, large, 1) - 1e-9,
      );
    };
    fc.assert(fc.property(between(0, 300), between(0, 300), between(0.1, 1), check), runs);
  });
});

describe('a dose', () => {
  test('grows with the water and with what it stands against', () => {
    const check = (water_L: number, level: number) => {
      close(
        salt_g(2 * level, 0, 10, water_L),
        2 * salt_g(level, 0, 10, water_L),
        1e-9 * water_L * level + 1e-12,
      );
      close(
        dechlorinator_g(level, 2 * water_L, 248.18, 2),
        2 * dechlorinator_g(level, water_L, 248.18, 2),
        1e-9 * water_L * level + 1e-12,
      );
      close(
        cyclingDose_g(water_L, 2 * level, 0.26),
        2 * cyclingDose_g(water_L, level, 0.26),
        1e-9 * water_L * level + 1e-12,
      );
    };
    fc.assert(fc.property(between(0, 5000), between(0, 10), check), runs);
  });

  test('of salt is none where there is chloride enough', () => {
    expect(salt_g(1, 10, 10, 500)).toBe(0);
    expect(salt_g(1, 9.99, 10, 500)).toBeGreaterThan(0);
    expect(salt_g(0, 0, 10, 500)).toBe(0);
  });

  test('of each buffer neutralises the same acid', () => {
    const check = (alkalinity: number) => {
      for (const one of buffers) {
        const charges =
          (bufferDose_g(alkalinity, one.mass_g_mol, one.charges) / one.mass_g_mol) * one.charges;
        close(charges, alkalinity / 50.0435, 1e-9 * alkalinity + 1e-12);
      }
    };
    fc.assert(fc.property(between(0, 1000), check), runs);
  });
});
