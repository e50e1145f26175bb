import { describe, expect, test } from 'vitest';
import { salt_g } from '../../src/core/water/dosing.ts';
import { inForm_mg_L } from '../../src/core/water/nitrogenForms.ts';
import { oxygenSaturation_mg_L, pressure_frac } from '../../src/core/water/oxygen.ts';

function close(ours: number, theirs: number, within: number): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(within);
}

describe('oxygen of water', () => {
  test('at the edges: nothing outside 0 to 40 °C', () => {
    expect(() => oxygenSaturation_mg_L(-0.1, 1, 0)).toThrow(RangeError);
    expect(() => oxygenSaturation_mg_L(40.1, 1, 0)).toThrow(RangeError);
    expect(() => pressure_frac(5001)).toThrow(RangeError);
  });
});

describe('nitrogen', () => {
  test('has the conversions that a water laboratory prints', () => {
    // A maker of water tests, question TE149 and its kin: 1.21589, 1.28786, 3.28443, 4.42664. Conversions, not counted.
    close(inForm_mg_L(1, 'N', 'NH3'), 1.21589, 6e-6);
    close(inForm_mg_L(1, 'N', 'NH4'), 1.28786, 6e-6);
    close(inForm_mg_L(1, 'N', 'NO2'), 3.28443, 6e-6);
    close(inForm_mg_L(1, 'N', 'NO3'), 4.42664, 6e-6);
  });
});

describe('a dose', () => {
  test('of salt is none where there is chloride enough', () => {
    expect(salt_g(1, 10, 10, 500)).toBe(0);
    expect(salt_g(1, 9.99, 10, 500)).toBeGreaterThan(0);
    expect(salt_g(0, 0, 10, 500)).toBe(0);
  });
});
