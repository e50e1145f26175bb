/** A table for the terminal: columns as wide as their widest cell. */
import type { TableWords } from '../wording/table.ts';

/** The title, the heads and the rows, one line each. */
export function tableLines(table: TableWords): readonly string[] {
  const rows = [table.head, ...table.rows];
  const widths = table.head.map((_, column) =>
    Math.max(...rows.map((row) => [...(row[column] ?? '')].length)),
  );
  const line = (row: readonly string[]): string =>
    `    ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd();
  return [`${table.title} (${table.key})`, ...rows.map(line)];
}
