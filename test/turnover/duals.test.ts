/** Bounds from prices hold, whatever the prices: against all solutions of small programmes, one by one. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dualOf, tightened } from '../../src/core/turnover/duals.ts';
import type { Column, Programme, Row } from '../../src/core/turnover/solver.ts';

const whole = fc.integer({ min: -4, max: 4 });

const programmes: fc.Arbitrary<Programme> = fc
  .integer({ min: 1, max: 4 })
  .chain((count) =>
    fc.record({
      columns: fc.array(
        fc.record({
          cost: whole,
          lower: fc.integer({ min: 0, max: 1 }),
          upper: fc.integer({ min: 1, max: 3 }),
        }),
        { minLength: count, maxLength: count },
      ),
      rows: fc.array(
        fc.record({ factors: fc.array(whole, { minLength: count, maxLength: count }), upper: whole }),
        { maxLength: 3 },
      ),
    }),
  )
  .map(({ columns, rows }) => ({
    columns: columns.map((column): Column => ({ ...column, kind: 'whole' })),
    rows: rows.map(
      ({ factors, upper }): Row => ({
        ...{ lower: Number.NEGATIVE_INFINITY, upper },
        entries: factors.map((factor, at) => [at, factor] as const).filter(([, factor]) => factor !== 0),
      }),
    ),
  }));

function solutionsOf({ columns, rows }: Programme): readonly (readonly number[])[] {
  const all = columns.reduce<readonly (readonly number[])[]>(
    (some, { lower, upper }) =>
      some.flatMap((one) => Array.from({ length: upper - lower + 1 }, (_, more) => [...one, lower + more])),
    [[]],
  );
  return all.filter((values) => rows.every((row) => sumOf(row.entries, values) <= row.upper));
}

function sumOf(entries: Row['entries'], values: readonly number[]): number {
  return entries.reduce((sum, [column, factor]) => sum + factor * (values[column] ?? 0), 0);
}

function worth({ columns }: Programme, values: readonly number[]): number {
  return columns.reduce((sum, { cost }, at) => sum + cost * (values[at] ?? 0), 0);
}

const prices = fc.array(fc.double({ min: -3, max: 0, noNaN: true }), { minLength: 3, maxLength: 3 });

describe('a bound from prices', () => {
  test('is beaten by no solution', () => {
    fc.assert(
      fc.property(programmes, prices, (programme, some) => {
        const { bound } = dualOf(programme, some);
        for (const values of solutionsOf(programme))
          expect(worth(programme, values)).toBeGreaterThanOrEqual(bound - 1e-9);
      }),
      { numRuns: 1_000 },
    );
  });

  test('takes no room from any solution that is good enough', () => {
    let closer = 0;
    fc.assert(
      fc.property(programmes, prices, fc.integer({ min: 0, max: 12 }), (programme, some, more) => {
        const dual = dualOf(programme, some);
        const most = dual.bound + more;
        const columns = tightened(programme.columns, dual, most);
        if (columns.some(({ lower, upper }, at) => upper - lower < sizeOf(programme.columns[at])))
          closer += 1;
        for (const values of solutionsOf(programme).filter((one) => worth(programme, one) <= most))
          for (const [at, { lower, upper }] of columns.entries()) {
            expect(values[at]).toBeGreaterThanOrEqual(lower);
            expect(values[at]).toBeLessThanOrEqual(upper);
          }
      }),
      { numRuns: 1_000 },
    );
    expect(closer).toBeGreaterThan(200);
  });
});

function sizeOf(column: Column | undefined): number {
  return column === undefined ? 0 : column.upper - column.lower;
}
