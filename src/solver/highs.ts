/** Programmes solved by HiGHS. */
import type { Highs, Model, ModelData } from 'highs';
import type { Found, Programme, Search, Solver } from '../core/turnover/solver.ts';

/** Solves with a loaded HiGHS. */
export function highsSolver(highs: Highs): Solver {
  const solve = (programme: Programme, search: Search): Found => {
    if (programme.columns.length === 0) return nothing;
    return highs.withModel((model): Found => {
      model.options.set({ output_flag: false, time_limit: search.most_s, ...gapOf(search), ...plain });
      model.passModel(written(highs, programme));
      if (search.start !== null) model.setSolution({ colValue: [...search.start] });
      const { modelStatus } = model.run();
      // Where nothing keeps the rows, nothing is smaller than anything.
      if (modelStatus === highs.constants.modelStatus.infeasible) return impossible;
      return foundIn(model, programme);
    });
  };
  const trials: Solver['trials'] = (programme, most_s, trying) =>
    highs.withModel((model) => {
      model.options.set({ output_flag: false, time_limit: most_s });
      model.passModel(written(highs, programme));
      model.run();
      trying((held) => pricesIn(model, programme, held));
    });
  return Object.assign(solve, { trials });
}

/** Goes on from where the last trial ended. */
function pricesIn(model: Model, { columns, rows }: Programme, held: readonly number[]): readonly number[] {
  for (const at of held) model.changeColBounds(at, 0, 0);
  model.run();
  const { rowDual } = model.getSolution();
  for (const at of held) model.changeColBounds(at, columns[at]?.lower ?? 0, columns[at]?.upper ?? 0);
  return rowDual.length === rows.length ? [...rowDual] : [];
}

/** Its own searches in parts of a programme: whoever asks knows better where to look. */
const plain = {
  mip_heuristic_run_rens: false,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_root_reduced_cost: false,
} as const;

/** Nothing can be chosen: that is the best there is. */
const nothing: Found = { values: [], bound: 0, prices: [] };

const impossible: Found = { values: null, bound: Number.POSITIVE_INFINITY, prices: [] };

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

function foundIn(model: Model, { columns, rows }: Programme): Found {
  const { colValue, rowDual } = model.getSolution();
  const isWhole = columns.some(({ kind }) => kind === 'whole');
  return {
    values: colValue.length === columns.length ? [...colValue] : null,
    bound: Number(model.info.get(isWhole ? 'mip_dual_bound' : 'objective_function_value')),
    prices: !isWhole && rowDual.length === rows.length ? [...rowDual] : [],
  };
}
