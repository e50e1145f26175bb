/** Programmes solved by HiGHS. */
import type { Highs, Model, ModelData } from 'highs';
import type { Found, Programme, Search, Solver } from '../core/turnover/solver.ts';

/** Solves with a loaded HiGHS; `now_s` is any clock that runs. */
export function highsSolver(highs: Highs, now_s: () => number): Solver {
  return (programme, search) => {
    if (programme.columns.length === 0) return nothing;
    const began_s = now_s();
    const found = highs.withModel((model): Omit<Found, 'took_s'> => {
      model.options.set({ output_flag: false, time_limit: search.most_s, ...gapOf(search) });
      model.passModel(written(highs, programme));
      model.setSolution({ colValue: [...search.start] });
      const { modelStatus } = model.run();
      const isProven = modelStatus === highs.constants.modelStatus.optimal;
      return {
        state: isProven ? 'proven' : 'stopped',
        values: valuesIn(model, search),
        bound: boundOf(model, programme),
      };
    });
    return { ...found, took_s: now_s() - began_s };
  };
}

/** Nothing can be chosen: that is the best there is. */
const nothing: Found = { state: 'proven', values: [], bound: 0, took_s: 0 };

/** The share of the value counts for nothing: an aim says itself how near is the same. */
function gapOf({ gap }: Search): { readonly mip_rel_gap: number; readonly mip_abs_gap: number } {
  return { mip_rel_gap: 0, mip_abs_gap: gap };
}

function written(highs: Highs, { columns, rows }: Programme): ModelData {
  const { continuous, integer } = highs.constants.variableType;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { entries } of rows) {
    for (const [column, factor] of entries) {
      indices.push(column);
      values.push(factor);
    }
    starts.push(indices.length);
  }
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ lower }) => lower),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: columns.map(({ kind }) => (kind === 'whole' ? integer : continuous)),
    matrix: { format: 'csr', numRows: rows.length, numCols: columns.length, starts, indices, values },
  };
}

/** Stopped before it found anything, it gives back what it was given. */
function valuesIn(model: Model, { start }: Search): readonly number[] {
  const { colValue } = model.getSolution();
  return colValue.length === start.length ? [...colValue] : start;
}

function boundOf(model: Model, { columns }: Programme): number {
  const isWhole = columns.some(({ kind }) => kind === 'whole');
  return Number(model.info.get(isWhole ? 'mip_dual_bound' : 'objective_function_value'));
}
