/** A table of the plan in words: its title, its columns, and every cell in the reader's language and units. */
import type { Table } from '../core/plan/figure.ts';
import { unitSuffixes } from '../core/units.ts';
import { type Catalogue, say } from './catalogue.ts';
import { dayText } from './date.ts';
import { figureName } from './figure.ts';
import { shorten } from './shorten.ts';
import { amount, type UnitSystem } from './quantity.ts';

export type TableWords = {
  readonly key: string;
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** What somebody gives or adds by the table is rounded down. */
const given = new Set(['g', 'g_d', 'fish', 'plants']);

/** Columns whose words are names of figures. */
const ofFigures = new Set(['figure', 'limit']);

/** Longest first, so that `feed_g_d` is grams a day and not days. */
const suffixes = [...unitSuffixes].sort((a, b) => b.length - a.length);

/** A table of the plan as texts. */
export function tableWords(table: Table, catalogue: Catalogue, units: UnitSystem): TableWords {
  return {
    key: table.key,
    title: say(catalogue, `tables.titles.${table.key}`),
    head: table.columns.map((column) => say(catalogue, `tables.columns.${column.key}`)),
    rows: table.rows.map((row) => {
      const unitOfRow = rowUnit(table, row[0]);
      return row.map((cell, index) => {
        const column = table.columns[index];
        if (column === undefined) throw new RangeError(`${table.key} has more cells than columns`);
        if (typeof cell === 'number') {
          const unit = unitOfRow ?? column.unit;
          return amount(cell, unit, given.has(unit) ? 'down' : 'nearest', units);
        }
        return cell === null ? '' : word(cell, column.key, catalogue);
      });
    }),
  };
}

/** A row that is one figure has the unit of that figure in all its cells. */
function rowUnit(table: Table, first: string | number | null | undefined): string | null {
  if (table.columns[0]?.key !== 'figure' || typeof first !== 'string') return null;
  return suffixes.find((suffix) => first.endsWith(`_${suffix}`)) ?? 'fish';
}

function word(cell: string, column: string, catalogue: Catalogue): string {
  if (column === 'name') return shorten(cell, 36);
  if (ofFigures.has(column)) return figureName(cell, 1, catalogue);
  if (column === 'product') return say(catalogue, `products.${cell}`);
  if (column === 'day') return dayText(cell, catalogue);
  const month = /^(\d{4})-(\d{2})$/.exec(cell);
  if (month !== null) return `${say(catalogue, `months.${month[2]}`)} ${month[1]}`;
  return say(catalogue, `tables.cells.${cell}`);
}
