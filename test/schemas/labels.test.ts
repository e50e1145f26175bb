import { describe, expect, test } from 'vitest';
import { paperSizes } from '../../src/paper/measures.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { problemSentence } from '../../src/wording/problem.ts';
import { content, demoSystem, english } from '../demoSystems.ts';

const sound = {
  ...{ columns: 2, rows: 7, labelWidth_mm: 99, labelHeight_mm: 38, left_mm: 5, top_mm: 15 },
  ...{ across_mm: 101.5, down_mm: 38 },
};

function read(labels: Record<string, unknown>, paper: 'A4' | 'Letter' = 'A4') {
  const raw = structuredClone(demoSystem('hollow-lane-ibc').raw) as Record<string, unknown>;
  return toSystem({ ...raw, sheet: { paper, units: 'metric' }, labels }, content);
}

function told(labels: Record<string, unknown>, paper: 'A4' | 'Letter' = 'A4'): readonly string[] {
  const result = read(labels, paper);
  if (!('problems' in result)) return [];
  return result.problems.map(
    (one) => `${one.place.join('.')}: ${problemSentence(one, english, 'metric').replaceAll('\u00a0', ' ')}`,
  );
}

describe('a measured sheet of labels', () => {
  test('that fits its paper becomes the grid of the system, with no label used', () => {
    const result = read(sound);
    expect('system' in result && result.system.labels).toEqual({ ...sound, used: 0 });
  });

  test('may end at the very edge of the paper, as far as a ruler can tell', () => {
    for (const [paper, { width_mm, height_mm }] of Object.entries(paperSizes)) {
      const one = { ...sound, columns: 1, rows: 1, labelHeight_mm: 140, across_mm: 0, down_mm: 0 };
      const edge = { left_mm: width_mm - 99, top_mm: height_mm - 140 };
      const kind = paper === 'A4' ? 'A4' : 'Letter';
      expect(told({ ...one, ...edge }, kind)).toEqual([]);
      expect(told({ ...one, left_mm: edge.left_mm + 0.6, top_mm: edge.top_mm + 0.6 }, kind)).toHaveLength(2);
    }
  });

  test('is told all that is wrong with it at once, each at its field', () => {
    expect(told({ ...sound, across_mm: 90, down_mm: 45, used: 14 })).toEqual([
      'labels.across_mm: The pitch across is 90 mm, but one label measures 99 mm. It is measured from the edge of a label to the same edge of the next one, so it is the size or more.',
      'labels.rows: The last label would end at 323 mm, but the paper ends at 297 mm. Measure margin, size and pitch again, or count again.',
      'labels.used: The number of labels already used is 14, but then no label is left. At most 13 can be gone. Begin a new sheet with 0.',
    ]);
  });

  test('is held against the paper that is in the printer', () => {
    expect(told({ ...sound, top_mm: 20 }, 'A4')).toEqual([]);
    expect(told({ ...sound, top_mm: 20 }, 'Letter').join()).toContain('the paper ends at 279 mm');
  });

  test('needs no pitch where there is one label in a row', () => {
    expect(told({ ...sound, columns: 1, across_mm: 0 })).toEqual([]);
  });

  test('that is half filled in says what is missing', () => {
    const { across_mm: _, ...rest } = sound;
    expect(told(rest)).toEqual([expect.stringMatching(/^labels\.across_mm: The pitch across is missing\./)]);
  });
});
