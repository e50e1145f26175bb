/** The calendar of a season: no word stands on another, also where places do not rest. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import { turnoverDrawing } from '../../src/drawing/turnoverDrawing.ts';
import { turnoverRows } from '../../src/drawing/turnoverRows.ts';
import { fixedGrowth, tasks } from '../turnover/tasks.ts';

const drawn = tasks({ crops: 4, weeks: 20, places: 12, most: 6 });

test('boxes of words lie side by side, and a picking is seen before what is planted in its week', () => {
  let shared = 0;
  fc.assert(
    fc.property(drawn, (task) => {
      const rows = turnoverRows(draftPlan({ ...task, rest_d: 0 }, fixedGrowth));
      const scale = { label: 100, week: 60, row: 40, from_week: 0, to_week: task.weeks - 1 };
      const { words } = turnoverDrawing(rows, scale, []);
      for (const [at, row] of rows.entries()) {
        if (row.kind !== 'places') continue;
        const own = words.filter(({ top }) => top === at * scale.row).sort((a, b) => a.left - b.left);
        for (const [index, { left, width }] of own.entries())
          expect(left + width).toBeLessThanOrEqual(own[index + 1]?.left ?? Number.POSITIVE_INFINITY);
        shared += own.filter(({ kind, width }) => kind === 'pick' && width === scale.week / 2).length;
      }
    }),
    { numRuns: 100 },
  );
  expect(shared).toBeGreaterThan(50);
});
