import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/core/plan/planOf.ts';
import { tableWords } from '../../src/wording/table.ts';
import { content, english } from '../demoSystems.ts';

describe('a table of the plan', () => {
  test('has a title, a head for every column and a word for every cell, in both systems of units', () => {
    let cells = 0;
    for (const { system } of content.systems) {
      for (const table of planOf(system).tables) {
        for (const units of ['metric', 'us'] as const) {
          const words = tableWords(table, english, units);
          expect(words.title).not.toBe('');
          expect(new Set(words.head).size, table.key).toBe(table.columns.length);
          for (const row of words.rows) {
            expect(row.length, table.key).toBe(table.columns.length);
            cells += row.length;
          }
        }
      }
    }
    expect(cells).toBeGreaterThan(3000);
  });

  test('rounds down what is given or added, and knows months and units', () => {
    const table = {
      key: 'fishMonths',
      columns: [
        { key: 'month', unit: 'ratio' },
        { key: 'feedLow', unit: 'g_d' },
        { key: 'meets', unit: 'ratio' },
      ],
      rows: [['2031-07', 21.97, 'meetsOxygen']],
    } as const;
    expect(tableWords(table, english, 'metric').rows[0]).toEqual([
      'Jul 2031',
      '21\u00a0g',
      'what the air stones bring',
    ]);
    const stage = {
      key: 'nextStages',
      columns: [
        { key: 'figure', unit: 'ratio' },
        { key: 'today', unit: 'ratio' },
      ],
      rows: [['tankFull_L', 700]],
    } as const;
    expect(tableWords(stage, english, 'us').rows[0]).toEqual(['Fish tank at the full line', '185\u00a0gal']);
  });
});
