import { describe, expect, test } from 'vitest';
import { draftOf, inUnits } from '../../src/forms/draftOf.ts';
import { rawOf } from '../../src/forms/rawOf.ts';
import { siOf } from '../../src/forms/typedNumber.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';

describe('a number as it is typed', () => {
  const metric: readonly (readonly [string, string, unknown])[] = [
    ['700', 'full_mm', 700],
    [' 700 mm ', 'full_mm', 700],
    ['12,5', 'full_mm', 12.5],
    ['.5', 'spoon_g', 0.5],
    ['1 200', 'full_mm', 1200],
    ['−300', 'above_mm', -300],
    ['½', 'spoon_g', 0.5],
    ['1.5 %', 'keeperRation_frac', 0.015],
    ['900 L/h', 'flow_L_h', 900],
    ['6,8', 'pH', 6.8],
    ['', 'full_mm', undefined],
    // What is not clear stays a text, and the message asks.
    ['1,200', 'full_mm', '1,200'],
    ['70 cm', 'full_mm', '70 cm'],
    ['1e3', 'full_mm', '1e3'],
    ['seven', 'full_mm', 'seven'],
  ];
  test.each(metric)('%j in metric units', (text, key, value) => {
    expect(siOf({ text }, key, 'metric')).toBe(value);
  });

  const us: readonly (readonly [string, string, unknown])[] = [
    ['22 1/2', 'full_mm', 571.5],
    ['22-1/2"', 'full_mm', 571.5],
    ['22½ in', 'full_mm', 571.5],
    ['3/4', 'full_mm', 19.05],
    ['1/0', 'full_mm', '1/0'],
    ['-12', 'above_mm', -304.8],
    // NIST SP 811 (2008), appendix B.8: US gallon 3.785412 L; degree Fahrenheit.
    ['100', 'flow_L_h', 378.5411784],
    ['78.8', 'now_degC', 26],
    ['180', 'massNow_g', 180],
  ];
  test.each(us)('%j in US units', (text, key, value) => {
    expect(siOf({ text }, key, 'us')).toBe(value);
  });
});

describe('a system opened in the form', async () => {
  const { content } = await readContent('content');

  test.each(content.systems.map(({ id, raw }) => [id, raw] as const))(
    'is the same system when it is read from the fields again: %s',
    (_, raw) => {
      for (const draft of [draftOf(raw), inUnits(inUnits(draftOf(raw), 'us'), 'metric')]) {
        const again = toSystem(rawOf(draft), content);
        const units = draft === draftOf(raw) ? raw.sheet.units : 'metric';
        expect('raw' in again && { ...again.raw, sheet: { ...again.raw.sheet, units } }).toEqual({
          ...raw,
          sheet: { ...raw.sheet, units },
        });
      }
    },
  );
});
